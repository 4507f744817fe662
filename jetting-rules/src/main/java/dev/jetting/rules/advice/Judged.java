package dev.jetting.rules.advice;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A setting with what the rulebook says of it, and one number for how far it is from what is
 * wanted.
 */
final class Judged {

  /** More than rounding, and far less than a customary step does. */
  static final double SMALL = 1e-6;

  /** By how much the lean risk may rise on the way: what its tolerances move it (see the laws). */
  private static final double RISK_TOLERANCE = 1e-4;

  /** Weights of the cost (assumed): a lean mixture first, then dangers, warnings, and nearness. */
  private static final double LEAN = 5;

  private static final double DANGER = 3;
  private static final double RICH = 1;
  private static final double DISTANCE = 10;

  private final AssessedSetting assessed;
  private final Report report;
  private final Map<String, Double> dangers;
  private final Map<String, Double> warnings;
  private final Set<String> open;
  private final double lean;
  private final double cost;

  /**
   * @param waived ids of the rules whose findings the rider has taken upon himself
   */
  Judged(AssessedSetting assessed, Report report, Set<String> waived) {
    this.assessed = assessed;
    this.report = report;
    dangers = excesses(report, Severity.DANGER);
    warnings = excesses(report, Severity.WARNING);
    open = new java.util.TreeSet<>();
    for (RankedFinding finding : report.findings()) {
      if (isToRemedy(finding) && !waived.contains(finding.ruleId())) {
        open.add(finding.ruleId());
      }
    }
    lean = leanness(assessed);
    cost =
        LEAN * lean
            + DANGER * open(dangers)
            + open(warnings)
            + RICH * richness(assessed.profile())
            + DISTANCE
                * assessed
                    .profile()
                    .distance(
                        assessed.sheet().riding().profile(), assessed.setup().engine().need());
  }

  private static boolean isToRemedy(RankedFinding finding) {
    return finding.severity() != Severity.NOTE && finding.finding().remedy() instanceof Remedy.Aim;
  }

  private static Map<String, Double> excesses(Report report, Severity severity) {
    Map<String, Double> worst = new TreeMap<>();
    report.findings().stream()
        .filter(finding -> finding.severity() == severity)
        .forEach(finding -> worst.merge(finding.ruleId(), finding.finding().excess(), Math::max));
    return worst;
  }

  /** Rules count once, and for less than once more by how far they are beyond their limit. */
  private double open(Map<String, Double> excesses) {
    return excesses.entrySet().stream()
        .filter(entry -> open.contains(entry.getKey()))
        .mapToDouble(entry -> 1 + entry.getValue() / (1 + entry.getValue()))
        .sum();
  }

  /** Sum over openings and days of how far ln λ must fall for the risk to be the accepted one. */
  private static double leanness(AssessedSetting assessed) {
    Probability accepted = assessed.sheet().riding().acceptedRisk();
    double sum = overrunBeyond(assessed);
    for (RiskProfile day : days(assessed)) {
      for (RiskPoint point : day.points()) {
        sum += point.leanRisk().isMoreThan(accepted) ? point.leanBeyond(accepted) : 0;
      }
    }
    return sum;
  }

  private static double overrunBeyond(AssessedSetting assessed) {
    double limit = assessed.riskModel().limits().overrun(assessed.setup().engine().need()).value();
    return Math.max(0, StrictMath.log(assessed.overrun().lambda().value() / limit));
  }

  private static double richness(RiskProfile profile) {
    return profile.points().stream()
        .mapToDouble(p -> StrictMath.log(p.richLimit().value() / p.lambda().value()))
        .filter(beyond -> beyond > 0)
        .sum();
  }

  static List<RiskProfile> days(AssessedSetting assessed) {
    return List.of(assessed.profile(), assessed.coldest(), assessed.hottest());
  }

  AssessedSetting assessed() {
    return assessed;
  }

  Setting setting() {
    return assessed.setting();
  }

  Report report() {
    return report;
  }

  double cost() {
    return cost;
  }

  /** What of the cost is danger. */
  private double danger() {
    return LEAN * lean + DANGER * open(dangers);
  }

  /**
   * Whether this is less dangerous than another setting, or no more dangerous and nearer to what is
   * wanted. It orders settings, so that following it from one to the next never comes back.
   */
  boolean isBetterThan(Judged other) {
    return danger() < other.danger() - SMALL
        || (danger() <= other.danger() && cost < other.cost - SMALL);
  }

  /** Whether nothing is left that a part could remedy. */
  boolean isDone() {
    return open.isEmpty();
  }

  /** Ids of the rules that a part could satisfy. */
  Set<String> open() {
    return open;
  }

  /** Whether no rule finds a danger that a part could remedy. */
  boolean isSafe() {
    return dangers.keySet().stream().noneMatch(open::contains);
  }

  /** How far the worst finding of a rule is beyond its limit; 0 where it has none. */
  double excess(String ruleId) {
    return report.findings().stream()
        .filter(finding -> finding.ruleId().equals(ruleId))
        .map(RankedFinding::finding)
        .mapToDouble(Finding::excess)
        .max()
        .orElse(0);
  }

  /**
   * Whether this brings no danger that another setting does not have. No other rule of danger
   * fails, and none that a part could remedy is farther beyond its limit. The lean risk rises
   * nowhere by more than a share of what is accepted, nor beyond what is accepted.
   */
  boolean bringsNoDangerTo(Judged other, double share) {
    double accepted = assessed.sheet().riding().acceptedRisk().value();
    List<RiskProfile> then = days(other.assessed);
    List<RiskProfile> now = days(assessed);
    for (int day = 0; day < now.size(); day++) {
      List<RiskPoint> points = now.get(day).points();
      for (int i = 0; i < points.size(); i++) {
        double risk = points.get(i).leanRisk().value();
        double before = then.get(day).points().get(i).leanRisk().value();
        double spent = risk - before;
        if (spent > RISK_TOLERANCE && (risk > accepted || spent > share * accepted)) {
          return false;
        }
      }
    }
    double overrun = overrunBeyond(assessed);
    return (overrun == 0 || overrun <= overrunBeyond(other.assessed) + SMALL)
        && dangers.keySet().stream().allMatch(rule -> isNoWorse(rule, other))
        && answers(report, other.report);
  }

  /** A danger that no part remedies, such as a small float valve, may stay whatever it is. */
  private boolean isNoWorse(String rule, Judged other) {
    Double before = other.dangers.get(rule);
    double tolerance = RISK_TOLERANCE / assessed.sheet().riding().acceptedRisk().value();
    return before != null
        && (!open.contains(rule) || dangers.getOrDefault(rule, 0.0) <= before + tolerance);
  }

  /** Whether no rule of danger that gave an answer gives none now, or breaks. */
  private static boolean answers(Report report, Report before) {
    for (int i = 0; i < report.results().size(); i++) {
      var result = report.results().get(i);
      boolean silent =
          result.outcome().status() == Outcome.Status.BROKEN
              || (result.severity() == Severity.DANGER
                  && result.outcome().status() == Outcome.Status.NOT_EVALUATED);
      if (silent && before.results().get(i).outcome().status() != result.outcome().status()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether this has a finding of a rule that finds nothing on another setting, and it weighs more
   * than something of a severity and an excess.
   */
  boolean bringsWorseTo(Judged other, Severity severity, double excess) {
    return report.findings().stream()
        .filter(f -> f.severity().compareTo(severity) >= 0)
        .filter(f -> other.excess(f.ruleId()) == 0)
        .anyMatch(
            f -> f.severity().compareTo(severity) > 0 || f.finding().excess() > excess + SMALL);
  }
}
