package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Setting;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NextTestTest {

  @Test
  void of_nothingSeen_isFullThrottleFirst() {
    assertThat(next(begin(ALL_ROUND)).orElseThrow().throttle()).isEqualTo(ThrottleOpening.FULL);
  }

  @Test
  void of_fullThrottleSeen_mayGoDownOneOpeningAndNoFurther() {
    TuningSession session =
        begin(ALL_ROUND)
            .observing(Workshop.observation(8, 7500, new Evidence.Wideband(Lambda.of(0.80))));
    next(session)
        .ifPresent(
            test ->
                assertThat(test.throttle()).isGreaterThanOrEqualTo(ThrottleOpening.ofEighths(6)));
  }

  /** The first plug chop is not done on a main jet that is likely to be lean: change it first. */
  @Test
  void of_fullThrottleLikelyLean_isNone() {
    Setting lean = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12));
    assertThat(next(begin(lean))).isEmpty();
  }

  @Test
  void of_everythingWellKnownAndRich_isNone() {
    TuningSession session = begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.34)));
    for (int eighths : new int[] {8, 6, 4, 2, 1, 0}) {
      session =
          session.observing(
              Workshop.observation(
                  eighths, 1400 + 760 * eighths, new Evidence.Wideband(Lambda.of(0.72))));
    }
    assertThat(next(session)).isEmpty();
  }

  @Test
  void howTo_tellsTheCautions() {
    assertThat(String.join(" ", NextTest.HOW_TO))
        .contains("Off public roads", "closed", "clutch", "cool", "rich side");
  }

  /** What was wrong with the first reading would be wrong with the second. */
  @Test
  void of_openingSeenOnThisSetup_isNotAskedForAgain() {
    Setting setting = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.28));
    TuningSession session =
        begin(setting)
            .observing(Workshop.observation(8, 7500, new Evidence.Colour(PlugColour.BROWN)));
    assertThat(next(session).map(NextTest::throttle))
        .isNotEqualTo(Optional.of(ThrottleOpening.FULL));
  }

  @Test
  void of_severalInstruments_readsWithTheSharpest() {
    Optional<NextTest> test =
        next(
            begin(ALL_ROUND),
            Set.of(Instrument.PLUG, Instrument.WIDEBAND, Instrument.EXHAUST_THERMOMETER));
    assertThat(test.orElseThrow().instrument()).isEqualTo(Instrument.WIDEBAND);
  }

  /** A blunter instrument teaches less. */
  @Test
  void of_plugAlone_isExpectedToTeachLess() {
    NextTest plug = next(begin(ALL_ROUND), Set.of(Instrument.PLUG)).orElseThrow();
    assertThat(plug.taught()).isLessThan(next(begin(ALL_ROUND)).orElseThrow().taught());
  }

  @Test
  void of_noInstrument_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tuner.readingWith(Set.of()))
        .withMessageContaining("at least one");
  }

  @Test
  void howTo_startsWithTheOpeningAndEndsWithOneChange() {
    var steps = next(begin(ALL_ROUND)).orElseThrow().howTo();
    assertThat(steps.get(0)).isEqualTo("The test: full throttle at about 7500 rpm.");
    assertThat(steps).last().asString().contains("one thing, from the rich side");
    assertThat(String.join(" ", steps)).contains("no closed throttle").doesNotContain("insulator");
  }

  private static TuningSession begin(Setting setting) {
    return TuningSession.beginning(Workshop.sheet(setting));
  }

  private static Optional<NextTest> next(TuningSession session) {
    return next(session, Set.of(Instrument.WIDEBAND));
  }

  private static Optional<NextTest> next(TuningSession session, Set<Instrument> instruments) {
    Tuner tuner = Tuner.readingWith(instruments);
    return new TestChooser(tuner, session, tuner.calibration(session)).mostInstructive();
  }
}
