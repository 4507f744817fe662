package dev.jetting.examples.kitdesk;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.Severity;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Standing;
import dev.jetting.units.Probability;
import java.util.List;
import java.util.stream.Stream;

/**
 * A setting that was found, and what the rulebook says of it.
 *
 * @param found the setting
 * @param parts the catalogue's parts in it
 * @param passes whether the rulebook passes it
 * @param worstRisk the highest lean risk of its report, climbs included
 * @param dangers ids of the rules that found a danger
 * @param unanswered ids of the rules of danger that stayed open, and of those that broke
 */
record JudgedSetting(
    FoundSetting found,
    SettingParts parts,
    boolean passes,
    Probability worstRisk,
    List<String> dangers,
    List<String> unanswered) {

  static JudgedSetting of(FoundSetting found, SettingParts parts, Report report) {
    return new JudgedSetting(
        found,
        parts,
        report.passes(),
        report.worst().leanRisk(),
        report.findings().stream()
            .filter(each -> each.severity() == Severity.DANGER)
            .map(RankedFinding::ruleId)
            .distinct()
            .toList(),
        report.results().stream()
            .filter(JudgedSetting::unanswered)
            .map(RuleResult::ruleId)
            .toList());
  }

  private static boolean unanswered(RuleResult result) {
    return switch (result.outcome().status()) {
      case NOT_EVALUATED -> result.severity() == Severity.DANGER;
      case BROKEN -> true;
      case PASSED, FAILED, NOT_APPLICABLE -> false;
    };
  }

  /** Right in its mixture, and nothing else speaks against it. */
  boolean right() {
    return passes && found.standing() == Standing.RIGHT;
  }

  /** How it stands, in a word. */
  String standing() {
    boolean lean = found.standing() == Standing.TOO_LEAN;
    return passes || lean ? Words.word(found.standing()).replace("too-", "") : "danger";
  }

  /** The rules that keep it from passing; empty for one that passes. */
  String against() {
    return String.join(
        ", ",
        Stream.concat(dangers.stream(), unanswered.stream().map(id -> id + " (not answered)"))
            .toList());
  }
}
