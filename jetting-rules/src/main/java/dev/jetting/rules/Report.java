package dev.jetting.rules;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.risk.WorstSpot.Day;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a rulebook says of a setting. The same setting and rulebook give the same report, byte for
 * byte.
 *
 * <p>The numbers of its profiles have three to six digits, which is more than the model knows. Lean
 * risks are rounded down, and openings keep all of their digits. What each part does is stated for
 * the air of the day alone, to a ten-thousandth of ln λ.
 *
 * @param schemaVersion version of the report's form, {@link #SCHEMA_VERSION}
 * @param model name and version of the mixture model
 * @param rulebook which rules it rests on
 * @param verdict whether anything speaks against a ride, and what the answer rests on
 * @param sheet the setup sheet
 * @param profile the lean risk over the throttle range in the air of the day
 * @param meanRisk the mean lean risk over the riding
 * @param coldestDay the lean risk over the throttle range on the coldest day, without the effects
 *     of parts
 * @param hottestDay the lean risk over the throttle range on the hottest day, without the effects
 *     of parts
 * @param overrun the closed throttle after a long open run, on the day when it is leanest
 * @param overrunLimit the leanest mixture that is allowed there
 * @param results each rule with its outcome, by rule id
 * @param findings what was found, the most dangerous first
 * @param unusedWaivers waivers that waived nothing, in the order they were given
 * @param plan the way out, where an adviser has worked it out
 * @param proof what a proven setup did to this report, where one counts
 * @param assumptions the coefficients of limits, spreads and rules, by name
 * @param cautions the usual cautions
 */
