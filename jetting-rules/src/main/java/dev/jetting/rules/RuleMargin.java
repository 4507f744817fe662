package dev.jetting.rules;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import java.util.Comparator;
import java.util.Objects;

/**
 * A rule of a report with its margin, the nearest to failing first: by the share of the limit that
 * is left, then by rule id.
 *
 * @param ruleId id of the rule
 * @param title its title
 * @param severity how much its findings matter
 * @param margin what was measured, the limit, and what is left; below zero of a rule that failed
 */
public record RuleMargin(String ruleId, String title, Severity severity, Margin margin)
    implements Comparable<RuleMargin> {

  private static final Comparator<RuleMargin> ORDER =
      comparingDouble((RuleMargin each) -> each.margin().share())
          .thenComparing(comparing(RuleMargin::ruleId));

  /**
   * Checks for nulls.
   *
   * @param ruleId id of the rule
   * @param title its title
   * @param severity how much its findings matter
   * @param margin what was measured, the limit, and what is left
   */
  public RuleMargin {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(margin, "margin");
  }

  /** The nearer to failing comes first. */
  @Override
  public int compareTo(RuleMargin other) {
    return ORDER.compare(this, other);
  }
}
