package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.Rulebook;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The same rules in other orders: backwards, and with the first one last. */
final class OrderLaw {

  private OrderLaw() {}

  static LawVerdict check(Experiment experiment) {
    Rulebook rulebook = experiment.candidate().rulebook();
    if (rulebook.rules().size() < 2) {
      return LawVerdict.notTried("fewer than two rules");
    }
    List<Rule> backwards = new ArrayList<>(rulebook.rules());
    Collections.reverse(backwards);
    List<Rule> turned = new ArrayList<>(rulebook.rules());
    Collections.rotate(turned, -1);
    AssessedSetting setting = experiment.before();
    Report report = rulebook.evaluate(setting);
    LawVerdict verdict =
        compared(report, ordered(rulebook, backwards).evaluate(setting), backwards);
    return verdict.isViolated()
        ? verdict
        : compared(report, ordered(rulebook, turned).evaluate(setting), turned);
  }

  /** Takes each rule out and puts it in last, so that the rulebook stays the same edition. */
  private static Rulebook ordered(Rulebook rulebook, List<Rule> rules) {
    Rulebook ordered = rulebook;
    for (Rule rule : rules) {
      ordered = ordered.without(rule.id()).with(rule);
    }
    return ordered;
  }

  private static LawVerdict compared(Report first, Report second, List<Rule> order) {
    for (int i = 0; i < first.results().size(); i++) {
      RuleResult before = first.results().get(i);
      RuleResult after = second.results().get(i);
      if (!before.equals(after)) {
        return LawVerdict.violated(
            before.ruleId(),
            "with the rules in the order "
                + order
                + " it comes out as "
                + OutcomeText.of(after.outcome())
                + " instead of "
                + OutcomeText.of(before.outcome()));
      }
    }
    return first.equals(second)
        ? LawVerdict.held()
        : LawVerdict.violated(
            "", "with the rules in the order " + order + " the report is another");
  }
}
