package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What an idle shows is evidence, and a fault comes before a jet where no jet is to blame first.
 */
class IdleAnswerTest {

  private static final SetupSheet SHEET = Workshop.sheet(ALL_ROUND);
  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final double IDLE_RPM = 1500;

  @ParameterizedTest
  @EnumSource(names = {"UNMOVED", "RACES", "RUNS_ON", "BEYOND_RICH"})
  void next_noJetIsTheFirstCause_looksForAnAirLeakBeforeAnyPart_once(IdleAnswer answer) {
    TuningSession seen = seeing(answer);
    NextStep next = TUNER.next(seen);
    assertThat(next).isInstanceOf(NextStep.LookForFault.class);
    NextStep.LookForFault look = (NextStep.LookForFault) next;
    assertThat(look.faults()).contains(Fault.AIR_LEAK);
    assertThat(look.observation().evidence()).isEqualTo(new Evidence.Idle(answer));

    NextStep after = TUNER.next(Sessions.take(seen, next, (now, test) -> new Evidence.Proven()));
    assertThat(after).isNotInstanceOf(NextStep.LookForFault.class);
  }

  /** Common practice, no source: nothing changes with the screw, so the pilot is blocked. */
  @Test
  void next_screwChangesNothing_namesTheBlockedPilotFirst() {
    NextStep.LookForFault look = (NextStep.LookForFault) TUNER.next(seeing(IdleAnswer.UNMOVED));
    assertThat(look.faults()).startsWith(Fault.PILOT_BLOCKED);
  }

  @Test
  void next_fasterTowardsRich_isALeanSign_thatTheScrewAnswersFirst() {
    NextStep next = TUNER.next(seeing(IdleAnswer.FASTER_RICHER));
    assertThat(next).isInstanceOf(NextStep.Change.class);
    NextChange change = ((NextStep.Change) next).change();
    assertThat(change.reason()).isEqualTo(NextChange.Reason.SIGN);
    assertThat(change.setting().screw()).isNotEqualTo(ALL_ROUND.screw());
  }

  @Test
  void next_best_asksForNoChangeAndGoesOnToFullThrottle() {
    NextStep next = TUNER.next(seeing(IdleAnswer.BEST));
    assertThat(Sessions.test(next).orElseThrow().throttle()).isEqualTo(ThrottleOpening.FULL);
  }

  /** An idle that races is more air than the slide lets in, whatever the mixture. */
  @Test
  void anyFault_idleRaces_isAnAirLeakFarMoreThanBefore() {
    Hypotheses quiet = new Findings(TUNER, Sessions.begin(SHEET)).hypotheses();
    Hypotheses racing = new Findings(TUNER, seeing(IdleAnswer.RACES)).hypotheses();
    assertThat(leak(racing)).isGreaterThan(20 * leak(quiet));
    assertThat(racing.faults().get(0).fault()).contains(Fault.AIR_LEAK);
  }

  /** The same rider hears the same thing; only once somebody has looked is it heard anew. */
  @Test
  void anyFault_racesAgain_isNoSecondWitness_untilSomebodyLooked() {
    TuningSession once = seeing(IdleAnswer.RACES);
    TuningSession twice = once.observing(idle(IdleAnswer.RACES));
    assertThat(leak(of(twice))).isEqualTo(leak(of(once)));

    TuningSession looked = once.checking(EnumSet.of(Check.AIR_LEAK));
    assertThat(leak(of(looked))).isLessThan(leak(of(once)) / 3);
    Setup other = SHEET.setup().withSetting(ALL_ROUND.withMainJet(SHEET.parts().mainJets().get(0)));
    TuningSession still = looked.changing(other).observing(idle(IdleAnswer.RACES));
    assertThat(leak(of(still))).isGreaterThan(2 * leak(of(once)));
  }

  /** Each says more than the one before, and none of them what it does not know. */
  @Test
  void reading_isABandOfTheMixtureAtIdle_orNone() {
    Reading best = reading(IdleAnswer.BEST).orElseThrow();
    Reading richer = reading(IdleAnswer.FASTER_RICHER).orElseThrow();
    Reading beyond = reading(IdleAnswer.BEYOND_RICH).orElseThrow();
    Reading leaner = reading(IdleAnswer.FASTER_LEANER).orElseThrow();
    Reading farLeaner = reading(IdleAnswer.BEYOND_LEAN).orElseThrow();
    double need = SHEET.setup().engine().need().at(ThrottleOpening.CLOSED).value();

    assertThat(need).isBetween(best.from().value(), best.to().value());
    assertThat(richer.from()).isEqualTo(best.to());
    assertThat(leaner.to()).isEqualTo(best.from());
    assertThat(beyond.from().value()).isGreaterThan(richer.from().value());
    assertThat(farLeaner.to().value()).isLessThan(leaner.to().value());
    assertThat(reading(IdleAnswer.UNMOVED)).isEmpty();
    assertThat(reading(IdleAnswer.RACES)).isEmpty();
    assertThat(reading(IdleAnswer.RUNS_ON)).isEmpty();
  }

  @Test
  void observation_ofAnIdleWithTheThrottleOpen_isRefused() {
    Evidence races = new Evidence.Idle(IdleAnswer.RACES);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Workshop.observation(4, 4000, races))
        .withMessageContaining("allowed closed");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ProvenObservation(ThrottleOpening.FULL, races))
        .withMessageContaining("allowed closed");
  }

  @Test
  void text_inEachLanguage_saysWhatWasSeenAndThatNoJetIsToBlameFirst() {
    TuningSession seen = seeing(IdleAnswer.RACES);
    assertThat(SessionText.of(seen, TUNER))
        .contains("an idle that races with the slide shut")
        .contains("No jet is the first cause of this.");
    assertThat(SessionText.of(seen, TUNER, Wording.of(Locale.GERMAN))).contains("Falschluft");
    assertThat(SessionText.of(seen, TUNER, Wording.of(Locale.ITALIAN))).contains("aria parassita");
  }

  @ParameterizedTest
  @EnumSource
  void json_writtenAndRead_isTheSameSession(IdleAnswer answer) {
    TuningSession seen = seeing(answer);
    String json = SessionJson.write(seen);
    assertThat(json).contains("\"idle\"");
    assertThat(SessionJson.read(json)).isEqualTo(seen);
  }

  private static Optional<Reading> reading(IdleAnswer answer) {
    Observation seen = idle(answer);
    return seen.evidence()
        .reading(SHEET.setup(), seen.throttle(), seen.speed(), Meanings.assumed());
  }

  private static Hypotheses of(TuningSession session) {
    return new Findings(TUNER, session).hypotheses();
  }

  private static double leak(Hypotheses found) {
    return found.faults().stream()
        .filter(one -> one.fault().equals(Optional.of(Fault.AIR_LEAK)))
        .mapToDouble(Hypotheses.Hypothesis::probability)
        .sum();
  }

  private static TuningSession seeing(IdleAnswer answer) {
    return Sessions.begin(SHEET).observing(idle(answer));
  }

  private static Observation idle(IdleAnswer answer) {
    return Workshop.observation(0, IDLE_RPM, new Evidence.Idle(answer));
  }
}
