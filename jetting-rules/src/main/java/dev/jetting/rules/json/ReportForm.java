package dev.jetting.rules.json;

import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Plan;
import dev.jetting.rules.ProofUse;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Verdict;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.json.ProfileForm.GridForm;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A report in JSON, each thing in it once.
 *
 * @param findings what was found, the most dangerous first, by where it stands in the results
 */
record ReportForm(
    int schemaVersion,
    String model,
    RulebookEdition rulebook,
    Verdict verdict,
    SetupSheet sheet,
    RiskProfile profile,
    Probability meanRisk,
    DayForm coldestDay,
    DayForm hottestDay,
    Overrun overrun,
    Lambda overrunLimit,
    List<RuleResult> results,
    List<RankForm> findings,
    List<UnusedWaiver> unusedWaivers,
    Optional<Plan> plan,
    Optional<ProofUse> proof,
    Map<String, Coefficient> assumptions,
    List<String> cautions) {

  /**
   * A finding by its place among the results, in JSON.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param index which of the findings in the outcome of the rule, counted from 0
   * @param waiver the waiver that covers it; left out if none does
   */
  record RankForm(String ruleId, Severity severity, int index, Optional<Waiver> waiver) {

    static RankForm of(RankedFinding ranked, List<RuleResult> results) {
      return new RankForm(
          ranked.ruleId(),
          ranked.severity(),
          among(ranked.ruleId(), results).indexOf(ranked.finding()),
          ranked.waiver());
    }

    RankedFinding ranked(List<RuleResult> results) {
      List<Finding> found = among(ruleId, results);
      if (index < 0 || index >= found.size()) {
        throw InvalidValueException.worded(
            Sentence.of("error.finding-number").with("number", index).with("id", ruleId),
            Sentence.of("error.finding-number.allowed").with("count", found.size()));
      }
      return new RankedFinding(ruleId, severity, found.get(index), waiver);
    }

    private static List<Finding> among(String ruleId, List<RuleResult> results) {
      return results.stream()
          .filter(result -> result.ruleId().equals(ruleId))
          .findFirst()
          .map(result -> result.outcome().findings())
          .orElse(List.of());
    }
  }

  static ReportForm of(Report report) {
    GridForm today = GridForm.of(report.profile().points());
    return new ReportForm(
        report.schemaVersion(),
        report.model(),
        report.rulebook(),
        report.verdict(),
        report.sheet(),
        report.profile(),
        report.meanRisk(),
        DayForm.of(report.coldestDay(), today),
        DayForm.of(report.hottestDay(), today),
        report.overrun(),
        report.overrunLimit(),
        report.results(),
        report.findings().stream().map(f -> RankForm.of(f, report.results())).toList(),
        report.unusedWaivers(),
        report.plan(),
        report.proof(),
        report.assumptions(),
        report.cautions());
  }

  Report report() {
    GridForm today = GridForm.of(profile.points());
    return new Report(
        schemaVersion,
        model,
        rulebook,
        verdict,
        sheet,
        profile,
        meanRisk,
        day("coldestDay", coldestDay, today),
        day("hottestDay", hottestDay, today),
        overrun,
        overrunLimit,
        results,
        findings.stream().map(finding -> finding.ranked(results)).toList(),
        unusedWaivers,
        plan,
        proof,
        assumptions,
        cautions);
  }

  private static RiskProfile day(String field, DayForm day, GridForm today) {
    try {
      return day.profile(today);
    } catch (IllegalArgumentException e) {
      throw new Misplaced(Path.ROOT.child(field), e);
    }
  }
}
