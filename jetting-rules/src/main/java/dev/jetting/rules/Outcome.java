package dev.jetting.rules;

import dev.jetting.core.checks.Checks;
import dev.jetting.rules.text.Message;
import dev.jetting.units.OneLine;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The result of holding a rule against a setting. The outcome of a composed rule is a tree that
 * keeps every branch, so that a caller can show which one decided.
 *
 * @param status how it came out
 * @param findings what was found; empty unless failed
 * @param why why not applicable, what is missing, or what broke; empty otherwise
 * @param branches outcomes of the rules that this one is composed of, with the ids of those rules
 * @param margin how near it came to failing, where no finding says it; empty of a rule that judges
 *     by yes and no
 */
public record Outcome(
    Status status,
    List<Finding> findings,
    Message why,
    List<Branch> branches,
    Optional<Margin> margin) {

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

  /** More say no more to a person, and each is looked for among the others. */
  private static final int MOST_FINDINGS = 1000;

  /** What a judge throws may quote a whole document. */
  private static final int LONGEST_FAULT = 500;

  private static final Message NOTHING = Message.plain("");

  private static final Outcome PASSED = of(Status.PASSED, List.of(), NOTHING);

  /**
   * Copies the lists.
   *
   * @param status how it came out
   * @param findings what was found; empty unless failed
   * @param why why not applicable, what is missing, or what broke; empty otherwise
   * @param branches outcomes of the rules that this one is composed of, with the ids of those rules
   * @param margin how near it came to failing, where no finding says it
   */
  public Outcome {
    Objects.requireNonNull(status, "status");
    Objects.requireNonNull(margin, "margin");
    if (!why.arguments().isEmpty()) {
      PlainLine.checkLength("reason of an outcome", why.text());
    }
    findings = List.copyOf(findings);
    Checks.atMost(
        "findings", () -> Sentence.name("findings of an outcome"), findings.size(), MOST_FINDINGS);
    branches = List.copyOf(branches);
  }

  private static Outcome of(Status status, List<Finding> findings, Message why) {
    return new Outcome(status, findings, why, List.of(), Optional.empty());
  }

  /** {@return why not applicable, what is missing, or what broke, in English; empty otherwise} */
  public String reason() {
    return why.text();
  }

  /** {@return the rule holds, and judges by yes and no} */
  public static Outcome passed() {
    return PASSED;
  }

  /**
   * The rule holds.
   *
   * @param margin by how much
   * @return the outcome
   */
  public static Outcome passed(Margin margin) {
    return passed(List.of(Objects.requireNonNull(margin, "margin")));
  }

  /**
   * The rule holds.
   *
   * @param margins by how much, of all that it measured; the nearest to failing is kept
   * @return the outcome
   */
  public static Outcome passed(List<Margin> margins) {
    return new Outcome(Status.PASSED, List.of(), NOTHING, List.of(), Margin.nearest(margins));
  }

  /**
   * The rule does not hold.
   *
   * @param findings what was found
   * @return the outcome
   */
  public static Outcome failed(Finding... findings) {
    return of(Status.FAILED, List.of(findings), NOTHING);
  }

  /**
   * Passed without findings, failed with them.
   *
   * @param findings what was found
   * @return the outcome
   */
  public static Outcome of(List<Finding> findings) {
    return findings.isEmpty() ? PASSED : of(Status.FAILED, findings, NOTHING);
  }

  /**
   * Failed with findings, else passed by a margin.
   *
   * @param findings what was found
   * @param margins by how much it passes, of all that it measured; not read if there are findings
   * @return the outcome
   */
  public static Outcome of(List<Finding> findings, List<Margin> margins) {
    return findings.isEmpty() ? passed(margins) : of(findings);
  }

  /**
   * The rule has nothing to say about this setting.
   *
   * @param why the reason
   * @return the outcome
   */
  public static Outcome notApplicable(String why) {
    return notApplicable(Message.plain(Objects.requireNonNull(why, "why")));
  }

  /**
   * The rule has nothing to say about this setting.
   *
   * @param why the reason
   * @return the outcome
   */
  public static Outcome notApplicable(Message why) {
    return of(Status.NOT_APPLICABLE, List.of(), why);
  }

  /**
   * The rule could not be evaluated.
   *
   * @param missing what is missing
   * @return the outcome
   */
  public static Outcome notEvaluated(String missing) {
    return notEvaluated(Message.plain(Objects.requireNonNull(missing, "missing")));
  }

  /**
   * The rule could not be evaluated.
   *
   * @param missing what is missing
   * @return the outcome
   */
  public static Outcome notEvaluated(Message missing) {
    Objects.requireNonNull(missing, "missing");
    return of(Status.NOT_EVALUATED, List.of(), missing);
  }

  /**
   * Returns by how much the rule passed or failed.
   *
   * @return {@link #margin()}, or else that of the finding furthest beyond its limit; empty if the
   *     rule judges by yes and no, or said nothing
   */
  public Optional<Margin> nearest() {
    return margin.or(() -> Margin.nearest(findings.stream().map(Margin::of).toList()));
  }

  /** The rule broke. */
  static Outcome broken(String how) {
    String line = String.join(" ", how.lines().toList());
    return of(Status.BROKEN, List.of(), Message.plain(OneLine.shown(line, LONGEST_FAULT)));
  }

  /** The rule threw this, whose own text may throw or be none. */
  static Outcome broken(Throwable thrown) {
    String name = thrown.getClass().getName();
    try {
      return broken(Objects.requireNonNullElse(thrown.toString(), name));
    } catch (Exception | StackOverflowError | AssertionError | LinkageError e) {
      return broken(name);
    }
  }
}
