package dev.jetting.rules;

import java.util.Comparator;
import java.util.Objects;

/**
 * A rule in which a rulebook differs from the original of its name and version.
 *
 * @param kind how it differs
 * @param ruleId id of the rule
 * @param severity severity of the rule as the rulebook now has it; of a rule that was left out, the
 *     severity that it had
 */
public record RulebookChange(Kind kind, String ruleId, Severity severity) {

  /** How a rulebook was changed. */
  public enum Kind {
    /** A rule was added. */
    ADDED,
    /** A rule was left out. */
    LEFT_OUT,
    /** Another rule of the same id stands in its place. */
    REPLACED,
    /** The rule is the same, with another severity. */
    OTHER_SEVERITY,
    /** The rule is the same, with other limits. */
    OTHER_LIMITS
  }

  static final Comparator<RulebookChange> ORDER =
      Comparator.comparing(RulebookChange::kind).thenComparing(RulebookChange::ruleId);

  /**
   * Checks for nulls.
   *
   * @param kind how it differs
   * @param ruleId id of the rule
   * @param severity severity of the rule as the rulebook now has it; of a rule that was left out,
   *     the severity that it had
   */
  public RulebookChange {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(severity, "severity");
  }
}
