package dev.jetting.rules;

import dev.jetting.rules.text.Wording;
import java.util.List;
import java.util.Objects;

/**
 * A rule of a rulebook with its outcome.
 *
 * @param ruleId id of the rule
 * @param title its title
 * @param severity how much its findings matter
 * @param outcome its outcome
 * @param tags its tags, in their order
 * @param link where its page stands; empty if it has none
 */
public record RuleResult(
    String ruleId,
    String title,
    Severity severity,
    Outcome outcome,
    List<String> tags,
    String link) {

  /**
   * Checks for nulls.
   *
   * @param ruleId id of the rule
   * @param title its title
   * @param severity how much its findings matter
   * @param outcome its outcome
   * @param tags its tags
   * @param link where its page stands; empty if it has none
   */
  public RuleResult {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(outcome, "outcome");
    tags = List.copyOf(tags);
    Objects.requireNonNull(link, "link");
  }

  /**
   * Returns the title in another language, by the key {@code rule.ID.title}.
   *
   * @param wording the words of the language
   * @return one line for people; the rule's own where the wording has none
   */
  public String title(Wording wording) {
    return Rule.title(ruleId, title, wording);
  }

  RuleResult withOutcome(Outcome other) {
    return new RuleResult(ruleId, title, severity, other, tags, link);
  }

  static RuleResult of(Rule rule, AssessedSetting setting) {
    return new RuleResult(
        rule.id(),
        rule.title(),
        rule.severity(),
        rule.evaluate(setting),
        List.copyOf(rule.tags()),
        rule.link());
  }
}
