package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import dev.jetting.rules.Outcome.Branch;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The algebra of outcomes. Not-applicable branches have no say; a broken branch breaks the whole;
 * what could not be evaluated leaves the whole open unless another branch decides it.
 */
final class Composition {

  private Composition() {}

  static Outcome all(List<Rule> rules, AssessedSetting setting) {
    return decide(branches(rules, setting), Status.FAILED, Status.PASSED);
  }

  static Outcome any(List<Rule> rules, AssessedSetting setting) {
    return decide(branches(rules, setting), Status.PASSED, Status.FAILED);
  }

  static Outcome not(Rule rule, AssessedSetting setting) {
    Branch inner = new Branch(rule.id(), rule.evaluate(setting));
    Status status =
        switch (inner.outcome().status()) {
          case PASSED -> Status.FAILED;
          case FAILED -> Status.PASSED;
          case NOT_APPLICABLE, NOT_EVALUATED, BROKEN -> inner.outcome().status();
        };
    // not(not(r)) gives the findings of r back: what the inner not kept in its branches.
    List<Finding> findings =
        status == Status.FAILED
            ? inner.outcome().branches().stream()
                .flatMap(branch -> branch.outcome().findings().stream())
                .toList()
            : List.of();
    return new Outcome(
        status,
        findings,
        inner.outcome().why(),
        List.of(inner),
        inner.outcome().nearest().map(Margin::turned));
  }

  private static List<Branch> branches(List<Rule> rules, AssessedSetting setting) {
    return rules.stream().map(rule -> new Branch(rule.id(), rule.evaluate(setting))).toList();
  }

  /** The deciding status wins over all but a broken branch; the other one is the default. */
  private static Outcome decide(List<Branch> branches, Status deciding, Status otherwise) {
    Status status =
        any(branches, Status.BROKEN)
            ? Status.BROKEN
            : any(branches, deciding)
                ? deciding
                : any(branches, Status.NOT_EVALUATED)
                    ? Status.NOT_EVALUATED
                    : !branches.isEmpty() && all(branches, Status.NOT_APPLICABLE)
                        ? Status.NOT_APPLICABLE
                        : otherwise;
    ImmutableList<Finding> findings =
        status == Status.FAILED
            ? branches.stream()
                .flatMap(branch -> branch.outcome().findings().stream())
                .collect(ImmutableList.toImmutableList())
            : ImmutableList.of();
    Message why =
        branches.stream()
            .filter(branch -> status != Status.PASSED && status != Status.FAILED)
            .filter(branch -> branch.outcome().status() == status)
            .map(Composition::why)
            .findFirst()
            .orElse(Message.plain(""));
    return new Outcome(status, findings, why, branches, margin(branches, status, deciding));
  }

  private static Message why(Branch branch) {
    return Message.plain("{rule}: {reason}")
        .with("rule", Argument.name(branch.ruleId()))
        .with("reason", Argument.words(branch.outcome().why()));
  }

  /**
   * One branch that decides is enough, so that the last of them to do so counts; where none does,
   * the first that would.
   */
  private static Optional<Margin> margin(List<Branch> branches, Status status, Status deciding) {
    List<Optional<Margin>> margins =
        branches.stream()
            .map(Branch::outcome)
            .filter(outcome -> outcome.status() == status)
            .map(Outcome::nearest)
            .toList();
    boolean furthest = deciding == Status.PASSED;
    if (furthest && margins.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    List<Margin> known = margins.stream().flatMap(Optional::stream).toList();
    return furthest
        ? known.stream().max(Comparator.comparingDouble(Margin::share))
        : Margin.nearest(known);
  }

  private static boolean any(List<Branch> branches, Status status) {
    return branches.stream().anyMatch(branch -> branch.outcome().status() == status);
  }

  private static boolean all(List<Branch> branches, Status status) {
    return branches.stream().allMatch(branch -> branch.outcome().status() == status);
  }
}
