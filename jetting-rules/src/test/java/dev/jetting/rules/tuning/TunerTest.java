package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The order and the refusals of the trade (common practice, no source). */
class TunerTest {

  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
  private static final Tuner PLUG = Tuner.readingWith(Set.of(Instrument.PLUG));

  /** Rich everywhere, and rideable. */
  private static final SetupSheet START = start();

  private static final int FULL_RPM = 7500;

  private static SetupSheet start() {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    return sheet.withSetup(sheet.setup().withSetting(SENSOR.start(sheet).setting()));
  }

  private static TuningSession begun() {
    return Sessions.begin(START);
  }

  @Test
  void next_nothingDone_isTheChecklist_onceAndInPart() {
    TuningSession fresh = TuningSession.beginning(START);
    assertThat(SENSOR.next(fresh)).isEqualTo(new NextStep.TickOff(List.of(Check.values())));
    TuningSession some = fresh.checking(Set.of(Check.AIR_LEAK, Check.FUEL_LEVEL));
    assertThat(((NextStep.TickOff) SENSOR.next(some)).checks())
        .doesNotContain(Check.AIR_LEAK, Check.FUEL_LEVEL)
        .contains(Check.IGNITION_TIMING);
    assertThat(SENSOR.next(begun())).isInstanceOf(NextStep.Ride.class);
  }

  @Test
  void next_goesIdleThenFullThrottleThenDown_andTheOverrunLast() {
    List<String> order = new ArrayList<>();
    TuningSession session = begun();
    NextStep step = PLUG.next(session);
    while (step instanceof NextStep.Ride ride) {
      order.add(ride.test().kind() + " " + ride.test().throttle());
      session =
          session.observing(
              new Observation(ride.test().throttle(), ride.test().speed(), good(ride.test())));
      step = PLUG.next(session);
    }
    assertThat(order)
        .containsSubsequence(
            "IDLE 0", "PLUG_CHOP 1", "PLUG_CHOP 0.5", "ROLL_ON 0.125", "RUN_DOWN 0");
  }

  private static Evidence good(NextTest test) {
    if (test.kind() == NextTest.Kind.RUN_DOWN) {
      return new Evidence.Overrun(RunDown.CLEAN);
    }
    return test.instrument() == Instrument.PLUG
        ? new Evidence.Colour(PlugColour.BROWN)
        : new Evidence.Felt(Symptom.CLEAN);
  }

  @Test
  void next_whiteAtFullThrottle_isABiggerMainByTwoSizesAtLeast() {
    TuningSession white = begun().observing(full(new Evidence.Colour(PlugColour.WHITE)));
    NextStep.MakeRicher step = (NextStep.MakeRicher) looked(PLUG, white);
    assertThat(step.change().part()).isEqualTo(MeteringPart.MAIN_JET);
    assertThat(step.change().setting().mainJet().hundredths())
        .isGreaterThanOrEqualTo(START.setup().setting().mainJet().hundredths() + 4);
  }

  @ParameterizedTest
  @EnumSource(names = {"PINGS", "FADES", "SEIZES"})
  void next_harmAtHalf_actsInTheNeedlesRange(Symptom symptom) {
    TuningSession hurt =
        begun().observing(Workshop.observation(4, 5700, new Evidence.Felt(symptom)));
    NextStep.MakeRicher step = (NextStep.MakeRicher) looked(PLUG, hurt);
    assertThat(step.change().part())
        .isIn(MeteringPart.CLIP, MeteringPart.NEEDLE_JET, MeteringPart.NEEDLE_DIAMETER);
  }

  /** The lean limit at full throttle is a sixth above what is needed there. */
  @Test
  void next_sensorBeyondTheLimit_isStop() {
    double need = START.setup().engine().need().at(ThrottleOpening.FULL).value();
    TuningSession lean = begun().observing(full(new Evidence.Wideband(Lambda.of(need * 1.17))));
    assertThat(looked(SENSOR, lean)).isInstanceOf(NextStep.MakeRicher.class);
  }

  @Test
  void next_blackAtFullThrottle_isASmallerMainByOneSize() {
    SetupSheet rich =
        Workshop.sheet(START.setup().setting().withMainJet(JetBore.ofHundredths(142)));
    TuningSession session = ledTo(PLUG, rich, NextTest.Kind.PLUG_CHOP);
    session = session.observing(full(new Evidence.Colour(PlugColour.BLACK)));
    session = read(PLUG, session);
    NextChange change = Sessions.change(PLUG.next(session)).orElseThrow();
    assertThat(change.part()).isEqualTo(MeteringPart.MAIN_JET);
    assertThat(change.setting().mainJet().hundredths()).isEqualTo(140);
  }

