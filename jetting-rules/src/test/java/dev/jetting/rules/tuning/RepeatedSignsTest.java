package dev.jetting.rules.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Signs that come back, stand alone, or are against what was seen before (common practice, no
 * source). A rider is honest unless the story says otherwise: he reads what the model says, leaner
 * or richer by a share.
 */
class RepeatedSignsTest {

  private static final Tuner PLUG = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
  private static final SetupSheet START = Workshop.start();

  private static Story lead(Tuner tuner, BiFunction<TuningSession, NextTest, Evidence> rider) {
    return Story.of(tuner, Sessions.begin(START), rider);
  }

  private static List<NextStep.LookForFault> looks(Story story) {
    return story.all(NextStep.LookForFault.class);
  }

  /** By how much in ln λ the end is leaner than the start, by the model. */
  private static double leaner(Story story, ThrottleOpening at) {
    Setting from = START.setup().setting();
    return Sessions.leaner(START, from, story.session().now().setup().setting(), at);
  }

  private static BiFunction<TuningSession, NextTest, Evidence> honest(double leaner) {
    return (now, test) -> Sessions.read(now, test, leaner);
  }

  private static BiFunction<TuningSession, NextTest, Evidence> honestBut(
      Predicate<NextTest> where, Evidence shown) {
    return (now, test) -> where.test(test) ? shown : Sessions.read(now, test, 0);
  }

  private static Observation at(TuningSession session, double share, Evidence seen) {
    ThrottleOpening throttle = ThrottleOpening.ofShare(share);
    return new Observation(throttle, session.now().setup().engine().loadLine().at(throttle), seen);
  }

  private static Evidence colour(PlugColour colour) {
    return new Evidence.Colour(colour);
  }

  private static Evidence felt(Symptom symptom) {
    return new Evidence.Felt(symptom);
  }

  /** A plug that is too cold stays black on any jet: the main jet does not follow it. */
  @Test
  void plugThatStaysBlack_asksWhyAfterTwoSizes_andEndsLongBeforeItIsLean() {
    Story story =
        lead(PLUG, honestBut(t -> t.kind() == NextTest.Kind.PLUG_CHOP, colour(PlugColour.BLACK)));

    assertThat(looks(story))
        .filteredOn(look -> look.why() == NextStep.LookForFault.Why.NO_DIFFERENCE)
        .first()
        .satisfies(
            look -> {
              assertThat(look.faults())
                  .contains(Fault.PLUG_TOO_COLD, Fault.TOO_MUCH_OIL, Fault.BREATHING);
              assertThat(look.observation().throttle()).isEqualTo(ThrottleOpening.FULL);
            });
    assertThat(story.end())
        .isInstanceOfSatisfying(
            NextStep.LeftRich.class,
            rich -> assertThat(rich.signs()).anyMatch(sign -> sign.isAt(ThrottleOpening.FULL)));
    assertThat(leaner(story, ThrottleOpening.FULL)).isBetween(0.08, 0.15);
  }

  /** A plug that stays dark is no better, on a lean engine too. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.08, 0.15})
  void plugThatStaysDark_asksWhy_andEndsBeforeItIsFarLeaner(double leaner) {
    Story story =
        lead(
            PLUG,
            (now, test) ->
                test.kind() == NextTest.Kind.PLUG_CHOP
                    ? colour(PlugColour.DARK)
                    : Sessions.read(now, test, leaner));
    double moved = leaner(story, ThrottleOpening.FULL);
    assertThat(moved).isLessThan(0.14);
    boolean asked =
        looks(story).stream()
            .anyMatch(look -> look.why() == NextStep.LookForFault.Why.NO_DIFFERENCE);
    assertThat(asked || moved < 0.10).isTrue();
  }

  /** Brown is the end of it: nobody looks for the size at which it turns pale. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.08, 0, 0.08, 0.15})
  void afterABrownPlug_noStepOfTheModelLeansThatPlace(double leaner) {
    TuningSession session = Sessions.begin(START);
    NextStep step = PLUG.next(session);
    for (int i = 0; i < 60 && !step.isEnd(); i++) {
      if (step instanceof NextStep.Change change && change.because().isEmpty()) {
        Setup now = session.now().setup();
        Setup then = now.withSetting(change.change().setting());
        if (change.change().reason() == NextChange.Reason.NEARER) {
          for (Sighting brown : new Trail(PLUG, session).brown()) {
            assertThat(brown.lnLambda(then) - brown.lnLambda(now)).isLessThanOrEqualTo(0.0101);
          }
        }
      }
      session = Sessions.take(session, step, honest(leaner));
      step = PLUG.next(session);
    }
    assertThat(step.isEnd()).isTrue();
  }

  /** A seizure and a black plug together mean that it never was the jet. */
  @ParameterizedTest
  @EnumSource(names = {"SEIZES", "PINGS", "FADES"})
  void harmAndABlackPlug_isNotSignedAway_andNothingGoesLeaner(Symptom harm) {
    boolean[] hurt = {false};
    Story story =
        lead(
            PLUG,
            (now, test) -> {
              if (!test.throttle().equals(ThrottleOpening.FULL)
                  || test.kind() == NextTest.Kind.RUN_DOWN) {
                return Sessions.read(now, test, 0);
              }
              Evidence seen = hurt[0] ? colour(PlugColour.BLACK) : felt(harm);
              hurt[0] = true;
              return seen;
            });
    assertThat(story.end())
        .isInstanceOfSatisfying(
            NextStep.FaultLeft.class,
            left -> {
              assertThat(left.observation().evidence()).isEqualTo(felt(harm));
              assertThat(left.faults())
                  .contains(Fault.IGNITION_TIMING, Fault.AIR_LEAK, Fault.FUEL_SHORT);
            });
    assertThat(leaner(story, ThrottleOpening.FULL)).isLessThan(0);
  }

