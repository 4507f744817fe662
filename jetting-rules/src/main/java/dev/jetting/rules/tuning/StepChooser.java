package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the next step of a session.
 *
 * <p>A session does not end on an accepted setting that nobody has read: once nothing is worth a
 * test or a change, one more test confirms the setting, where its risk is highest. Should the
 * reading take the risk above what is accepted, a safer change follows. A reading that leaves it
 * accepted confirms the setting; no search for a nearer one starts from it, which would have to be
 * confirmed in its turn. A λ that disagrees with all the rest confirms nothing: another opening has
 * to.
 */
final class StepChooser {

  /** From so many standard deviations on a reading disagrees (assumed). */
  static final double DISAGREES = 3;

  private final Tuner tuner;
  private final TuningSession session;
  private final Calibration calibration;
  private final TestChooser tests;

  StepChooser(Tuner tuner, TuningSession session) {
    this.tuner = tuner;
    this.session = session;
    calibration = tuner.calibration(session);
    tests = new TestChooser(tuner, session, calibration);
  }

  NextStep next() {
    Optional<NextStep> step = beforeConfirming();
    if (step.isPresent()) {
      return step.get();
    }
    if (!isAccepted()) {
      return new NextStep.NotToBeRidden();
    }
    return (isConfirmed() ? Optional.<NextTest>empty() : tests.riskiest())
        .<NextStep>map(test -> new NextStep.Ride(test, true))
        .orElseGet(NextStep.Confirmed::new);
  }

  /** Whether something seen on the setup as it is agrees with the rest. */
  boolean isConfirmed() {
    List<Reading> odd = calibration.disagreeing(DISAGREES);
    return session.last().readings(tuner.meanings()).stream()
        .anyMatch(reading -> !odd.contains(reading));
  }

  private boolean isAccepted() {
    return ChangeChooser.accepts(session.now(), tuner.riskModel(), calibration);
  }

  private Optional<NextStep> beforeConfirming() {
    Optional<NextTest> test = tests.mostInstructive();
    if (test.isPresent()) {
      return test.map(found -> new NextStep.Ride(found, false));
    }
    Optional<NextChange> change =
        ChangeChooser.choose(session.now(), tuner.riskModel(), calibration);
    return change.isPresent() && isAccepted() && wasConfirming()
        ? Optional.empty()
        : change.map(NextStep.Change::new);
  }

  /** Whether the last reading was taken where nothing was left but to confirm. */
  private boolean wasConfirming() {
    return !session.last().observations().isEmpty()
        && new StepChooser(tuner, session.undone()).beforeConfirming().isEmpty();
  }
}