public record Report(
    int schemaVersion,
    String model,
    RulebookEdition rulebook,
    Verdict verdict,
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
    Optional<ProofUse> proof,
    Map<String, Coefficient> assumptions,
    List<String> cautions) {

  /** The version of the report's form that this library writes and reads. */
  public static final int SCHEMA_VERSION = 1;

  /** Name and version of the mixture model in MODEL.md and of the risk computed from it. */
  private static final String MODEL = "jetting slide carburettor 4.2";

  /**
   * Copies the lists and checks that they go together.
   *
   * @param schemaVersion version of the report's form, {@link #SCHEMA_VERSION}
   * @param model name and version of the mixture model
   * @param rulebook which rules it rests on
   * @param verdict whether anything speaks against a ride, and what the answer rests on
   * @param sheet the setup sheet
   * @param profile the lean risk over the throttle range in the air of the day
   * @param meanRisk the mean lean risk over the riding
   * @param coldestDay the lean risk over the throttle range on the coldest day
   * @param hottestDay the lean risk over the throttle range on the hottest day
   * @param overrun the closed throttle after a long open run, on the day when it is leanest
   * @param overrunLimit the leanest mixture that is allowed there
   * @param results each rule with its outcome, by rule id
   * @param findings what was found, the most dangerous first
   * @param unusedWaivers waivers that waived nothing, in the order they were given
   * @param plan the way out, where an adviser has worked it out
   * @param proof what a proven setup did to this report, where one counts
   * @param assumptions the coefficients of limits, spreads and rules, by name
   * @param cautions the usual cautions
   * @throws IllegalArgumentException if the schema version is another, two results are of one rule,
   *     a finding is of no failed rule among the results, or the verdict does not follow from them
   */
  public Report {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(rulebook, "rulebook");
    Objects.requireNonNull(verdict, "verdict");
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
    Objects.requireNonNull(proof, "proof");
    assumptions = ImmutableMap.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    if (schemaVersion != SCHEMA_VERSION) {
      throw new IllegalArgumentException(
          "schema version " + schemaVersion + " of a report: allowed " + SCHEMA_VERSION);
    }
    checkTogether(results, findings);
    Grounds grounds =
        new Grounds(
            sheet.riding().acceptedRisk(),
            List.of(profile, coldestDay, hottestDay),
            overrun,
            overrunLimit,
            results,
            findings);
    Verdict following = grounds.verdict(verdict.waiversJudgedOn());
    if (!verdict.equals(following)) {
      throw new IllegalArgumentException(
          "verdict "
              + verdict.ruling()
              + " of a report: allowed what follows from its results, findings and days, "
              + following.ruling());
    }
  }

  private static void checkTogether(List<RuleResult> results, List<RankedFinding> findings) {
    Map<String, Set<Finding>> byRule = new HashMap<>();
    Map<String, Integer> left = new HashMap<>();
    for (RuleResult result : results) {
      left.put(result.ruleId(), result.outcome().findings().size());
      if (byRule.put(result.ruleId(), new HashSet<>(result.outcome().findings())) != null) {
        throw new IllegalArgumentException(
            "two results of rule " + result.ruleId() + ": allowed one for each rule");
      }
    }
    for (RankedFinding finding : findings) {
      Set<Finding> found = byRule.getOrDefault(finding.ruleId(), Set.of());
      if (!found.contains(finding.finding())
          || left.merge(finding.ruleId(), -1, Integer::sum) < 0) {
        throw new IllegalArgumentException(
            "finding of rule "
                + finding.ruleId()
                + ": allowed those of the results, each as often as there");
      }
    }
  }

  static Report of(
      AssessedSetting setting,
      Rulebook rulebook,
      List<RuleResult> results,
      List<RankedFinding> findings,
      Waivers waivers) {
    RiskModel riskModel = setting.riskModel();
    SetupSheet sheet = setting.sheet();
    Lambda overrunLimit = riskModel.limits().overrun(setting.setup().engine().need());
    List<RuleResult> byRule =
        ReportDigits.results(
            results.stream().sorted(Comparator.comparing(RuleResult::ruleId)).toList());
    RiskProfile today = ReportDigits.today(setting.profile());
    RiskProfile coldest = ReportDigits.otherDay(setting.coldest());
    RiskProfile hottest = ReportDigits.otherDay(setting.hottest());
    Grounds grounds =
        new Grounds(
            sheet.riding().acceptedRisk(),
            List.of(today, coldest, hottest),
            setting.overrun(),
            overrunLimit,
            byRule,
            findings);
    return new Report(
        SCHEMA_VERSION,
        MODEL,
        rulebook.edition(),
        grounds.verdict(waivers.day()),
        sheet,
        today,
        setting.profile().mean(sheet.riding().profile()),
        coldest,
        hottest,
        setting.overrun(),
        overrunLimit,
        byRule,
        findings,
        waivers.unused(rulebook, findings, sheet),
        Optional.empty(),
        ProofUse.of(sheet, riskModel),
        ImmutableMap.<String, Coefficient>builder()
            .putAll(riskModel.limits().basis())
            .putAll(sheet.riskModel(riskModel).uncertainty().basis())
            .putAll(setting.sheet().riding().speeds().basis())
            .putAll(rulebook.assumptions())
            .buildKeepingLast(),
        Caution.of(sheet).stream().map(Message::text).toList());
  }

  /** {@return the lean risk over the throttle range in the air of the day: {@link #profile}} */
  public RiskProfile today() {
    return profile;
  }

  /** {@return the lean risk over the throttle range on the coldest day: {@link #coldestDay}} */
  public RiskProfile coldest() {
    return coldestDay;
  }

  /** {@return the lean risk over the throttle range on the hottest day: {@link #hottestDay}} */
  public RiskProfile hottest() {
    return hottestDay;
  }

  /** {@return where the lean risk is greatest, over all days, openings and ridden speeds} */
  public WorstSpot worst() {
    return WorstSpot.of(
        Map.of(Day.TODAY, profile, Day.COLDEST, coldestDay, Day.HOTTEST, hottestDay));
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
        verdict,
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
        proof,
        assumptions,
        cautions);
  }

  private static RuleResult advised(RuleResult result, Map<Finding, Finding> advised) {
    Outcome outcome = result.outcome();
    return result.withOutcome(
        new Outcome(
            outcome.status(),
            outcome.findings().stream().map(f -> advised.getOrDefault(f, f)).toList(),
            outcome.why(),
            outcome.branches(),
            outcome.margin()));
  }

  /**
   * Returns the rules by how near they are to failing: those that failed first, then those that
   * passed with the least left.
   *
   * @return the rules that state a number, the nearest to failing first
   */
  public List<RuleMargin> margins() {
    return results.stream()
        .flatMap(
            result ->
                result.outcome().nearest().stream()
                    .map(
                        margin ->
                            new RuleMargin(
                                result.ruleId(), result.title(), result.severity(), margin)))
        .sorted()
        .toList();
  }

  /**
   * Returns what the sheet states that is allowed, and yet so unusual that the verdict must be read
   * with it. That is a bold accepted risk, a λ wanted near the end of what is plausible, a single
   * day, or typical values. Where a proven setup counts, the last says what it did.
   *
   * @return a line each; empty for the usual sheet
   */
  public List<String> notices() {
    return notices(Wording.english());
  }

  /**
   * Returns the notices in another language.
   *
   * @param wording the words of the language
   * @return a line each; empty for the usual sheet
   */
  public List<String> notices(Wording wording) {
    Objects.requireNonNull(wording, "wording");
    return Stream.of(
            Premises.of(sheet).stream(),
            Premises.of(assumptions).stream(),
            proof.map(ProofUse::message).stream())
        .flatMap(messages -> messages)
        .map(wording::text)
        .toList();
  }

  /**
   * Returns the cautions in another language.
   *
   * @param wording the words of the language
   * @return a line each; a caution that is none of this library's as it is
   */
  public List<String> cautions(Wording wording) {
    Map<String, Message> known = new HashMap<>();
    Caution.of(sheet).forEach(caution -> known.put(caution.text(), caution));
    return cautions.stream()
        .map(caution -> wording.text(known.getOrDefault(caution, Message.plain(caution))))
        .toList();
  }

  /**
   * Returns whether nothing speaks against a careful first ride. No finding of danger is unwaived,
   * no rule is broken, and every rule of danger was evaluated. With or without a rule on the
   * mixture, no lean risk is above what is accepted and no overrun beyond its limit. The exception
   * is what a waived danger measured just there, and measured no less.
   *
   * @return true if nothing does, and at least one rule had something to say; never a promise
   * @see #verdict() what the answer rests on
   */
  public boolean passes() {
    return verdict.passes();
  }

  /**
   * Returns whether nothing speaks against a careful first ride, waived dangers included.
   *
   * @return true if {@link #passes()} would be without any waiver; never a promise
   */
  public boolean passesWithoutWaivers() {
    return verdict.passesWithoutWaivers();
  }
}
