package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How a session ends. */
class NextStepTest {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.WIDEBAND));

  /** All that is left to do on it is to confirm its last setting. */
  static final TuningSession UNREAD = ledToConfirming();

  @Test
  void next_lastSettingUnread_isATestToConfirmIt() {
    assertThat(UNREAD.last().observations()).isEmpty();
    assertThat(TUNER.next(UNREAD))
        .isInstanceOfSatisfying(
            NextStep.Ride.class, ride -> assertThat(ride.confirming()).isTrue());
  }

  @Test
  void next_oneReadingThatAgrees_endsTheSession() {
    assertThat(TUNER.next(reading(1))).isInstanceOf(NextStep.Confirmed.class);
  }

  /** A reading that makes a leaner setting look possible is no reason to begin anew. */
  @Test
  void next_confirmingReadingRicherThanExpected_startsNoNewSearch() {
    TuningSession richer = reading(0.94);
    assertThat(new StepChooser(TUNER, richer).isConfirmed()).isTrue();
    assertThat(ChangeChooser.choose(richer.now(), TUNER.riskModel(), TUNER.calibration(richer)))
        .isPresent();
    assertThat(TUNER.next(richer)).isNotInstanceOf(NextStep.Change.class);
  }

  /** Leaner by a sixth than expected, and so above the accepted risk. */
  @Test
  void next_confirmingReadingTooLean_isASaferChangeThatHasToBeConfirmedToo() {
    TuningSession leaner = reading(1.16);
    NextChange change = ((NextStep.Change) TUNER.next(leaner)).change();
    assertThat(change.after().worst().leanRisk()).isLessThan(change.before().worst().leanRisk());
    TuningSession changed = leaner.changing(leaner.now().setup().withSetting(change.setting()));
    assertThat(new StepChooser(TUNER, changed).isConfirmed()).isFalse();
    assertThat(TUNER.next(changed).isEnd()).isFalse();
  }

  /** A third less λ than all the rest says is a sensor gone wrong; another opening has to tell. */
  @Test
  void next_readingThatDisagreesWithTheRest_doesNotConfirm() {
    TuningSession wrong = reading(0.65);
    assertThat(Warnings.of(wrong, TUNER.calibration(wrong))).isNotEmpty();
    assertThat(new StepChooser(TUNER, wrong).isConfirmed()).isFalse();
    assertThat(((NextStep.Ride) TUNER.next(wrong)).test().throttle())
        .isNotEqualTo(((NextStep.Ride) TUNER.next(UNREAD)).test().throttle());
  }

  /** The confirming reading, off by a factor from what is expected. */
  private static TuningSession reading(double factor) {
    return observing(UNREAD, ((NextStep.Ride) TUNER.next(UNREAD)).test(), factor);
  }

  private static TuningSession observing(TuningSession session, NextTest test, double factor) {
    MixtureModel model = MixtureModel.of(session.now().setup());
    double expected = TUNER.calibration(session).on(model).expected(test.throttle()).value();
    return session.observing(
        new Observation(
            test.throttle(), test.speed(), new Evidence.Wideband(Lambda.of(expected * factor))));
  }

  /** Far too rich to begin with, and every reading as expected. */
  private static TuningSession ledToConfirming() {
    TuningSession session =
        TuningSession.beginning(Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.36))));
    NextStep step = TUNER.next(session);
    while (!step.isEnd() && !(step instanceof NextStep.Ride ride && ride.confirming())) {
      session =
          step instanceof NextStep.Ride ride
              ? observing(session, ride.test(), 1)
              : session.changing(
                  session.now().setup().withSetting(((NextStep.Change) step).change().setting()));
      step = TUNER.next(session);
    }
    return session;
  }
}
