package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which test is due, in the order of the trade: idle, full throttle, the needle's range, a quarter
 * and an eighth, the overrun. Openings between those that must be read are tested where the risk
 * that remains is worth a run.
 */
final class TestPlan {

  /** A smaller share of the accepted risk is not worth a run (assumed). */
  private static final double WORTH_TESTING = 0.1;

  /** Less in ln λ is no move towards lean (assumed). */
  private static final double LEANED = 0.003;

  /** A change that leans an opening by less in ln λ asks for no reading there first (assumed). */
  private static final double LEANED_THERE = 0.01;

  private final Tuner tuner;
  private final TuningSession session;
  private final Findings findings;
  private final Calibration calibration;

  TestPlan(Tuner tuner, TuningSession session, Findings findings) {
    this.tuner = tuner;
    this.session = session;
    this.findings = findings;
    calibration = findings.calibration();
  }

  /**
   * The test that is due on the setting as it is; empty where all is answered.
   *
   * @param feltFirst whether idle and an eighth come before all others
   */
  Optional<NextTest> due(boolean feltFirst) {
    Stream<ThrottleOpening> first =
        feltFirst ? Stream.of(ThrottleOpening.CLOSED, Held.EIGHTH) : Stream.of();
    return Stream.concat(first, Held.MARKS.stream())
        .filter(held -> isNeeded(held) && !findings.isAnswered(held))
        .findFirst()
        .or(this::leanedMost)
        .map(this::at);
  }

  /** The run down, unless it was made with no more fuel than now. */
  Optional<NextTest> overrun() {
    return findings.isOverrunAnswered() ? Optional.empty() : Optional.of(runDown());
  }

  /** Full throttle, unless it was read on this very setting. */
  Optional<NextTest> confirming() {
    return findings.isReadOnThisSetting(ThrottleOpening.FULL)
        ? Optional.empty()
        : Optional.of(at(ThrottleOpening.FULL));
  }

  /**
   * The mark next to a place without a reading where the risk may be above what is accepted. The
   * reason is a fault that is not ruled out, or a swing of the mixture between openings that were
   * read.
   */
  Optional<NextTest> beforeTheEnd(Hypotheses hypotheses) {
    return Held.MARKS.stream()
        .filter(mark -> !findings.isReadOnThisSetting(mark))
        .filter(mark -> isDoubtful(mark, hypotheses))
        .findFirst()
        .map(this::at);
  }

  private boolean isDoubtful(ThrottleOpening mark, Hypotheses hypotheses) {
    Probability accepted = session.now().riding().acceptedRisk();
    boolean unread = !findings.isAnswered(mark) && !mark.equals(ThrottleOpening.CLOSED);
    return hypotheses.leanRisk(session.now(), mark).isMoreThan(accepted)
        || (unread
            && swinging(session.now(), List.of(mark))[0]
                > ChangeChooser.SHARE_FOR_NEARER * accepted.value());
  }

  /**
   * A mark that a step takes towards lean and that nobody has read since another step did, or that
   * would be unread after it.
   */
  Optional<NextTest> beforeLeaning(Setting to) {
    MixtureModel before = MixtureModel.of(session.last().setup());
    MixtureModel after = MixtureModel.of(session.last().setup().withSetting(to));
    return Stream.concat(Held.OPENINGS.stream(), Stream.of(Held.SMALL))
        .filter(mark -> isUnreadBefore(mark, leaner(before, after, mark)))
        .findFirst()
        .map(this::at);
  }

  private boolean isUnreadBefore(ThrottleOpening mark, double leaner) {
    if (leaner <= LEANED) {
      return false;
    }
    if (findings.trail().isBetweenRich(mark) && findings.leanedSinceRead(mark).isEmpty()) {
      return false;
    }
    if (!findings.isAnswered(mark)) {
      return leaner > LEANED_THERE || findings.leanedSinceRead(mark).isPresent();
    }
    double leaned = findings.leanedSinceRead(mark).orElseThrow();
    return leaned > LEANED_THERE && leaned + leaner > findings.stillRead(mark);
  }

  /** The test that takes a reading again. */
  NextTest again(Observation observation) {
    Instrument before = instrumentOf(observation.evidence());
    boolean wide = observation.throttle().compareTo(Held.SMALL) > 0;
    Instrument instrument =
        wide && before == Instrument.FEEL ? instrument(observation.throttle()) : before;
    return new NextTest(
        kind(observation.throttle(), instrument),
        observation.throttle(),
        observation.speed(),
        instrument,
        risk(observation.throttle()));
  }

  private boolean isNeeded(ThrottleOpening held) {
    return Held.REQUIRED.contains(held)
        || findings.wasLean(held)
        || (Held.OPENINGS.contains(held) && isWorthTesting(held));
  }

