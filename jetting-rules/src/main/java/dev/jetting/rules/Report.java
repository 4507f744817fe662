package dev.jetting.rules;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a rulebook says of a setting. The same setting and rulebook give the same report, byte for
 * byte.
 *
 * @param schemaVersion version of the report's form, {@link #SCHEMA_VERSION}
 * @param model name and version of the mixture model
 * @param rulebook name and version of the rulebook
 * @param sheet the setup sheet
 * @param profile the lean risk over the throttle range in the air of the day
 * @param meanRisk the mean lean risk over the riding
 * @param coldestDay the lean risk over the throttle range on the coldest day
 * @param hottestDay the lean risk over the throttle range on the hottest day
 * @param overrun the closed throttle after a long open run, on the day when it is leanest
 * @param overrunLimit the leanest mixture that is allowed there
 * @param results each rule with what came of it, by rule id
 * @param findings what was found, the most dangerous first
 * @param unusedWaivers waivers that waived nothing, in the order they were given
 * @param plan the way out, where an adviser has worked it out
 * @param assumptions the coefficients of limits, spreads and rules, by name
 * @param cautions the usual cautions
 */
public record Report(
    int schemaVersion,
    String model,
    String rulebook,
    SetupSheet sheet,
    RiskProfile profile,
    Probability meanRisk,
    RiskProfile coldestDay,
    RiskProfile hottestDay,
    Overrun overrun,
    Lambda overrunLimit,
    List<RuleResult> results,
    List<RankedFinding> findings,
    List<UnusedWaiver> unusedWaivers,
    Optional<Plan> plan,
    Map<String, Coefficient> assumptions,
    List<String> cautions) {

  /** The version of the report's form that this library writes and reads. */
  public static final int SCHEMA_VERSION = 1;

  /** Name and version of the mixture model, as MODEL.md tells it, and of the risk made of it. */
  private static final String MODEL = "jetting slide carburettor 3";

  /**
   * Copies the lists and checks that they go together.
   *
   * @param schemaVersion version of the report's form, {@link #SCHEMA_VERSION}
   * @param model name and version of the mixture model
   * @param rulebook name and version of the rulebook
   * @param sheet the setup sheet
   * @param profile the lean risk over the throttle range in the air of the day
   * @param meanRisk the mean lean risk over the riding
   * @param coldestDay the lean risk over the throttle range on the coldest day
   * @param hottestDay the lean risk over the throttle range on the hottest day
   * @param overrun the closed throttle after a long open run, on the day when it is leanest
   * @param overrunLimit the leanest mixture that is allowed there
   * @param results each rule with what came of it, by rule id
   * @param findings what was found, the most dangerous first
   * @param unusedWaivers waivers that waived nothing, in the order they were given
   * @param plan the way out, where an adviser has worked it out
   * @param assumptions the coefficients of limits, spreads and rules, by name
   * @param cautions the usual cautions
   * @throws IllegalArgumentException if the schema version is another, two results are of one rule,
   *     or a finding is of no failed rule among the results
   */
  public Report {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(rulebook, "rulebook");
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(meanRisk, "meanRisk");
    Objects.requireNonNull(coldestDay, "coldestDay");
    Objects.requireNonNull(hottestDay, "hottestDay");
    Objects.requireNonNull(overrun, "overrun");
    Objects.requireNonNull(overrunLimit, "overrunLimit");
    results = List.copyOf(results);
    findings = List.copyOf(findings);
    unusedWaivers = List.copyOf(unusedWaivers);
    Objects.requireNonNull(plan, "plan");
    assumptions = ImmutableMap.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    if (schemaVersion != SCHEMA_VERSION) {
      throw new IllegalArgumentException(
          "schema version " + schemaVersion + " of a report: allowed " + SCHEMA_VERSION);
    }
    checkTogether(results, findings);
  }

  private static void checkTogether(List<RuleResult> results, List<RankedFinding> findings) {
    Map<String, RuleResult> byRule = new HashMap<>();
    for (RuleResult result : results) {
      if (byRule.put(result.ruleId(), result) != null) {
        throw new IllegalArgumentException(
            "two results of rule " + result.ruleId() + ": allowed one for each rule");
      }
    }
    for (RankedFinding finding : findings) {
      RuleResult result = byRule.get(finding.ruleId());
      if (result == null || !result.outcome().findings().contains(finding.finding())) {
        throw new IllegalArgumentException(
            "finding of rule " + finding.ruleId() + ": allowed those of the results");
      }
    }
  }

  static Report of(
      AssessedSetting setting,
      Rulebook rulebook,
      List<RuleResult> results,
      List<RankedFinding> findings,
      List<UnusedWaiver> unusedWaivers) {
    RiskModel riskModel = setting.riskModel();
    return new Report(
        SCHEMA_VERSION,
        MODEL,
        rulebook.name() + " " + rulebook.version(),
        setting.sheet(),
        setting.profile(),
        setting.profile().mean(setting.sheet().riding().profile()),
        setting.coldest(),
        setting.hottest(),
        setting.overrun(),
        riskModel.limits().overrun(setting.setup().engine().need()),
        results.stream().sorted(Comparator.comparing(RuleResult::ruleId)).toList(),
        findings,
        unusedWaivers,
        Optional.empty(),
        ImmutableMap.<String, Coefficient>builder()
            .putAll(riskModel.limits().basis())
            .putAll(riskModel.uncertainty().basis())
            .putAll(rulebook.assumptions())
            .buildKeepingLast(),
        Caution.ALL);
  }

  /**
   * This report with a plan, and its findings with the remedies that go with it.
   *
   * @param found the plan
   * @param remedies from each finding of this report to what to do about it
   * @return the changed report
   */
  public Report withPlan(Plan found, Function<? super RankedFinding, Remedy> remedies) {
    Map<Finding, Finding> advised = new HashMap<>();
    List<RankedFinding> ranked =
        findings.stream()
            .map(
                finding -> {
                  Finding other = finding.finding().withRemedy(remedies.apply(finding));
                  advised.put(finding.finding(), other);
                  return new RankedFinding(
                      finding.ruleId(), finding.severity(), other, finding.waiver());
                })
            .toList();
    return new Report(
        schemaVersion,
        model,
        rulebook,
        sheet,
        profile,
        meanRisk,
        coldestDay,
        hottestDay,
        overrun,
        overrunLimit,
        results.stream().map(result -> advised(result, advised)).toList(),
        ranked,
        unusedWaivers,
        Optional.of(found),
        assumptions,
        cautions);
  }

  private static RuleResult advised(RuleResult result, Map<Finding, Finding> advised) {
    Outcome outcome = result.outcome();
    return new RuleResult(
        result.ruleId(),
        result.title(),
        result.severity(),
        new Outcome(
            outcome.status(),
            outcome.findings().stream().map(f -> advised.getOrDefault(f, f)).toList(),
            outcome.reason(),
            outcome.branches()));
  }

  /**
   * Whether nothing speaks against a careful first ride: no finding of danger that is not waived,
   * no broken rule, none of danger that could not be evaluated, and, whether or not a rule looked
   * at the mixture, no lean risk above what is accepted and no overrun beyond its limit that nobody
   * took upon himself by a waiver of a danger at that opening.
   *
   * @return true if nothing does, and at least one rule had something to say; never a promise
   */
  public boolean passes() {
    return results.stream().anyMatch(Report::judged)
        && results.stream().noneMatch(this::stops)
        && !leanUnwaived()
        && !overrunUnwaived();
  }

  /**
   * Whether the mixture is too lean, today or on an extreme day, at an opening for which no danger
   * was waived.
   */
  boolean leanUnwaived() {
    Probability accepted = sheet.riding().acceptedRisk();
    return Stream.of(profile, coldestDay, hottestDay)
        .flatMap(day -> day.above(accepted).stream())
        .anyMatch(point -> !isTaken(point.mixture().throttle()));
  }

  /** Whether the overrun is too lean and no danger at closed throttle was waived. */
  boolean overrunUnwaived() {
    return overrun.lambda().isMoreThan(overrunLimit) && !isTaken(ThrottleOpening.CLOSED);
  }

  private boolean isTaken(ThrottleOpening throttle) {
    return findings.stream()
        .filter(f -> f.severity() == Severity.DANGER && f.waiver().isPresent())
        .anyMatch(f -> f.finding().band().contains(throttle));
  }

  private static boolean judged(RuleResult result) {
    return switch (result.outcome().status()) {
      case PASSED, FAILED -> true;
      case NOT_APPLICABLE, NOT_EVALUATED, BROKEN -> false;
    };
  }

  /** Whether what came of a rule speaks against a ride. */
  boolean stops(RuleResult result) {
    boolean danger = result.severity() == Severity.DANGER;
    return switch (result.outcome().status()) {
      case PASSED, NOT_APPLICABLE -> false;
      case BROKEN -> true;
      case NOT_EVALUATED -> danger;
      case FAILED -> danger && !waived(result);
    };
  }

  /** A failure is waived when it has findings and each of them is. */
  private boolean waived(RuleResult result) {
    List<RankedFinding> own =
        findings.stream().filter(finding -> finding.ruleId().equals(result.ruleId())).toList();
    return !own.isEmpty() && own.stream().allMatch(finding -> finding.waiver().isPresent());
  }
}
