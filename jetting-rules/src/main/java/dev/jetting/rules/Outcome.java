package dev.jetting.rules;

import java.util.List;
import java.util.Objects;

/**
 * The result of holding a rule against a setting. The outcome of a composed rule is a tree that
 * keeps every branch, so that a caller can show which one decided.
 *
 * @param status how it came out
 * @param findings what was found; empty unless failed
 * @param reason why not applicable, what is missing, or what broke; empty otherwise
 * @param branches outcomes of the rules that this one is composed of, with the ids of those rules
 */
public record Outcome(Status status, List<Finding> findings, String reason, List<Branch> branches) {

  /** How a rule came out. */
  public enum Status {
    /** The rule holds. */
    PASSED,
    /** The rule does not hold; there are findings, except from {@code not}. */
    FAILED,
    /** The rule has nothing to say about this setting. */
    NOT_APPLICABLE,
    /** Something that the rule needs is missing; the reason says what. */
    NOT_EVALUATED,
    /** The rule itself is broken; the reason says how. It fails the report. */
    BROKEN
  }

  /**
   * A branch of a composed outcome.
   *
   * @param ruleId id of the rule
   * @param outcome its outcome
   */
  public record Branch(String ruleId, Outcome outcome) {
    /**
     * Checks for nulls.
     *
     * @param ruleId id of the rule
     * @param outcome its outcome
     */
    public Branch {
      Objects.requireNonNull(ruleId, "ruleId");
      Objects.requireNonNull(outcome, "outcome");
    }
  }

  /** What a judge throws may quote a whole document. */
  private static final int LONGEST_FAULT = 500;

  private static final Outcome PASSED = new Outcome(Status.PASSED, List.of(), "", List.of());

  /**
   * Copies the lists.
   *
   * @param status how it came out
   * @param findings what was found; empty unless failed
   * @param reason why not applicable, what is missing, or what broke; empty otherwise
   * @param branches outcomes of the rules that this one is composed of, with the ids of those rules
   */
  public Outcome {
    Objects.requireNonNull(status, "status");
    PlainLine.checkLength("reason of an outcome", reason);
    findings = List.copyOf(findings);
    branches = List.copyOf(branches);
  }

  /** {@return the rule holds} */
  public static Outcome passed() {
    return PASSED;
  }

  /**
   * The rule does not hold.
   *
   * @param findings what was found
   * @return the outcome
   */
  public static Outcome failed(Finding... findings) {
    return new Outcome(Status.FAILED, List.of(findings), "", List.of());
  }

  /**
   * Passed without findings, failed with them.
   *
   * @param findings what was found
   * @return the outcome
   */
  public static Outcome of(List<Finding> findings) {
    return findings.isEmpty() ? PASSED : new Outcome(Status.FAILED, findings, "", List.of());
  }

  /**
   * The rule has nothing to say about this setting.
   *
   * @param why the reason
   * @return the outcome
   */
  public static Outcome notApplicable(String why) {
    return new Outcome(Status.NOT_APPLICABLE, List.of(), why, List.of());
  }

  /**
   * The rule could not be evaluated.
   *
   * @param missing what is missing
   * @return the outcome
   */
  public static Outcome notEvaluated(String missing) {
    return new Outcome(Status.NOT_EVALUATED, List.of(), missing, List.of());
  }

  /** The rule broke. */
  static Outcome broken(String how) {
    int end =
        how.offsetByCodePoints(0, Math.min(LONGEST_FAULT, how.codePointCount(0, how.length())));
    String shown = end < how.length() ? how.substring(0, end) + "…" : how;
    return new Outcome(Status.BROKEN, List.of(), shown, List.of());
  }
}
