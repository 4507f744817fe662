package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.laws.PartChange.Way;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Before and after one part was changed. */
final class MonotoneLaws {

  private static final LawVerdict NO_CHANGE = LawVerdict.notTried("no change that can be done");

  /**
   * λ as read is the model's λ by e to what was read, and how much of that reaches an opening
   * shifts a little with the part that meters there. So with readings λ is monotone to some 1e-3
   * only.
   */
  private static final LawVerdict READ =
      LawVerdict.notTried("observations of a proven setup move λ");

  private MonotoneLaws() {}

  private static boolean isRead(Experiment experiment) {
    return !experiment.before().sheet().provenance().observed().isEmpty();
  }

  static LawVerdict rule(Rule rule, Experiment experiment) {
    Optional<Monotone> declared = experiment.candidate().monotone(rule);
    if (declared.isEmpty()) {
      return LawVerdict.notTried("not declared monotone");
    }
    if (isRead(experiment)) {
      return READ;
    }
    Optional<AssessedSetting> after = experiment.after();
    if (after.isEmpty()) {
      return NO_CHANGE;
    }
    Outcome first = rule.evaluate(experiment.before());
    Outcome second = rule.evaluate(after.get());
    if (!judged(first) || !judged(second)) {
      return LawVerdict.notTried("the rule has nothing to say before or after");
    }
    boolean lean = declared.get().side() == Monotone.Side.LEAN;
    // Towards the rule's own side it may only get worse: turn it round, and it may only get better.
    boolean better = richer(experiment) == lean;
    Optional<String> worse =
        better
            ? worse(first, second, declared.get().tolerance())
            : worse(second, first, declared.get().tolerance());
    return worse
        .map(how -> LawVerdict.violated(rule.id(), text(experiment, first, second) + how))
        .orElseGet(LawVerdict::held);
  }

  private static String text(Experiment experiment, Outcome first, Outcome second) {
    return "a part made "
        + (richer(experiment) ? "richer" : "leaner")
        + " takes the rule from "
        + OutcomeText.of(first)
        + " to "
        + OutcomeText.of(second);
  }

  private static boolean judged(Outcome outcome) {
    return outcome.status() == Status.PASSED || outcome.status() == Status.FAILED;
  }

  /** Whether the second is worse than the first, and how. */
  private static Optional<String> worse(Outcome first, Outcome second, double tolerance) {
    if (second.status() == Status.PASSED) {
      return Optional.empty();
    }
    Map<String, Double> beyond = beyond(first);
    Map<String, Double> worse = beyond(second);
    if (first.status() == Status.PASSED && (tolerance == 0 || worse.isEmpty())) {
      return Optional.of("");
    }
    for (Map.Entry<String, Double> entry : worse.entrySet()) {
      double moved = entry.getValue() - beyond.getOrDefault(entry.getKey(), 0.0);
      // What is computed in another order may differ by rounding.
      if (moved > tolerance + 1e-12 * entry.getValue()) {
        return Optional.of(
            ": its worst finding moves the wrong way by "
                + Numbers.text(moved)
                + (entry.getKey().equals("1") ? "" : " " + entry.getKey()));
      }
    }
    return Optional.empty();
  }

  /** How far the worst finding of each unit is beyond its limit. */
  private static Map<String, Double> beyond(Outcome outcome) {
    Map<String, Double> beyond = new TreeMap<>();
    for (Finding finding : outcome.findings()) {
      beyond.merge(finding.margin().unit(), Math.max(0, -finding.margin().value()), Math::max);
    }
    return beyond;
  }

  static LawVerdict lambda(Experiment experiment) {
    if (isRead(experiment)) {
      return READ;
    }
    Optional<AssessedSetting> after = experiment.after();
    if (after.isEmpty()) {
      return NO_CHANGE;
    }
    AssessedSetting before = experiment.before();
    double sign = richer(experiment) ? 1 : -1;
    for (Day day : days(before, after.get())) {
      for (int i = 0; i < day.before.points().size(); i++) {
        RiskPoint was = day.before.points().get(i);
        double from = was.mixture().lambda().value();
        double to = day.after.points().get(i).mixture().lambda().value();
        if (sign * (to - from) > Laws.LAMBDA_TOLERANCE * from) {
          return moved(day.at(was), "λ", experiment, from, to);
        }
      }
    }
    double from = before.overrun().lambda().value();
    double to = after.get().overrun().lambda().value();
    return sign * (to - from) > Laws.LAMBDA_TOLERANCE * from
        ? moved("on the overrun", "λ", experiment, from, to)
        : LawVerdict.held();
  }

  static LawVerdict leanRisk(Experiment experiment, double tolerance) {
    if (isRead(experiment)) {
      return READ;
    }
    Optional<AssessedSetting> after = experiment.after();
    if (after.isEmpty()) {
      return NO_CHANGE;
    }
    double sign = richer(experiment) ? 1 : -1;
    for (Day day : days(experiment.before(), after.get())) {
      for (int i = 0; i < day.before.points().size(); i++) {
        RiskPoint was = day.before.points().get(i);
        double from = was.leanRisk().value();
        double to = day.after.points().get(i).leanRisk().value();
        if (sign * (to - from) > tolerance) {
          return moved(day.at(was), "the lean risk", experiment, from, to);
        }
      }
    }
    return LawVerdict.held();
  }

  private static LawVerdict moved(
      String where, String what, Experiment experiment, double from, double to) {
    return LawVerdict.violated(
        "",
        where
            + " "
            + what
            + " goes from "
            + Numbers.text(from)
            + " to "
            + Numbers.text(to)
            + " by a part made "
            + (richer(experiment) ? "richer" : "leaner"));
  }

  private static boolean richer(Experiment experiment) {
    return experiment.trial().change().filter(change -> change.way() == Way.RICHER).isPresent();
  }

  private record Day(String name, RiskProfile before, RiskProfile after) {
    String at(RiskPoint point) {
      return "at " + TradeStyle.throttle(point.mixture().throttle()) + name;
    }
  }

  private static List<Day> days(AssessedSetting before, AssessedSetting after) {
    return List.of(
        new Day("", before.profile(), after.profile()),
        new Day(" on the coldest day", before.coldest(), after.coldest()),
        new Day(" on the hottest day", before.hottest(), after.hottest()));
  }
}