  /** What the last reading denies is no sign at the end. */
  @Test
  void richSign_thatTheLastReadingDenies_noLongerStands() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 1, colour(PlugColour.BLACK)));
    session = session.observing(at(session, 1, colour(PlugColour.BROWN)));
    assertThat(new Findings(PLUG, session).openRich()).isEmpty();
  }

  /** What pings at a small opening may be the ignition, too. */
  @Test
  void pingsAtAnEighth_namesTheIgnition() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0.125, felt(Symptom.PINGS)));
    NextStep.MakeRicher richer = (NextStep.MakeRicher) PLUG.next(session);
    session = session.changing(session.now().setup().withSetting(richer.change().setting()));
    NextStep step = PLUG.next(session);
    while (step instanceof NextStep.MakeRicher more) {
      session = session.changing(session.now().setup().withSetting(more.change().setting()));
      step = PLUG.next(session);
    }
    assertThat(step)
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> assertThat(look.faults()).contains(Fault.IGNITION_TIMING, Fault.AIR_LEAK));
  }

  /** Each such test is ten seconds flat out with nothing learnt. */
  @Test
  void crispAgainAndAgain_endsUntilAPlugIsAtHand() {
    Story story =
        lead(
            PLUG,
            honestBut(
                t ->
                    t.throttle().equals(ThrottleOpening.FULL) && t.kind() != NextTest.Kind.RUN_DOWN,
                felt(Symptom.CRISP)));
    assertThat(story.end()).isInstanceOf(NextStep.Unread.class);
    assertThat(story.tests()).isLessThan(6);
    assertThat(SessionText.of(story.session(), PLUG))
        .contains("Not to be ridden yet: a crisp engine");

    TuningSession read =
        story.session().observing(at(story.session(), 1, colour(PlugColour.BROWN)));
    assertThat(PLUG.next(read).isEnd()).isFalse();
  }

  /** A bog at full throttle is read again by the plug, not by a roll-on. */
  @Test
  void bogAtFullThrottle_isReadAgainByThePlug() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 1, colour(PlugColour.BROWN)));
    session = session.observing(at(session, 1, felt(Symptom.BOGS)));
    assertThat(PLUG.next(session))
        .isInstanceOfSatisfying(
            NextStep.CheckReading.class,
            again -> assertThat(again.test().kind()).isEqualTo(NextTest.Kind.PLUG_CHOP));
  }

  /** One who reads colours upside down sees it darker on a smaller jet. */
  @Test
  void plugThatDarkensOnASmallerJet_isReadAgain_beforeAnotherIsChanged() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 1, colour(PlugColour.DARK)));
    Setup smaller =
        session
            .now()
            .setup()
            .withSetting(
                Alternatives.to(START.setup().setting(), START.parts()).stream()
                    .filter(to -> to.part() == MeteringPart.MAIN_JET)
                    .map(Alternatives.Alternative::setting)
                    .filter(to -> to.mainJet().compareTo(START.setup().setting().mainJet()) < 0)
                    .findFirst()
                    .orElseThrow());
    session = session.changing(smaller);
    session = session.observing(at(session, 1, colour(PlugColour.BLACK)));
    assertThat(PLUG.next(session)).isInstanceOf(NextStep.CheckReading.class);

    session = session.observing(at(session, 1, colour(PlugColour.BLACK)));
    assertThat(PLUG.next(session))
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> assertThat(look.faults()).contains(Fault.PLUG_TOO_COLD));
  }

  /** A lean sign that no part ends is a fault, long before the drawer is empty. */
  @ParameterizedTest
  @ValueSource(strings = {"SURGES", "HESITATES"})
  void leanSignThatNoPartEnds_asksWhy_thenEnds(Symptom symptom) {
    ThrottleOpening where = symptom == Symptom.SURGES ? Held.HALF : Held.EIGHTH;
    Story story = lead(PLUG, honestBut(t -> t.throttle().equals(where), felt(symptom)));

    assertThat(looks(story)).isNotEmpty();
    assertThat(looks(story).get(0).faults()).contains(Fault.AIR_LEAK, Fault.FUEL_LEVEL_LOW);
    assertThat(story.end()).isInstanceOfAny(NextStep.FaultLeft.class, NextStep.NotToBeRidden.class);
    assertThat(leaner(story, where)).isGreaterThan(-0.25);
  }

  @Test
  void overrunThatAlwaysPops_asksWhy() {
    Story story =
        lead(
            PLUG,
            honestBut(t -> t.kind() == NextTest.Kind.RUN_DOWN, new Evidence.Overrun(RunDown.POPS)));
    assertThat(looks(story))
        .anySatisfy(
            look -> assertThat(look.faults()).contains(Fault.AIR_LEAK, Fault.PILOT_BLOCKED));
    assertThat(story.end()).isNotInstanceOf(NextStep.Confirmed.class);
  }

  /** More cutaway leans an eighth more than the idle. */
  @ParameterizedTest
  @EnumSource(names = {"FASTER_LEANER", "BEYOND_LEAN"})
  void idleThatAnswersRich_isScrewAndPilotJet_neverTheSlide(IdleAnswer answer) {
    richIdle(new Evidence.Idle(answer));
  }

  @Test
  void idleThatStumbles_isScrewAndPilotJet_neverTheSlide() {
    richIdle(felt(Symptom.STUMBLES));
  }

  private static void richIdle(Evidence shown) {
    Story story = lead(PLUG, honestBut(t -> t.kind() == NextTest.Kind.IDLE, shown));
    List<MeteringPart> parts =
        story.all(NextStep.Change.class).stream()
            .filter(
                change ->
                    change
                        .because()
                        .filter(sign -> sign.observation().evidence().equals(shown))
                        .isPresent())
            .map(change -> change.change().part())
            .toList();
    assertThat(parts).isSubsetOf(MeteringPart.SCREW, MeteringPart.PILOT_JET);
    for (ThrottleOpening small : List.of(ThrottleOpening.ofShare(1 / 16.0), Held.EIGHTH)) {
      double need = START.setup().engine().need().at(small).value();
      double lambda =
          dev.jetting.core.mixture.MixtureModel.of(story.session().now().setup())
              .at(small)
              .lambda()
              .value();
      assertThat(lambda / need).isLessThan(1.05);
    }
  }

  /** What a sign asked for stays, whatever is nearer by the model. */
  @Test
  void whatALeanSignAskedFor_isNeverTakenBack() {
    boolean[] shown = {false};
    Story story =
        lead(
            PLUG,
            (now, test) -> {
              if (!test.throttle().equals(Held.EIGHTH)) {
                return Sessions.read(now, test, 0);
              }
              Evidence seen = felt(shown[0] ? Symptom.CLEAN : Symptom.BOGS);
              shown[0] = true;
              return seen;
            });
    NextStep.Change answer =
        story.all(NextStep.Change.class).stream()
            .filter(change -> change.because().filter(Sign::isLean).isPresent())
            .findFirst()
            .orElseThrow();
    double back =
        Sessions.leaner(
            START, answer.change().setting(), story.session().now().setup().setting(), Held.EIGHTH);
    assertThat(back).isLessThanOrEqualTo(0.0101);
  }

  /** An engine that changes under the rider is not jetted around. */
  @Test
  void leanWhereItWasFine_isReadAgain_thenLookedInto() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0.5, colour(PlugColour.BROWN)));
    session = session.observing(at(session, 0.5, colour(PlugColour.PALE)));
    assertThat(PLUG.next(session)).isInstanceOf(NextStep.CheckReading.class);

    TuningSession fine = session.observing(at(session, 0.5, colour(PlugColour.BROWN)));
    assertThat(PLUG.next(fine)).isInstanceOf(NextStep.Ride.class);

    TuningSession pale = session.observing(at(session, 0.5, colour(PlugColour.PALE)));
    assertThat(PLUG.next(pale))
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> assertThat(look.faults()).contains(Fault.AIR_LEAK, Fault.FUEL_LEVEL_LOW));
    assertThat(PLUG.next(pale.checking(Set.of(Check.values()))))
        .isInstanceOfSatisfying(
            NextStep.Change.class, change -> assertThat(change.because()).isPresent());
  }

  /** A sign at one opening while its neighbours are plainly rich is a fault before it is a jet. */
  @Test
  void leanBetweenBlackNeighbours_isReadAgain_andDoesNotLockTheSession() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 1, colour(PlugColour.BLACK)));
    session = session.observing(at(session, 0.25, colour(PlugColour.BLACK)));
    session = session.observing(at(session, 0.5, colour(PlugColour.PALE)));
    assertThat(PLUG.next(session)).isInstanceOf(NextStep.CheckReading.class);

    TuningSession again = session.observing(at(session, 0.5, colour(PlugColour.BLACK)));
    assertThat(new Findings(PLUG, again).open(Sign.Kind.LEAN)).isEmpty();
  }

  /** A lean sign that a rich one follows on a setup that is hardly richer no longer stands. */
  @Test
  void leanSign_thatARichOneFollows_isTakenBack() {
    TuningSession session = Sessions.begin(START);
    session = session.observing(at(session, 0.5, colour(PlugColour.PALE)));
    NextStep.Change richer = (NextStep.Change) PLUG.next(session);
    session = session.changing(session.now().setup().withSetting(richer.change().setting()));
    session = session.observing(at(session, 0.5, colour(PlugColour.BLACK)));
    Findings findings = new Findings(PLUG, session);
    assertThat(findings.trail().signs()).noneMatch(Sign::isLean);
    assertThat(findings.keepsWhatWasAsked(START.setup().setting())).isTrue();
  }

  /** After harm: two sizes richer, then the checks, then a ride. */
  @ParameterizedTest
  @EnumSource(names = {"PINGS", "SEIZES"})
  void afterHarm_theChecksComeBeforeTheNextRide(Symptom harm) {
    boolean[] hurt = {false};
    Story story =
        lead(
            PLUG,
            (now, test) -> {
              boolean first = test.throttle().equals(ThrottleOpening.FULL) && !hurt[0];
              hurt[0] |= first;
              return first ? felt(harm) : Sessions.read(now, test, 0);
            });
    int richer = 0;
    while (!(story.steps().get(richer) instanceof NextStep.MakeRicher)) {
      richer++;
    }
    while (story.steps().get(richer) instanceof NextStep.MakeRicher) {
      richer++;
    }
    assertThat(story.steps().get(richer))
        .isInstanceOfSatisfying(
            NextStep.LookForFault.class,
            look -> {
              assertThat(look.why()).isEqualTo(NextStep.LookForFault.Why.HARM);
              assertThat(look.faults())
                  .contains(Fault.AIR_LEAK, Fault.IGNITION_TIMING, Fault.FUEL_SHORT);
            });
  }

  /** A whole range black is the float level, the choke or the filter before it is six parts. */
  @Test
  void wholeRangeRich_asksForTheFuelLevel_beforeASecondPart() {
    for (Tuner tuner : List.of(PLUG, SENSOR)) {
      Story story = lead(tuner, honest(-0.24));
      int look = -1;
      long changes = 0;
      for (int i = 0; i < story.steps().size() && look < 0; i++) {
        changes += Sessions.change(story.steps().get(i)).isPresent() ? 1 : 0;
        boolean whole =
            story.steps().get(i) instanceof NextStep.LookForFault found
                && found.why() == NextStep.LookForFault.Why.WHOLE_RANGE;
        look = whole ? i : look;
      }
      assertThat(look).isPositive();
      assertThat(changes).isLessThanOrEqualTo(1);
      assertThat(looks(story))
          .anySatisfy(
              asked -> assertThat(asked.faults()).contains(Fault.FUEL_LEVEL_HIGH, Fault.CHOKE_ON));
    }
  }

  /** A size at a time, and read again, until it is right. */
  @Test
  void blackAtFull_isReadAgainRightAfterTheMainJet() {
    Story story = lead(PLUG, honest(-0.14));
    List<NextStep> steps = story.steps();
    int mains = 0;
    for (int i = 0; i + 1 < steps.size(); i++) {
      boolean main =
          steps.get(i) instanceof NextStep.Change change
              && change.change().part() == MeteringPart.MAIN_JET
              && change
                  .because()
                  .filter(sign -> sign.isAt(ThrottleOpening.FULL) && !sign.isLean())
                  .isPresent();
      if (main) {
        mains++;
        Optional<NextTest> next = Sessions.test(steps.get(i + 1));
        assertThat(next.map(NextTest::throttle)).contains(ThrottleOpening.FULL);
      }
    }
    assertThat(mains).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.16, -0.08, 0, 0.08, 0.15})
  void honestRiders_comeToAnEnd(double leaner) {
    for (Tuner tuner : List.of(PLUG, SENSOR)) {
      Story story = lead(tuner, honest(leaner));
      assertThat(story.end().isEnd()).isTrue();
      assertThat(story.tests()).isLessThan(36);
    }
  }
}
