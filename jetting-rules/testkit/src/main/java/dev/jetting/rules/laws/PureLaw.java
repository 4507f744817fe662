package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import java.util.List;

/** The same setting, judged again and elsewhere. */
final class PureLaw {

  private PureLaw() {}

  static LawVerdict check(Experiment experiment) {
    AssessedSetting setting = experiment.before();
    List<Rule> rules = experiment.candidate().rulebook().rules();
    List<Outcome> first = outcomes(rules, setting);
    LawVerdict twice = compared(rules, first, outcomes(rules, setting), "judged a second time");
    if (twice.isViolated()) {
      return twice;
    }
    return Elsewhere.call(
        () -> {
          AssessedSetting again = experiment.again();
          return again.equals(setting)
              ? compared(
                  rules,
                  first,
                  outcomes(rules, again),
                  "on another thread, under another default locale and time zone,")
              : LawVerdict.violated(
                  "", "the same sheet, assessed on another thread, is another assessed setting");
        });
  }

  private static List<Outcome> outcomes(List<Rule> rules, AssessedSetting setting) {
    return rules.stream().map(rule -> rule.evaluate(setting)).toList();
  }

  private static LawVerdict compared(
      List<Rule> rules, List<Outcome> first, List<Outcome> second, String how) {
    for (int i = 0; i < rules.size(); i++) {
      if (!first.get(i).equals(second.get(i))) {
        return LawVerdict.violated(
            rules.get(i).id(),
            "the same setting "
                + how
                + " comes out as "
                + OutcomeText.of(second.get(i))
                + " instead of "
                + OutcomeText.of(first.get(i)));
      }
    }
    return LawVerdict.held();
  }
}
