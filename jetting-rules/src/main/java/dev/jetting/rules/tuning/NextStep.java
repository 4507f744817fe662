package dev.jetting.rules.tuning;

import dev.jetting.rules.risk.RiskModel;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What to do next in a session: a test or a change, or nothing, which ends it.
 *
 * <p>A session does not end on a setting that may be ridden and that nobody has read: once nothing
 * is worth a test or a change, one more test is to confirm the setting, where its risk is highest.
 * Should the reading take the risk above what is accepted, a safer change follows. A reading that
 * leaves it accepted confirms the setting; no search for a nearer one starts from it, which would
 * have to be confirmed in its turn. A λ that disagrees with all the rest, as in {@link
 * TuningSession#warnings}, confirms nothing: another opening has to.
 *
 * <p>A setting that is too lean and that no single part at hand makes safer ends the session
 * without a test: it is not to be ridden.
 *
 * <p>Not a proof that the setting is safe: one reading is one opening, and may be wrong itself.
 *
 * @param test the test to ride; empty if it is not a test
 * @param change the change to make; empty if it is not a change
 * @param confirming whether it is a test to confirm a setting with which the session could end
 */
public record NextStep(Optional<NextTest> test, Optional<NextChange> change, boolean confirming) {

  /**
   * Checks that it is one step.
   *
   * @param test the test to ride; empty if it is not a test
   * @param change the change to make; empty if it is not a change
   * @param confirming whether it is a test to confirm a setting with which the session could end
   * @throws IllegalArgumentException if it is a test and a change, or confirms without a test
   */
  public NextStep {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(change, "change");
    boolean both = test.isPresent() && change.isPresent();
    if (both || (confirming && test.isEmpty())) {
      throw new IllegalArgumentException(
          "next step: allowed a test, which may be to confirm, or a change, or neither");
    }
  }

  /**
   * The next step.
   *
   * @param session the session so far
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @param instruments what the rider has to read with, the same all along; at least one
   * @return the step; neither a test nor a change where the session ends
   * @throws IllegalArgumentException if there is no instrument
   */
  public static NextStep of(
      TuningSession session, RiskModel riskModel, Meanings meanings, Set<Instrument> instruments) {
    NextStep step = beforeConfirming(session, riskModel, meanings, instruments);
    if (!step.isNone() || !session.isSafe(riskModel, meanings)) {
      return step;
    }
    Optional<NextTest> test = NextTest.confirming(session, riskModel, meanings, instruments);
    return new NextStep(test, Optional.empty(), test.isPresent());
  }

  /**
   * Whether the session ends; whether well, {@link TuningSession#isSafe} tells.
   *
   * @return true if there is neither a test nor a change
   */
  public boolean isNone() {
    return test.isEmpty() && change.isEmpty();
  }

  private static NextStep beforeConfirming(
      TuningSession session, RiskModel riskModel, Meanings meanings, Set<Instrument> instruments) {
    Optional<NextTest> test = NextTest.of(session, riskModel, meanings, instruments);
    Optional<NextChange> change =
        test.isPresent() ? Optional.empty() : NextChange.of(session, riskModel, meanings);
    boolean confirmed =
        change.isPresent()
            && session.isSafe(riskModel, meanings)
            && wasConfirming(session, riskModel, meanings, instruments);
    return new NextStep(test, confirmed ? Optional.empty() : change, false);
  }

  /** Whether the last reading was taken where nothing was left but to confirm. */
  private static boolean wasConfirming(
      TuningSession session, RiskModel riskModel, Meanings meanings, Set<Instrument> instruments) {
    List<TuningStep> steps = session.steps();
    return !steps.get(steps.size() - 1).looks().isEmpty()
        && beforeConfirming(session.undone(), riskModel, meanings, instruments).isNone();
  }
}
