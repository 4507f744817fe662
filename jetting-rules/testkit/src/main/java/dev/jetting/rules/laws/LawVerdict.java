package dev.jetting.rules.laws;

import java.util.Objects;

/**
 * The result of trying a law once.
 *
 * @param status held, violated or not tried
 * @param ruleId id of the rule that violated it; empty if it was no single rule
 * @param explanation how it was violated, or why it was not tried; empty if it held
 */
public record LawVerdict(Status status, String ruleId, String explanation) {

  /** How a law came out. */
  public enum Status {
    /** The law holds here. */
    HELD,
    /** The law is broken. */
    VIOLATED,
    /** The trial says nothing of the law. */
    NOT_TRIED
  }

  /**
   * Checks for nulls.
   *
   * @param status held, violated or not tried
   * @param ruleId id of the rule that violated it; empty if it was no single rule
   * @param explanation how it was violated, or why it was not tried
   */
  public LawVerdict {
    Objects.requireNonNull(status, "status");
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(explanation, "explanation");
  }

  /** {@return the law holds here} */
  public static LawVerdict held() {
    return new LawVerdict(Status.HELD, "", "");
  }

  /**
   * A rule breaks the law.
   *
   * @param ruleId id of the rule; empty if it is no single rule
   * @param how one sentence for people
   * @return the verdict
   */
  public static LawVerdict violated(String ruleId, String how) {
    return new LawVerdict(Status.VIOLATED, ruleId, how);
  }

  /**
   * The trial says nothing of the law.
   *
   * @param why the reason
   * @return the verdict
   */
  public static LawVerdict notTried(String why) {
    return new LawVerdict(Status.NOT_TRIED, "", why);
  }

  /** {@return whether the law is broken} */
  public boolean isViolated() {
    return status == Status.VIOLATED;
  }
}
