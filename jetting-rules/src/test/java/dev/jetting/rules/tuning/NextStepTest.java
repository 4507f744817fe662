package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How a session ends. */
class NextStepTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final Set<Instrument> SENSOR = Set.of(Instrument.WIDEBAND);

  /** All that is left to do on it is to confirm its last setting. */
  static final TuningSession UNREAD = ledToConfirming();

  @Test
  void of_lastSettingUnread_isATestToConfirmIt() {
    NextStep step = step(UNREAD);
    assertThat(UNREAD.steps().get(UNREAD.steps().size() - 1).looks()).isEmpty();
    assertThat(NextTest.of(UNREAD, RISK, Meanings.assumed(), SENSOR)).isEmpty();
    assertThat(NextChange.of(UNREAD, RISK, Meanings.assumed())).isEmpty();
    assertThat(step.confirming()).isTrue();
    assertThat(step.change()).isEmpty();
    assertThat(step.test()).isPresent();
  }

  @Test
  void of_oneReadingThatAgrees_endsTheSession() {
    assertThat(step(reading(1)).isNone()).isTrue();
  }

  /** A reading that makes a leaner setting look possible is no reason to begin anew. */
  @Test
  void of_confirmingReadingRicherThanExpected_startsNoNewSearch() {
    TuningSession richer = reading(0.94);
    assertThat(richer.isConfirmed(RISK, Meanings.assumed())).isTrue();
    assertThat(NextChange.of(richer, RISK, Meanings.assumed())).isPresent();
    assertThat(step(richer).change()).isEmpty();
  }

  /** Leaner by a sixth than expected, and so above the accepted risk. */
  @Test
  void of_confirmingReadingTooLean_isASaferChangeThatHasToBeConfirmedToo() {
    TuningSession leaner = reading(1.16);
    NextChange change = step(leaner).change().orElseThrow();
    assertThat(change.after().worst().leanRisk()).isLessThan(change.before().worst().leanRisk());
    TuningSession changed = leaner.changing(leaner.now().setup().withSetting(change.setting()));
    assertThat(changed.isConfirmed(RISK, Meanings.assumed())).isFalse();
    assertThat(step(changed).isNone()).isFalse();
  }

  /** A third less λ than all the rest says is a sensor gone wrong; another opening has to tell. */
  @Test
  void of_readingThatDisagreesWithTheRest_doesNotConfirm() {
    TuningSession wrong = reading(0.65);
    assertThat(wrong.warnings(RISK, Meanings.assumed())).isNotEmpty();
    assertThat(wrong.isConfirmed(RISK, Meanings.assumed())).isFalse();
    NextStep step = step(wrong);
    assertThat(step.change()).isEmpty();
    assertThat(step.test().orElseThrow().throttle())
        .isNotEqualTo(step(UNREAD).test().orElseThrow().throttle());
  }

  @Test
  void step_testAndChangeAtOnce_isRefused() {
    Optional<NextTest> test = step(UNREAD).test();
    Optional<NextChange> change = step(reading(1.16)).change();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NextStep(test, change, false))
        .withMessageContaining("allowed a test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NextStep(Optional.empty(), change, true))
        .withMessageContaining("allowed a test");
  }

  /** The confirming reading, off by a factor from what is expected. */
  private static TuningSession reading(double factor) {
    return seeing(UNREAD, step(UNREAD).test().orElseThrow(), factor);
  }

  private static TuningSession seeing(TuningSession session, NextTest test, double factor) {
    MixtureModel model = MixtureModel.of(session.now().setup());
    double expected =
        session.calibration(RISK, Meanings.assumed()).on(model).expected(test.throttle()).value();
    return session.seeing(
        new Look(test.throttle(), test.speed(), new Seen.Wideband(Lambda.of(expected * factor))));
  }

  private static NextStep step(TuningSession session) {
    return NextStep.of(session, RISK, Meanings.assumed(), SENSOR);
  }

  /** Far too rich to begin with, and every reading as expected. */
  private static TuningSession ledToConfirming() {
    TuningSession session =
        TuningSession.beginning(Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.36))));
    NextStep step = step(session);
    while (!step.isNone() && !step.confirming()) {
      session =
          step.test().isPresent()
              ? seeing(session, step.test().get(), 1)
              : session.changing(
                  session.now().setup().withSetting(step.change().orElseThrow().setting()));
      step = step(session);
    }
    return session;
  }
}
