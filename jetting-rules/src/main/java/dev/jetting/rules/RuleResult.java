package dev.jetting.rules;

import java.util.Objects;

/**
 * A rule of a rulebook with its outcome.
 *
 * @param ruleId id of the rule
 * @param title its title
 * @param severity how much its findings matter
 * @param outcome its outcome
 */
public record RuleResult(String ruleId, String title, Severity severity, Outcome outcome) {
  /**
   * Checks for nulls.
   *
   * @param ruleId id of the rule
   * @param title its title
   * @param severity how much its findings matter
   * @param outcome its outcome
   */
  public RuleResult {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(outcome, "outcome");
  }

  static RuleResult of(Rule rule, AssessedSetting setting) {
    return new RuleResult(rule.id(), rule.title(), rule.severity(), rule.evaluate(setting));
  }
}