  /** The ends first: no slide, and no test at an eighth or on the overrun, before the main jet. */
  @ParameterizedTest
  @MethodSource("richAtFull")
  void next_richAtFullThrottle_leansTheMainJetBeforeAnythingElse(Evidence rich) {
    SetupSheet sheet =
        Workshop.sheet(START.setup().setting().withMainJet(JetBore.ofHundredths(142)));
    TuningSession session = Sessions.begin(sheet);
    NextStep step = PLUG.next(session);
    List<String> ridden = new ArrayList<>();
    while (Sessions.change(step).isEmpty()) {
      Sessions.test(step).ifPresent(test -> ridden.add(test.kind() + " " + test.throttle()));
      session =
          Sessions.take(
              session,
              step,
              (now, test) -> test.throttle().equals(ThrottleOpening.FULL) ? rich : good(test));
      step = PLUG.next(session);
    }
    assertThat(Sessions.change(step).orElseThrow().part()).isEqualTo(MeteringPart.MAIN_JET);
    assertThat(Sessions.change(step).orElseThrow().setting().mainJet().hundredths()).isEqualTo(140);
    assertThat(ridden).startsWith("IDLE 0", "PLUG_CHOP 1").doesNotContain("RUN_DOWN 0");
  }

  static Stream<Evidence> richAtFull() {
    return Stream.of(
        new Evidence.Colour(PlugColour.BLACK), new Evidence.Felt(Symptom.FOUR_STROKES));
  }

  @Test
  void next_whiteAndNothingRicherAtHand_isNotToBeRidden_andWhatToBuy() {
    Setting setting = START.setup().setting();
    SetupSheet bare = START.withParts(PartsAtHand.unknown());
    TuningSession session = Sessions.begin(bare);
    NextStep step = PLUG.next(session);
    for (int i = 0; i < 20 && !step.isEnd(); i++) {
      session =
          Sessions.test(step).isPresent()
              ? session.observing(full(new Evidence.Colour(PlugColour.WHITE)))
              : Sessions.take(session, step, (now, test) -> good(test));
      step = PLUG.next(session);
    }
    assertThat(step)
        .isInstanceOfSatisfying(
            NextStep.NotToBeRidden.class,
            end ->
                assertThat(end.buy())
                    .contains("main " + (int) (setting.mainJet().hundredths() + 4)));
  }

  /** White where everything else is rich: a fault before a jet, and a jet all the same. */
  @Test
  void next_whiteAgainstEverythingKnown_looksForAFaultFirst() {
    TuningSession session = begun();
    for (int eighths : new int[] {8, 6, 2}) {
      session = session.observing(sensor(session, eighths, -0.05));
    }
    session =
        session.observing(Workshop.observation(4, 5700, new Evidence.Colour(PlugColour.WHITE)));
    NextStep.LookForFault look = (NextStep.LookForFault) SENSOR.next(session);
    assertThat(look.faults())
        .contains(Fault.AIR_LEAK, Fault.IGNITION_TIMING, Fault.PLUG_TOO_HOT, Fault.FUEL_LEVEL_LOW);
    assertThat(looked(SENSOR, session)).isInstanceOf(NextStep.MakeRicher.class);
  }

  /**
   * A lean idle, and after the enrichment one that is still lean, but richer than was expected.
   * What harms is looked into as lean. The session asked for it again and again: it took what was
   * looked into for rich.
   */
  @Test
  void next_onceAFaultWasLookedFor_goesOn() {
    TuningSession session = begun();
    Lambda limit =
        SENSOR
            .riskModel()
            .limits()
            .lean(ThrottleOpening.CLOSED, session.now().setup().engine().need());
    for (double beyond : new double[] {1.25, 1.01}) {
      session =
          session.observing(
              Workshop.observation(
                  0, 1400, new Evidence.Wideband(Lambda.of(limit.value() * beyond))));
      NextStep step = SENSOR.next(session);
      while (step instanceof NextStep.LookForFault look) {
        session = looking(session, look);
        step = SENSOR.next(session);
        assertThat(step).isNotEqualTo(look);
      }
      if (step instanceof NextStep.MakeRicher richer) {
        Setup now = session.now().setup();
        session = session.changing(now.withSetting(richer.change().setting()));
      }
    }
  }

