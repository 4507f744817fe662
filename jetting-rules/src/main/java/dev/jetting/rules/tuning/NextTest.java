package dev.jetting.rules.tuning;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which throttle opening to test next, and with what: the reading that teaches most about the risk
 * that remains, in an order that starts safe: full throttle first, on a rich main jet, then
 * downwards. No opening is tested twice on the same setup: what was wrong with the first reading
 * would be wrong with the second.
 *
 * @param throttle throttle opening to hold
 * @param speed engine speed there on the road
 * @param instrument what to read with
 * @param risk lean risk there as it stands
 * @param taught by how much the reading is expected to lessen what is open: the sum of risk times
 *     (1 − risk) over the openings, so that 0.25 is one even chance; of the day of the sheet for
 *     which it is most
 */
public record NextTest(
    ThrottleOpening throttle,
    EngineSpeed speed,
    Instrument instrument,
    Probability risk,
    double taught) {

  /** A reading that teaches less, by the accepted risk, is not worth a run (assumed). */
  private static final double WORTH_TESTING = 0.1;

  /** From wide to shut: the order in which a throttle opening may be tested for the first time. */
  private static final List<ThrottleOpening> ORDER =
      List.of(8, 6, 4, 2, 1, 0).stream().map(ThrottleOpening::ofEighths).toList();

  /** How to do a plug chop. */
  public static final List<String> HOW_TO =
      List.of(
          "Off public roads, engine warm, a new plug of the right heat range in, tools and gloves at"
              + " hand.",
          "Ride with the clutch covered: a lean seizure can lock the wheel. If the engine rattles,"
              + " slows or feels suddenly crisp, pull the clutch and stop the test.",
          "Hold the throttle opening steady for some ten seconds under load; mark it on the grip.",
          "Pull the clutch and cut the ignition at that very opening, then roll out: no closed"
              + " throttle against the engine, no idling home.",
          "Let plug and exhaust cool, or use gloves; read the insulator deep down, not its tip.",
          "Change one thing, from the rich side, and do it again.");

  /** How to read an instrument that tells while the engine runs. */
  private static final List<String> HOW_TO_HOLD =
      List.of(
          "Off public roads, engine and instrument warm.",
          HOW_TO.get(1),
          "Hold the throttle opening steady under load until the reading has settled, ten seconds at"
              + " most; mark it on the grip.",
          "Then pull the clutch before closing the throttle: no closed throttle against the engine.",
          HOW_TO.get(5));

  /**
   * How to do this test.
   *
   * @return the steps and cautions, in order
   */
  public List<String> howTo() {
    List<String> steps = new ArrayList<>();
    steps.add(
        "The test: "
            + TradeStyle.throttle(throttle)
            + " at about "
            + Decimals.fixed(speed.rpm(), 0)
            + " rpm.");
    if (instrument == Instrument.PLUG && throttle.equals(ThrottleOpening.CLOSED)) {
      steps.add(
          "Idle a warm engine for a minute instead of holding it under load; a plug tells little"
              + " there: heed whether revolutions hang or the engine fires every other turn.");
    }
    steps.addAll(instrument == Instrument.PLUG ? HOW_TO : HOW_TO_HOLD);
    return List.copyOf(steps);
  }

  /**
   * The next test, if one is safe and worth doing.
   *
   * @param session the session so far
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @param instruments what the rider has to read with; at least one
   * @return the test; empty if none of the openings whose turn it is has an accepted risk (change
   *     first), or nothing is left to learn
   * @throws IllegalArgumentException if there is no instrument
   */
  public static Optional<NextTest> of(
      TuningSession session, RiskModel riskModel, Meanings meanings, Set<Instrument> instruments) {
    double worth = WORTH_TESTING * session.now().riding().acceptedRisk().value();
    return tests(session, riskModel, meanings, instruments, due(session))
        .filter(test -> test.taught > worth)
        .max(comparingDouble((NextTest test) -> test.taught).thenComparing(NextTest::throttle));
  }

  /**
   * The test that confirms a setting with which a session could end: what led to it may have been a
   * wrong reading, or one taken elsewhere in the range. It is asked for where no reading of the
   * setup as it is agrees with the rest. Every opening with an accepted risk has its turn.
   *
   * @param session the session so far, with neither a next test nor a next change; {@link NextStep}
   *     sees to that
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @param instruments what the rider has to read with; at least one
   * @return the test, at the opening with the highest risk of those that are accepted; empty if the
   *     setup is confirmed, or none of those not yet tested on it has an accepted risk
   * @throws IllegalArgumentException if there is no instrument
   */
  public static Optional<NextTest> confirming(
      TuningSession session, RiskModel riskModel, Meanings meanings, Set<Instrument> instruments) {
    Stream<NextTest> tests = tests(session, riskModel, meanings, instruments, ORDER);
    return session.isConfirmed(riskModel, meanings)
        ? Optional.empty()
        : tests.max(comparing(NextTest::risk).thenComparing(NextTest::throttle));
  }

  /** The tests at some openings that are safe and were not done on this setup. */
  private static Stream<NextTest> tests(
      TuningSession session,
      RiskModel riskModel,
      Meanings meanings,
      Set<Instrument> instruments,
      List<ThrottleOpening> openings) {
    if (instruments.isEmpty()) {
      throw new IllegalArgumentException("instruments of a test: allowed at least one");
    }
    Instrument sharpest = Collections.min(instruments, comparingDouble(i -> i.deviation(meanings)));
    SetupSheet sheet = session.now();
    Calibration calibration = session.calibration(riskModel, meanings);
    List<Day> days =
        sheet.days().stream()
            .map(air -> Day.of(sheet.setup().withAir(air), riskModel, calibration))
            .toList();
    Probability accepted = sheet.riding().acceptedRisk();
    List<TuningStep> steps = session.steps();
    Set<ThrottleOpening> done = steps.get(steps.size() - 1).openings();
    return days.get(0).profile.points().stream()
        .filter(point -> openings.contains(point.mixture().throttle()))
        .filter(point -> !done.contains(point.mixture().throttle()))
        .filter(point -> point.leanRisk().compareTo(accepted) <= 0)
        .map(
            point -> {
              MixturePoint mixture = point.mixture();
              Reading imagined =
                  Reading.measured(
                      sheet.setup(),
                      mixture.throttle(),
                      mixture.speed(),
                      mixture.lambda(),
                      sharpest.deviation(meanings));
              Calibration after = calibration.with(List.of(imagined));
              double taught =
                  days.stream()
                      .mapToDouble(day -> day.taught(calibration, after))
                      .max()
                      .orElseThrow();
              return new NextTest(
                  mixture.throttle(), mixture.speed(), sharpest, point.leanRisk(), taught);
            });
  }

  /** The openings that were tested before, on any setup, and the widest that was not. */
  private static List<ThrottleOpening> due(TuningSession session) {
    Set<ThrottleOpening> seen = new HashSet<>();
    session.steps().forEach(step -> seen.addAll(step.openings()));
    int unseen = 0;
    while (unseen < ORDER.size() && seen.contains(ORDER.get(unseen))) {
      unseen++;
    }
    return ORDER.subList(0, Math.min(unseen + 1, ORDER.size()));
  }

  /** A day of the sheet: a reading of today is of use for it as well. */
  private record Day(MixtureModel model, RiskProfile profile) {

    static Day of(Setup setup, RiskModel riskModel, Calibration calibration) {
      MixtureModel model = MixtureModel.of(setup);
      List<ThrottleOpening> rising = ORDER.stream().sorted().toList();
      return new Day(model, riskModel.profile(model, rising, calibration));
    }

    /** Σ p(1−p) (1 − σ'²/σ²): what a reading is expected to settle. */
    double taught(Calibration before, Calibration after) {
      CalibratedModel blunter = before.on(model);
      CalibratedModel sharper = after.on(model);
      double settled = 0;
      for (RiskPoint point : profile.points()) {
        MixturePoint mixture = point.mixture();
        double risk = point.leanRisk().value();
        double old = blunter.lnLambda(mixture.throttle(), mixture.speed()).deviation();
        double now = sharper.lnLambda(mixture.throttle(), mixture.speed()).deviation();
        double ratio = old == 0 ? 1 : now / old;
        settled += risk * (1 - risk) * (1 - ratio * ratio);
      }
      return settled;
    }
  }
}
