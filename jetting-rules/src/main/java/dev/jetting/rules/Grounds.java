package dev.jetting.rules;

import dev.jetting.core.mixture.Overrun;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Verdict.Lean;
import dev.jetting.rules.Verdict.Ruling;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What in a report speaks for or against a ride. */
record Grounds(
    Probability accepted,
    List<RiskProfile> days,
    Overrun overrun,
    Lambda overrunLimit,
    List<RuleResult> results,
    List<RankedFinding> findings) {

  Verdict verdict(Optional<LocalDate> waiversJudgedOn) {
    Map<String, Boolean> waivedInFull = waivedInFull();
    List<String> dangers = ids(result -> isUnwaivedDanger(result, waivedInFull));
    Set<Lean> lean = EnumSet.noneOf(Lean.class);
    if (isTooLean()) {
      lean.add(Lean.RIDDEN);
    }
    if (isTooLeanOnOverrun()) {
      lean.add(Lean.OVERRUN);
    }
    List<String> unanswered = ids(r -> isDanger(r) && r.outcome().status() == Status.NOT_EVALUATED);
    List<String> broken = ids(r -> r.outcome().status() == Status.BROKEN);
    boolean wrong = !dangers.isEmpty() || !lean.isEmpty();
    boolean open = !unanswered.isEmpty() || !broken.isEmpty() || ids(Grounds::judged).isEmpty();
    List<WaivedDanger> waived = waived();
    return new Verdict(
        ruling(wrong, open, !waived.isEmpty()),
        dangers,
        lean,
        unanswered,
        broken,
        waived,
        waiversJudgedOn);
  }

  private static Ruling ruling(boolean wrong, boolean open, boolean waived) {
    if (wrong) {
      return Ruling.FAILS;
    }
    if (open) {
      return Ruling.UNANSWERED;
    }
    return waived ? Ruling.PASSES_BY_WAIVER : Ruling.PASSES;
  }

  private List<String> ids(Predicate<RuleResult> which) {
    return results.stream().filter(which).map(RuleResult::ruleId).toList();
  }

  private static boolean judged(RuleResult result) {
    return switch (result.outcome().status()) {
      case PASSED, FAILED -> true;
      case NOT_APPLICABLE, NOT_EVALUATED, BROKEN -> false;
    };
  }

  private static boolean isDanger(RuleResult result) {
    return result.severity() == Severity.DANGER;
  }

  /** Of each rule with findings, whether each of them is waived. */
  private Map<String, Boolean> waivedInFull() {
    Map<String, Boolean> byRule = new HashMap<>();
    findings.forEach(
        finding ->
            byRule.merge(finding.ruleId(), finding.waiver().isPresent(), Boolean::logicalAnd));
    return byRule;
  }

  /** A failure is waived when it has findings and each of them is. */
  private static boolean isUnwaivedDanger(RuleResult result, Map<String, Boolean> waivedInFull) {
    return isDanger(result)
        && result.outcome().status() == Status.FAILED
        && !waivedInFull.getOrDefault(result.ruleId(), false);
  }

  private List<WaivedDanger> waived() {
    return findings.stream()
        .filter(ranked -> ranked.severity() == Severity.DANGER)
        .flatMap(
            ranked ->
                ranked.waiver().stream()
                    .map(
                        waiver ->
                            new WaivedDanger(
                                ranked.ruleId(),
                                ranked.finding().subject(),
                                ranked.finding().measured(),
                                ranked.finding().band(),
                                waiver)))
        .toList();
  }

  /** Whether the mixture is too lean on any day at an opening whose risk nobody accepted. */
  private boolean isTooLean() {
    return days.stream()
        .flatMap(day -> day.above(accepted).stream())
        .anyMatch(point -> !isAccepted(point));
  }

  private boolean isAccepted(RiskPoint point) {
    return isAccepted(
        point.mixture().throttle(), new Measure(point.leanRisk().value(), Measure.LEAN_RISK));
  }

  private boolean isTooLeanOnOverrun() {
    return overrun.lambda().isMoreThan(overrunLimit)
        && !isAccepted(ThrottleOpening.CLOSED, Measure.onOverrun(overrun.lambda()));
  }

  /** Whether a waived danger measured the same thing there, and no less of it. */
  private boolean isAccepted(ThrottleOpening throttle, Measure now) {
    return waived().stream()
        .filter(danger -> danger.band().contains(throttle))
        .map(WaivedDanger::measured)
        .anyMatch(m -> m.unit().equals(now.unit()) && m.value() >= now.value());
  }
}
