package dev.jetting.rules.laws;

import com.google.common.base.Suppliers;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A candidate on a trial: what the check of a law looks at. Assesses the sheet once, before and
 * after the change.
 */
public final class Experiment {

  private final Candidate candidate;
  private final Trial trial;
  private final Supplier<AssessedSetting> before;
  private final Supplier<Optional<AssessedSetting>> after;

  Experiment(Candidate candidate, Trial trial) {
    this.candidate = Objects.requireNonNull(candidate, "candidate");
    this.trial = Objects.requireNonNull(trial, "trial");
    before = Suppliers.memoize(() -> assessed(trial.sheet()));
    after =
        Suppliers.memoize(
            () -> trial.change().flatMap(change -> change.on(trial.sheet())).map(this::assessed));
  }

  /** {@return the candidate} */
  public Candidate candidate() {
    return candidate;
  }

  /** {@return the trial} */
  public Trial trial() {
    return trial;
  }

  /** {@return the trial's sheet, assessed} */
  public AssessedSetting before() {
    return before.get();
  }

  /** {@return the sheet after the change, assessed; empty without a change that can be done} */
  public Optional<AssessedSetting> after() {
    return after.get();
  }

  /** {@return the trial's sheet, assessed anew} */
  public AssessedSetting again() {
    return assessed(trial.sheet());
  }

  AssessedSetting assessed(SetupSheet sheet) {
    try {
      return candidate.assess(sheet);
    } catch (IllegalArgumentException e) {
      throw new NotAssessable(e);
    }
  }

  /** The sheet is beyond what the model takes: no fault of a rule. */
  static final class NotAssessable extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotAssessable(IllegalArgumentException cause) {
      super(cause.getMessage(), cause);
    }
  }
}
