package dev.jetting.rules.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.Altitude;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Stories of a workshop that sessions once led to a wrong end (common practice, no source). A rider
 * is honest unless the story says otherwise: he reads what the model says.
 */
class WorkshopStoriesTest {

  private static final Tuner PLUG = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
  private static final SetupSheet START = Workshop.start();

  private static Story lead(
      Tuner tuner, TuningSession begun, BiFunction<TuningSession, NextTest, Evidence> rider) {
    return Story.of(tuner, begun, rider);
  }

  private static Evidence honest(TuningSession now, NextTest test) {
    return Sessions.read(now, test, 0);
  }

  private static Story honestToTheEnd(Tuner tuner) {
    return lead(tuner, Sessions.begin(START), WorkshopStoriesTest::honest);
  }

  /** Honest, except that each idle shows the same. */
  private static Story idling(Evidence shown) {
    return lead(
        PLUG,
        Sessions.begin(START),
        (now, test) -> test.kind() == NextTest.Kind.IDLE ? shown : honest(now, test));
  }

  private static Observation at(TuningSession session, double share, Evidence seen) {
    ThrottleOpening throttle = ThrottleOpening.ofShare(share);
    return new Observation(throttle, session.now().setup().engine().loadLine().at(throttle), seen);
  }

  /** What hurt the engine is richer and read again before it is trusted. */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.5, 0.75})
  void harmAnywhere_isReadAgainThere(double share) {
    TuningSession before = honestToTheEnd(PLUG).session();
    TuningSession hurt = before.observing(at(before, share, new Evidence.Felt(Symptom.PINGS)));

    Story story = lead(PLUG, hurt, WorkshopStoriesTest::honest);

    assertThat(story.steps()).filteredOn(NextStep.MakeRicher.class::isInstance).isNotEmpty();
    assertThat(story.steps())
        .flatExtracting(step -> Sessions.test(step).stream().toList())
        .extracting(NextTest::throttle)
        .contains(ThrottleOpening.ofShare(share));
  }

  /** A plug that was dark where the engine pings now says that no jet is the first to blame. */
  @Test
  void harmWhereThePlugWasDark_asksForAFaultFirst() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0.5, new Evidence.Colour(PlugColour.DARK)));
    session = session.observing(at(session, 0.5, new Evidence.Felt(Symptom.PINGS)));
    assertThat(PLUG.next(session))
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> assertThat(look.why()).isEqualTo(NextStep.LookForFault.Why.MISFIT));
  }

  /** A richer jet ends a lean mixture; what it does not end is no matter of jets. */
  @Test
  void harmThatComesBackTwice_endsWithAFaultToFind_beforeTheDrawerIsEmpty() {
    Evidence pings = new Evidence.Felt(Symptom.PINGS);
    Story story =
        lead(
            PLUG,
            Sessions.begin(START),
            (now, test) -> test.throttle().equals(Held.HALF) ? pings : honest(now, test));

    assertThat(story.end())
        .isInstanceOfSatisfying(
            NextStep.FaultLeft.class,
            left -> {
              assertThat(left.observation().evidence()).isEqualTo(pings);
              assertThat(left.faults()).contains(Fault.IGNITION_TIMING, Fault.AIR_LEAK);
            });
    assertThat(SessionText.of(story.session(), PLUG)).contains("Fuel of too low an octane number");
    assertThat(story.session().steps())
        .flatExtracting(TuningStep::observations)
        .filteredOn(seen -> seen.evidence().equals(pings))
        .hasSize(3);
  }

  /** What was read on one fuel was not read on another. */
  @Test
  void leanerFuelOnAFinishedSetting_isReadAnew() {
    Story finished = honestToTheEnd(SENSOR);
    assertThat(finished.end()).isInstanceOf(NextStep.Confirmed.class);
    Setup now = finished.session().now().setup();

    TuningSession refilled =
        finished
            .session()
            .changing(now.withFuel(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(25))));

    assertThat(SENSOR.next(refilled).isEnd()).isFalse();
  }

  /** Two sizes richer in colder air are not two sizes richer. */
  @Test
  void harmAnsweredInColderAir_isNotAnsweredYet() {
    TuningSession white =
        Sessions.begin(START)
            .observing(at(Sessions.begin(START), 1, new Evidence.Colour(PlugColour.WHITE)));
    NextStep.MakeRicher richer = (NextStep.MakeRicher) PLUG.next(white);
    Setup asked = white.now().setup().withSetting(richer.change().setting());

    assertThat(PLUG.next(white.changing(asked)))
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> assertThat(look.why()).isEqualTo(NextStep.LookForFault.Why.HARM));
    assertThat(PLUG.next(white.changing(asked.withAir(frost()))))
        .isInstanceOfSatisfying(
            NextStep.MakeRicher.class,
            more -> assertThat(more.change().part()).isEqualTo(MeteringPart.MAIN_JET));
  }

  private static Air frost() {
    return Air.at(Altitude.ofMetres(0), Temperature.ofCelsius(-15), RelativeHumidity.ofPercent(50));
  }

  /** A setting that a rule refuses is not ridden, although other settings of the session were. */
  @Test
  void dangerOfANewPart_isRefusedBeforeItIsRidden() {
    JetBore fitted = START.setup().setting().mainJet();
    Rule small =
        Rule.named("supply")
            .severity(Severity.DANGER)
            .judging(
                sheet ->
                    sheet.sheet().setup().setting().mainJet().compareTo(fitted) > 0
                        ? Outcome.failed(finding())
                        : Outcome.passed());
    Tuner strict = PLUG.withRulebook(Rulebook.of("shop", "1", List.of(small)));
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0, new Evidence.Idle(IdleAnswer.BEST)));
    assertThat(Sessions.test(strict.next(session))).isPresent();
    session = session.observing(at(session, 1, new Evidence.Colour(PlugColour.WHITE)));
    NextStep.MakeRicher richer = (NextStep.MakeRicher) strict.next(session);

    TuningSession bigger =
        session
            .changing(session.now().setup().withSetting(richer.change().setting()))
            .checking(Set.of(Check.values()));

    assertThat(strict.next(bigger)).isInstanceOf(NextStep.Refused.class);
  }

  private static Finding finding() {
    return Finding.above("setting", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
        .says("The supply is too small for this jet.", "Fit a bigger float valve.");
  }

  /** One box ticked and a plug read are no round of checks. */
  @Test
  void checksThatWereLeftOut_areAskedFor_thoughSomethingWasRead() {
    TuningSession session = TuningSession.beginning(START).checking(Set.of(Check.WARM_ENGINE));
    session = session.observing(at(session, 1, new Evidence.Colour(PlugColour.BROWN)));
    NextStep.TickOff rest = (NextStep.TickOff) PLUG.next(session);
    assertThat(rest.checks()).contains(Check.AIR_LEAK).doesNotContain(Check.WARM_ENGINE);
    assertThat(Sessions.test(PLUG.next(session.checking(Set.copyOf(rest.checks()))))).isPresent();
  }

  /** No jet is the first cause of it, and it is still there: no session ends as if it were read. */
  @ParameterizedTest
  @EnumSource(names = {"UNMOVED", "RACES", "RUNS_ON"})
  void idleThatNobodyCouldMend_endsTheSession(IdleAnswer answer) {
    Story story = idling(new Evidence.Idle(answer));
    assertThat(story.end()).isInstanceOf(NextStep.FaultLeft.class);
    assertThat(story.steps()).hasSizeLessThan(8);
  }

  /** The screw has shown that it does not reach. */
  @Test
  void idleBeyondTheScrew_isAPilotJet() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0, new Evidence.Idle(IdleAnswer.BEYOND_RICH)));
    NextStep.LookForFault look = (NextStep.LookForFault) PLUG.next(session);
    session = Sessions.take(session, look, WorkshopStoriesTest::honest);
    session = session.observing(at(session, 0, new Evidence.Idle(IdleAnswer.BEYOND_RICH)));
    NextStep step = PLUG.next(session);
    while (step instanceof NextStep.LookForFault again) {
      session = Sessions.take(session, again, WorkshopStoriesTest::honest);
      step = PLUG.next(session);
    }
    assertThat(Sessions.change(step).orElseThrow().part()).isEqualTo(MeteringPart.PILOT_JET);
  }

  /** An idle that wants the screw leaner is too rich: it is turned, or said to be left so. */
  @Test
  void idleFasterWithTheScrewLeaner_isMadeLeaner_orLeftRich() {
    Story story = idling(new Evidence.Idle(IdleAnswer.FASTER_LEANER));
    assertThat(story.end().isEnd()).isTrue();
    double leaner =
        Sessions.leaner(
            START,
            START.setup().setting(),
            story.session().now().setup().setting(),
            ThrottleOpening.CLOSED);
    assertThat(leaner > 0.005 || story.end() instanceof NextStep.LeftRich).isTrue();
  }

  /** A screw beyond its range is a wrong pilot jet, whatever asks for it. */
  @ParameterizedTest
  @EnumSource(names = {"HANGS", "STUMBLES"})
  void screw_staysWithinItsRange(Symptom symptom) {
    Story story = idling(new Evidence.Felt(symptom));
    assertThat(story.session().steps())
        .extracting(step -> step.setup().setting().screw().turns().turns())
        .allSatisfy(turns -> assertThat(turns).isBetween(0.75, 2.5));
    assertThat(story.end().isEnd()).isTrue();
  }

  /** A sensor that jumps is looked into, and not asked for ever. */
  @Test
  void sensorThatJumps_isLookedInto_andEndsTheSession() {
    int[] times = {0};
    Story story =
        lead(
            SENSOR,
            Sessions.begin(START),
            (now, test) ->
                test.throttle().equals(ThrottleOpening.FULL)
                    ? new Evidence.Wideband(Lambda.of(times[0]++ % 2 == 0 ? 0.58 : 0.82))
                    : honest(now, test));
    assertThat(story.end()).isInstanceOf(NextStep.FaultLeft.class);
    assertThat(SessionText.of(story.session(), SENSOR)).contains("Check the sensor");
  }

  /** At small openings a plug shows little: the engine is asked as well. */
  @Test
  void plugAtIdleAndAnEighth_isNoReadingOfThem() {
    TuningSession session = Sessions.begin(START);
    for (double share : new double[] {0, 0.125, 0.5, 1}) {
      session = session.observing(at(session, share, new Evidence.Colour(PlugColour.BROWN)));
    }
    NextTest test = Sessions.test(PLUG.next(session)).orElseThrow();
    assertThat(test.kind()).isEqualTo(NextTest.Kind.IDLE);
    assertThat(test.instrument()).isEqualTo(Instrument.FEEL);
  }

  @Test
  void feelAlone_leadsNoSession() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tuner.readingWith(Set.of(Instrument.FEEL)))
        .withMessageContaining("[FEEL]")
        .withMessageContaining("besides feel");
  }

  /** An overrun that dies is rich: the screw first, then the pilot jet. */
  @Test
  void overrun_isTheScrewWhereItDies_andThePilotWhereItPops() {
    assertThat(overrun(RunDown.DIES, Sign.Kind.RICH).get(0)).isEqualTo(MeteringPart.SCREW);
    assertThat(overrun(RunDown.POPS, Sign.Kind.LEAN).get(0)).isEqualTo(MeteringPart.PILOT_JET);
  }

  private static List<MeteringPart> overrun(RunDown seen, Sign.Kind kind) {
    return TradeOrder.at(
        new Sign(START.setup(), at(Sessions.begin(START), 0, new Evidence.Overrun(seen)), kind));
  }

  /** What is at hand was not enough, and is not bought again; the next sizes follow its steps. */
  @Test
  void shopping_beginsBeyondTheDrawer_inItsSteps() {
    JetBore own = START.setup().setting().mainJet();
    List<JetBore> drawer = List.of(own, JetBore.ofMillimetres(own.millimetres() + 0.025));
    SetupSheet sheet = START.withParts(START.parts().toBuilder().mainJets(drawer).build());
    double next = own.hundredths() + 2.5;
    assertThat(Shopping.richer(sheet, List.of(MeteringPart.MAIN_JET), PLUG.riskModel().steps()))
        .extracting(argument -> argument.text().replaceAll("[^0-9.]", ""))
        .extracting(Double::parseDouble)
        .containsExactly(next + 2.5, next + 5, next + 7.5);
  }

  /** Beyond the biggest that a sheet takes there is none to buy. */
  @Test
  void shopping_endsAtTheBiggestOfASheet() {
    List<JetBore> drawer = List.of(JetBore.ofMillimetres(1.7), JetBore.ofMillimetres(4.9));
    SetupSheet sheet = START.withParts(START.parts().toBuilder().mainJets(drawer).build());
    assertThat(Shopping.richer(sheet, List.of(MeteringPart.MAIN_JET), PLUG.riskModel().steps()))
        .isEmpty();
  }

  /** A second step towards lean waits for a reading of what the first one leaned. */
  @Test
  void twoStepsTowardsLean_areReadInBetween() {
    Story story = honestToTheEnd(SENSOR);
    TuningSession session = story.session();
    int leaned = 0;
    for (int i = 1; i < session.steps().size(); i++) {
      Setup before = session.steps().get(i - 1).setup();
      Setup after = session.steps().get(i).setup();
      for (ThrottleOpening mark : Held.OPENINGS) {
        double step = leaner(before, after, mark);
        Optional<Setup> read = lastRead(session, i, mark);
        if (step > 0.01 && read.isPresent()) {
          leaned++;
          double already = leaner(read.get(), before, mark);
          assertThat(already <= 0.0101 || already + step <= 0.0401).as("%s", mark).isTrue();
        }
      }
    }
    assertThat(leaned).isPositive();
  }

  private static Optional<Setup> lastRead(TuningSession session, int to, ThrottleOpening mark) {
    return session.steps().subList(0, to).stream()
        .filter(step -> step.observations().stream().anyMatch(seen -> seen.throttle().equals(mark)))
        .map(TuningStep::setup)
        .reduce((earlier, later) -> later);
  }

  private static double leaner(Setup from, Setup to, ThrottleOpening mark) {
    Setting setting = to.setting();
    return Sessions.leaner(START, from.setting(), setting, mark);
  }
}
