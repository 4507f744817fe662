package dev.jetting.rules.json;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A report in JSON, each thing in it once.
 *
 * @param pages where the page of a rule stands, with {@code {ruleId}} for its id; left out where no
 *     two pages stand alike
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
    Optional<String> pages,
    List<ResultForm> results,
    List<RankForm> findings,
    List<UnusedWaiver> unusedWaivers,
    Optional<Plan> plan,
    Optional<ProofUse> proof,
    Map<String, Coefficient> assumptions,
    List<String> cautions) {

  /**
   * A rule with its outcome, in JSON.
   *
   * @param ruleId id of the rule
   * @param title its title
   * @param severity how much its findings matter
   * @param outcome its outcome
   * @param tags its tags, in their order; left out where it has none
   * @param link where its page stands, empty if it has none; left out where {@code pages} says it
   */
  record ResultForm(
      String ruleId,
      String title,
      Severity severity,
      Outcome outcome,
      Optional<List<String>> tags,
      Optional<String> link) {

    private static final String ID = "{ruleId}";

    static ResultForm of(RuleResult result, Optional<String> pages) {
      return new ResultForm(
          result.ruleId(),
          result.title(),
          result.severity(),
          result.outcome(),
          Optional.of(result.tags()).filter(tags -> !tags.isEmpty()),
          Optional.of(result.link()).filter(link -> !link.equals(page(pages, result.ruleId()))));
    }

    RuleResult result(Optional<String> pages) {
      return new RuleResult(
          ruleId,
          title,
          severity,
          outcome,
          tags.orElse(List.of()),
          link.orElseGet(() -> page(pages, ruleId)));
    }

    private static String page(Optional<String> pages, String ruleId) {
      return pages.map(all -> all.replace(ID, ruleId)).orElse("");
    }

    /** What most links have in common, where two or more do. */
    static Optional<String> pages(List<RuleResult> results) {
      return results.stream()
          .filter(result -> result.link().contains(result.ruleId()))
          .map(result -> result.link().replace(result.ruleId(), ID))
          .collect(groupingBy(page -> page, TreeMap::new, counting()))
          .entrySet()
          .stream()
          .filter(page -> page.getValue() > 1)
          .max(Map.Entry.comparingByValue())
          .map(Map.Entry::getKey);
    }
  }

  /**
   * A finding by its place among the results, in JSON.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param index which of the findings in the outcome of the rule, counted from 0
   * @param waiver the waiver that covers it; left out if none does
   */
  record RankForm(String ruleId, Severity severity, int index, Optional<Waiver> waiver) {

    static List<RankForm> of(Report report) {
      Map<String, Map<Finding, Integer>> places = new HashMap<>();
      for (RuleResult result : report.results()) {
        List<Finding> found = result.outcome().findings();
        Map<Finding, Integer> its = new HashMap<>();
        for (int i = 0; i < found.size(); i++) {
          its.putIfAbsent(found.get(i), i);
        }
        places.put(result.ruleId(), its);
      }
      return report.findings().stream()
          .map(ranked -> of(ranked, places.getOrDefault(ranked.ruleId(), Map.of())))
          .toList();
    }

    private static RankForm of(RankedFinding ranked, Map<Finding, Integer> places) {
      int place = places.getOrDefault(ranked.finding(), -1);
      return new RankForm(ranked.ruleId(), ranked.severity(), place, ranked.waiver());
    }

    RankedFinding ranked(Map<String, List<Finding>> byRule) {
      List<Finding> found = byRule.getOrDefault(ruleId, List.of());
      if (index < 0 || index >= found.size()) {
        throw InvalidValueException.worded(
            Sentence.of("error.finding-number").with("number", index).with("id", ruleId),
            Sentence.of("error.finding-number.allowed").with("count", found.size()));
      }
      return new RankedFinding(ruleId, severity, found.get(index), waiver);
    }
  }

  static ReportForm of(Report report) {
    GridForm today = GridForm.of(report.profile().points());
    Optional<String> pages = ResultForm.pages(report.results());
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
        pages,
        report.results().stream().map(result -> ResultForm.of(result, pages)).toList(),
        RankForm.of(report),
        report.unusedWaivers(),
        report.plan(),
        report.proof(),
        report.assumptions(),
        report.cautions());
  }

  Report report() {
    GridForm today = GridForm.of(profile.points());
    List<RuleResult> outcomes = results.stream().map(result -> result.result(pages)).toList();
    Map<String, List<Finding>> found = new HashMap<>();
    results.forEach(result -> found.putIfAbsent(result.ruleId(), result.outcome().findings()));
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
        outcomes,
        findings.stream().map(finding -> finding.ranked(found)).toList(),
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