  private boolean isWorthTesting(ThrottleOpening held) {
    SetupSheet now = session.now();
    double worth = WORTH_TESTING * now.riding().acceptedRisk().value();
    return now.days().stream().anyMatch(day -> risk(held, day).value() > worth);
  }

  /** Where the last change took the mixture furthest to lean, if nothing was read since. */
  private Optional<ThrottleOpening> leanedMost() {
    List<TuningStep> steps = session.steps();
    if (steps.size() < 2 || !session.last().observations().isEmpty()) {
      return Optional.empty();
    }
    Setup now = session.last().setup();
    MixtureModel before =
        MixtureModel.of(now.withSetting(steps.get(steps.size() - 2).setup().setting()));
    MixtureModel after = MixtureModel.of(now);
    return Held.OPENINGS.stream()
        .filter(held -> leaner(before, after, held) > LEANED)
        .max(comparingDouble(held -> leaner(before, after, held)));
  }

  private static double leaner(MixtureModel before, MixtureModel after, ThrottleOpening throttle) {
    return StrictMath.log(
        after.at(throttle).lambda().value() / before.at(throttle).lambda().value());
  }

  private NextTest at(ThrottleOpening throttle) {
    Instrument instrument = instrument(throttle);
    return new NextTest(
        kind(throttle, instrument),
        throttle,
        session.now().setup().engine().loadLine().at(throttle),
        instrument,
        risk(throttle));
  }

  private NextTest runDown() {
    Setup setup = session.now().setup();
    return new NextTest(
        NextTest.Kind.RUN_DOWN,
        ThrottleOpening.CLOSED,
        setup.engine().loadLine().at(ThrottleOpening.FULL),
        Instrument.FEEL,
        risk(ThrottleOpening.CLOSED));
  }

  /** The sharpest there is; at small openings a plug shows little, and the engine's answer more. */
  private Instrument instrument(ThrottleOpening throttle) {
    Instrument sharpest =
        Collections.min(tuner.instruments(), comparingDouble(i -> i.deviation(tuner.meanings())));
    boolean small = throttle.compareTo(Held.SMALL) <= 0;
    return sharpest == Instrument.PLUG && small ? Instrument.FEEL : sharpest;
  }

  private static Instrument instrumentOf(Evidence evidence) {
    if (evidence instanceof Evidence.Wideband) {
      return Instrument.WIDEBAND;
    }
    if (evidence instanceof Evidence.ExhaustTemperature) {
      return Instrument.EXHAUST_THERMOMETER;
    }
    return evidence instanceof Evidence.Colour ? Instrument.PLUG : Instrument.FEEL;
  }

  private static NextTest.Kind kind(ThrottleOpening throttle, Instrument instrument) {
    if (throttle.equals(ThrottleOpening.CLOSED)) {
      return NextTest.Kind.IDLE;
    }
    return switch (instrument) {
      case PLUG -> NextTest.Kind.PLUG_CHOP;
      case FEEL -> NextTest.Kind.ROLL_ON;
      case WIDEBAND, EXHAUST_THERMOMETER -> NextTest.Kind.STEADY;
    };
  }

  /**
   * Whether a step towards lean keeps half of the accepted risk below a quarter, even if the
   * mixture swings there; or takes it no higher. Nobody can hold the throttle between idle and an
   * eighth to read, and what is felt up to 3/16 says little.
   */
  boolean keepsUnreadable(Setting to) {
    SetupSheet now = session.now();
    double accepted = ChangeChooser.SHARE_FOR_NEARER * now.riding().acceptedRisk().value();
    List<ThrottleOpening> between =
        AssessedSetting.openings().stream()
            .filter(throttle -> throttle.compareTo(ThrottleOpening.CLOSED) > 0)
            .filter(throttle -> throttle.compareTo(Held.SMALL) <= 0)
            .toList();
    double[] before = swinging(now, between);
    double[] after = swinging(now.withSetup(now.setup().withSetting(to)), between);
    return IntStream.range(0, after.length)
        .allMatch(i -> after[i] <= accepted || after[i] <= before[i]);
  }

  /** The highest risk of any day if the mixture swings between the openings that were read. */
  private double[] swinging(SetupSheet sheet, List<ThrottleOpening> openings) {
    double[] worst = new double[openings.size()];
    for (Air day : sheet.days()) {
      CalibratedModel engine = calibration.on(MixtureModel.of(sheet.setup().withAir(day)));
      for (int i = 0; i < worst.length; i++) {
        double risk = Swing.leanRisk(tuner.riskModel(), engine, openings.get(i)).value();
        worst[i] = Math.max(worst[i], risk);
      }
    }
    return worst;
  }

  private Probability risk(ThrottleOpening throttle) {
    return risk(throttle, session.now().setup().air());
  }

  private Probability risk(ThrottleOpening throttle, Air day) {
    CalibratedModel engine = calibration.on(MixtureModel.of(session.now().setup().withAir(day)));
    return tuner.riskModel().leanRisk(engine, throttle);
  }
}
