package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import java.util.Optional;

/**
 * A rule that a change of a part takes from passed to failed, or back. The change is halved until
 * both sides are next to each other. Both must then be next to the limit.
 */
final class MarginLaw {

  /** A change by less than a ten-millionth of its step. */
  private static final int HALVINGS = 24;

  /** By how much of its own size a number may differ from its limit there. */
  private static final double TOLERANCE = 1e-4;

  /** Numbers below it count as this big: halving a change does not come nearer to a limit of 0. */
  private static final double LEAST_SIZE = 0.01;

  private MarginLaw() {}

  static LawVerdict check(Rule rule, Experiment experiment) {
    Optional<PartChange> change = experiment.trial().change();
    Optional<AssessedSetting> after = experiment.after();
    if (change.isEmpty() || after.isEmpty()) {
      return LawVerdict.notTried("no change that can be done");
    }
    Outcome near = rule.evaluate(experiment.before());
    Outcome far = rule.evaluate(after.get());
    if (!cross(near, far)) {
      return LawVerdict.notTried("the change does not take the rule from passed to failed or back");
    }
    double share = 1;
    double from = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (from + share) / 2;
      Optional<Outcome> there = at(middle, change.get(), rule, experiment);
      if (there.isEmpty() || !(cross(near, there.get()) || cross(there.get(), far))) {
        return LawVerdict.notTried("the change cannot be halved, or the rule is silent between");
      }
      if (cross(near, there.get())) {
        share = middle;
        far = there.get();
      } else {
        from = middle;
        near = there.get();
      }
    }
    Outcome passed = near.status() == Status.PASSED ? near : far;
    Outcome failed = near.status() == Status.PASSED ? far : near;
    return apart(passed)
        .or(() -> apart(failed))
        .map(how -> LawVerdict.violated(rule.id(), "where it turns from passed to failed, " + how))
        .orElseGet(LawVerdict::held);
  }

  private static boolean cross(Outcome a, Outcome b) {
    return (a.status() == Status.PASSED && b.status() == Status.FAILED)
        || (a.status() == Status.FAILED && b.status() == Status.PASSED);
  }

  private static Optional<Outcome> at(
      double share, PartChange change, Rule rule, Experiment experiment) {
    return new PartChange(change.part(), change.way(), change.step() * share)
        .on(experiment.trial().sheet())
        .map(sheet -> rule.evaluate(experiment.assessed(sheet)));
  }

  /** Why the number of an outcome is not next to its limit; a count is next to it within one. */
  private static Optional<String> apart(Outcome outcome) {
    Optional<Margin> margin = outcome.nearest();
    if (margin.isEmpty()) {
      return Optional.of("it states no number where it " + word(outcome));
    }
    double measured = margin.get().measured().value();
    double limit = margin.get().limit().value();
    double left = Math.abs(margin.get().left().value());
    boolean counted = measured == Math.rint(measured) && limit == Math.rint(limit) && left <= 1;
    double size = Math.max(Math.abs(measured), Math.abs(limit));
    return counted || left <= TOLERANCE * Math.max(size, LEAST_SIZE)
        ? Optional.empty()
        : Optional.of(
            "it "
                + word(outcome)
                + " with "
                + margin.get().measured()
                + " against a limit of "
                + margin.get().limit()
                + ": what passes and what fails are not the same number");
  }

  private static String word(Outcome outcome) {
    return outcome.status() == Status.PASSED ? "passes" : "fails";
  }
}