  /**
   * The main jet was made a size bigger, and full throttle reads black on it. A session went back
   * to the smaller one, then forth again, for as long as somebody read the plug.
   */
  @Test
  void next_towardsLean_isNotBackToAJetThatWasLeft() {
    Setting smaller = ALL_ROUND;
    Setting bigger = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.32));
    TuningSession session =
        Sessions.begin(Workshop.sheet(smaller))
            .observing(full(new Evidence.Colour(PlugColour.BROWN)))
            .changing(Workshop.sheet(bigger).setup());
    NextStep step = PLUG.next(session);
    while (!step.isEnd()) {
      session =
          Sessions.take(
              session,
              step,
              (now, test) ->
                  test.throttle().equals(ThrottleOpening.FULL)
                          && test.kind() != NextTest.Kind.RUN_DOWN
                      ? new Evidence.Colour(PlugColour.BLACK)
                      : good(test));
      step = PLUG.next(session);
      assertThat(session.now().setup().setting()).isNotEqualTo(smaller);
    }
  }

  /** One reading wrong by 0.35 in ln λ used to lead to a leaner jet. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.35, 0.35})
  void next_firstReadingFarOff_isReadAgainBeforeAnyPart(double off) {
    TuningSession session = begun().observing(sensor(begun(), 2, off));
    assertThat(SENSOR.next(session))
        .isInstanceOfAny(NextStep.CheckReading.class, NextStep.LookForFault.class);
    assertThat(SENSOR.calibration(session).readings()).isEmpty();
    if (off < 0) {
      TuningSession twice = session.observing(sensor(begun(), 2, off));
      assertThat(SENSOR.next(twice)).isInstanceOf(NextStep.LookForFault.class);
      assertThat(SENSOR.calibration(twice).readings()).isEmpty();
      TuningSession looked = looking(twice, (NextStep.LookForFault) SENSOR.next(twice));
      assertThat(SENSOR.calibration(looked).readings()).hasSize(1);
    }
  }

  /** Two readings that contradict each other are none; the third decides. */
  @Test
  void calibration_whiteAndBlackAtOneOpening_teachNothing() {
    TuningSession both =
        begun()
            .observing(full(new Evidence.Colour(PlugColour.BLACK)))
            .observing(full(new Evidence.Colour(PlugColour.WHITE)));
    assertThat(PLUG.calibration(both).readings()).isEmpty();
    TuningSession third = both.observing(full(new Evidence.Colour(PlugColour.WHITE)));
    assertThat(PLUG.calibration(third).readings().size()).isLessThanOrEqualTo(1);
  }

  @Test
  void calibration_twentyRepeats_areOneReading() {
    TuningSession once = begun().observing(full(new Evidence.Colour(PlugColour.BROWN)));
    TuningSession often = once;
    for (int i = 0; i < 19; i++) {
      often = often.observing(full(new Evidence.Colour(PlugColour.BROWN)));
    }
    assertThat(risk(often)).isEqualTo(risk(once));
    assertThat(PLUG.next(often)).isEqualTo(PLUG.next(once));
  }

  private static double risk(TuningSession session) {
    RiskPoint worst = PLUG.assess(session).profile().worst();
    return worst.leanRisk().value();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void next_sixtyRandomPlugs_isNoEndThatCallsItGood(long seed) {
    Random chance = new Random(seed);
    List<PlugColour> colours = List.of(PlugColour.values());
    TuningSession session = begun();
    for (int i = 0; i < 60; i++) {
      PlugColour colour = colours.get(chance.nextInt(colours.size()));
      int eighths = List.of(8, 6, 4, 2, 1, 0).get(chance.nextInt(6));
      session =
          session.observing(
              Workshop.observation(eighths, 1400 + 760 * eighths, new Evidence.Colour(colour)));
    }
    assertThat(PLUG.next(session))
        .isInstanceOfAny(
            NextStep.MakeRicher.class, NextStep.LookForFault.class, NextStep.NotToBeRidden.class);
  }

  /** Pale, crisp, bogging and black are no proof. */
  @Test
  void next_weakSignsAtFullThrottle_neverConfirm() {
    for (Evidence weak :
        List.of(
            new Evidence.Colour(PlugColour.PALE),
            new Evidence.Colour(PlugColour.BLACK),
            new Evidence.Felt(Symptom.CRISP),
            new Evidence.Felt(Symptom.BOGS),
            new Evidence.Felt(Symptom.CLEAN))) {
      TuningSession session = begun();
      for (int eighths : new int[] {0, 6, 4, 2, 1}) {
        session = session.observing(sensor(session, eighths, 0));
      }
      session =
          session
              .observing(Workshop.observation(0, FULL_RPM, new Evidence.Overrun(RunDown.CLEAN)))
              .observing(full(weak));
      assertThat(PLUG.next(session)).isNotInstanceOf(NextStep.Confirmed.class);
    }
  }

  @Test
  void next_startRead_endsConfirmed_withTheRiskOfTheWorstDay() {
    TuningSession session = begun();
    NextStep step = SENSOR.next(session);
    int tests = 0;
    while (!step.isEnd()) {
      tests += Sessions.test(step).isPresent() ? 1 : 0;
      session = Sessions.take(session, step, (now, test) -> Sessions.read(now, test, 0));
      step = SENSOR.next(session);
    }
    assertThat(step)
        .isInstanceOfSatisfying(
            NextStep.Confirmed.class,
            end -> assertThat(end.left().risk().value()).isLessThanOrEqualTo(0.1));
    assertThat(tests).isBetween(5, 25);
  }

  /** What is left above what is accepted cannot be called confirmed, by type. */
  @Test
  void ends_moreRiskThanAccepted_areReservedOnly() {
    RiskLeft more = new RiskLeft(Probability.of(0.2), Probability.of(0.1));
    RiskLeft less = new RiskLeft(Probability.of(0.1), Probability.of(0.1));
    Sign rich =
        new Sign(START.setup(), full(new Evidence.Colour(PlugColour.BLACK)), Sign.Kind.RICH);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NextStep.Confirmed(more))
        .withMessageContaining("0.2")
        .withMessageContaining("at most what is accepted");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NextStep.LeftRich(List.of(rich), more));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NextStep.Reserved(less, List.of(Fault.AIR_LEAK)));
    assertThat(new NextStep.Confirmed(less).isEnd()).isTrue();
    assertThat(new NextStep.Reserved(more, List.of(Fault.AIR_LEAK)).isEnd()).isTrue();
  }

  /**
   * A rider whose marks are ahead of the slide reads the rich side of the hump at an eighth. Before
   * anything goes leaner there the marks around it are read, and the lean one stops it.
   */
  @Test
  void next_richAtAnEighth_leansOnlyOnceItsNeighboursWereRead() {
    TuningSession session = begun();
    NextStep step = SENSOR.next(session);
    List<ThrottleOpening> read = new ArrayList<>();
    for (int i = 0; i < 60 && !step.isEnd(); i++) {
      Optional<NextChange> change = Sessions.change(step);
      if (change.isPresent()) {
        for (ThrottleOpening mark : List.of(Held.EIGHTH, Held.SMALL, Held.QUARTER, Held.HALF)) {
          Setting from = session.now().setup().setting();
          if (Sessions.leaner(START, from, change.get().setting(), mark) > 0.02) {
            assertThat(read).contains(mark);
          }
        }
      }
      Sessions.test(step).ifPresent(test -> read.add(test.throttle()));
      session =
          Sessions.take(
              session,
              step,
              (now, test) ->
                  Sessions.read(now, test, test.throttle().equals(Held.EIGHTH) ? -0.25 : 0.05));
      step = SENSOR.next(session);
    }
    assertThat(read).contains(Held.SMALL);
  }

  @Test
  void wideband_airFuelRatio_isRefusedWithTheQuestion() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Evidence.Wideband(Lambda.of(13.2)))
        .withMessageContaining("13.2")
        .withMessageContaining("is it an air-fuel ratio?")
        .withMessageContaining("λ 0.90");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Evidence.Wideband(Lambda.of(2.5)))
        .withMessageContaining("check the sensor");
  }

  @Test
  void readingWith_noInstrument_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tuner.readingWith(Set.of()))
        .withMessageContaining("at least one");
  }

  private static Observation full(Evidence evidence) {
    return Workshop.observation(8, FULL_RPM, evidence);
  }

  /** A λ that is off by so much in ln from what the model says. */
  private static Observation sensor(TuningSession session, int eighths, double off) {
    int rpm = 1400 + 760 * eighths;
    double modelled =
        MixtureModel.of(session.now().setup())
            .at(ThrottleOpening.ofEighths(eighths), EngineSpeed.ofRpm(rpm))
            .lambda()
            .value();
    return Workshop.observation(
        eighths, rpm, new Evidence.Wideband(Lambda.of(modelled * StrictMath.exp(off))));
  }

  /** The next step once nobody has found a fault. */
  private static NextStep looked(Tuner tuner, TuningSession session) {
    NextStep step = tuner.next(session);
    return step instanceof NextStep.LookForFault look ? tuner.next(looking(session, look)) : step;
  }

  private static TuningSession looking(TuningSession session, NextStep.LookForFault look) {
    return session.checking(
        look.faults().stream().map(Fault::settledBy).collect(Collectors.toSet()));
  }

  /** A session with good readings up to the first test of a kind. */
  private static TuningSession ledTo(Tuner tuner, SetupSheet sheet, NextTest.Kind kind) {
    TuningSession session = Sessions.begin(sheet);
    NextStep step = tuner.next(session);
    while (Sessions.test(step).filter(test -> test.kind() == kind).isEmpty()) {
      session = Sessions.take(session, step, (now, test) -> good(test));
      step = tuner.next(session);
    }
    return session;
  }

  /** And good readings for every further test on this setting. */
  private static TuningSession read(Tuner tuner, TuningSession session) {
    TuningSession longer = session;
    NextStep step = tuner.next(longer);
    while (step instanceof NextStep.Ride) {
      longer = Sessions.take(longer, step, (now, test) -> good(test));
      step = tuner.next(longer);
    }
    return longer;
  }
}
