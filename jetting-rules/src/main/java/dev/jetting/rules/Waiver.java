package dev.jetting.rules;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A person's decision to live with a finding. The finding stays in the report, and the verdict
 * names the decision.
 *
 * <p>A waiver of a danger is made from its finding, and covers it up to what was accepted:
 *
 * <pre>{@code
 * Waiver waiver =
 *     Waiver.of(report, report.findings().get(0))
 *         .by("A. Weaver")
 *         .because("Ridden below half throttle until the jet arrives.")
 *         .until(LocalDate.of(2027, 3, 31));
 * }</pre>
 *
 * <p>Not a way to switch a rule off: {@link Rulebook#without} does that, and the report says so.
 *
 * @param ruleId id of the rule, or one that it had before
 * @param subject path of the part or circuit, exactly as the finding names it
 * @param author who decided; one line, at most 60 characters
 * @param reason why, in a sentence; one line, at most 300 characters
 * @param expires the last day on which it holds, by the day that the caller passes; empty for one
 *     that does not expire
 * @param accepted what is accepted at most; empty for a waiver that covers notes and warnings
 *     whatever they measured, and no danger
 */
public record Waiver(
    String ruleId,
    String subject,
    String author,
    String reason,
    Optional<LocalDate> expires,
    Optional<Ceiling> accepted) {

  private static final int LONGEST_AUTHOR = 60;
  private static final int LONGEST_REASON = 300;

  /**
   * Checks the texts. {@link #of} and {@link #ofRule} name each of them.
   *
   * @param ruleId id of the rule, or one that it had before
   * @param subject path of the part or circuit, exactly as the finding names it
   * @param author who decided; one line, at most 60 characters
   * @param reason why, in a sentence; one line, at most 300 characters
   * @param expires the last day on which it holds, by the day that the caller passes; empty for one
   *     that does not expire
   * @param accepted what is accepted at most; empty for a waiver that covers notes and warnings
   *     whatever they measured, and no danger
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters
   */
  public Waiver {
    PlainLine.checked("ruleId", "rule id of a waiver", ruleId, PlainLine.LONGEST_TEXT);
    PlainLine.checked("subject", "subject of a waiver", subject, PlainLine.LONGEST_TEXT);
    Objects.requireNonNull(expires, "expires");
    Objects.requireNonNull(accepted, "accepted");
    PlainLine.checked("author", "author of a waiver", author, LONGEST_AUTHOR);
    PlainLine.checked("reason", "reason of a waiver", reason, LONGEST_REASON);
  }

  /**
   * Begins a waiver of a finding, up to what it measured, in its throttle band, on the report's
   * engine and carburettor.
   *
   * @param report the report
   * @param finding one of its findings
   * @return a waiver without author and reason
   * @throws IllegalArgumentException if the finding is none of the report
   */
  public static Draft of(Report report, RankedFinding finding) {
    if (!report.findings().contains(finding)) {
      throw InvalidValueException.worded(
          Sentence.of("error.waiver-finding").with("id", finding.ruleId()),
          Sentence.of("error.waiver-finding.report"));
    }
    return new Draft(
        finding.ruleId(),
        finding.finding().subject(),
        Optional.of(Ceiling.of(report.sheet(), finding.finding())));
  }

  /**
   * Begins a waiver of whatever notes and warnings a rule finds on a subject.
   *
   * @param ruleId id of the rule, or one that it had before
   * @return a waiver without subject, author and reason
   */
  public static OfRule ofRule(String ruleId) {
    return new OfRule(Objects.requireNonNull(ruleId, "ruleId"));
  }

  /**
   * This waiver with a last day.
   *
   * @param lastDay the last day on which it holds
   * @return the changed waiver
   */
  public Waiver until(LocalDate lastDay) {
    return new Waiver(ruleId, subject, author, reason, Optional.of(lastDay), accepted);
  }

  /**
   * Whether the waiver holds on a day.
   *
   * @param day the day
   * @return true up to and on the last day
   */
  public boolean holdsOn(LocalDate day) {
    return expires.isEmpty() || !day.isAfter(expires.get());
  }

  /** A waiver that has no subject yet. */
  public static final class OfRule {
    private final String ruleId;

    private OfRule(String ruleId) {
      this.ruleId = ruleId;
    }

    /**
     * Names the subject.
     *
     * @param subject path of the part or circuit, exactly as the finding names it
     * @return a waiver without author and reason
     */
    public Draft on(String subject) {
      return new Draft(ruleId, subject, Optional.empty());
    }
  }

  /** A waiver that nobody has signed yet. */
  public static final class Draft {
    private final String ruleId;
    private final String subject;
    private final Optional<Ceiling> accepted;

    private Draft(String ruleId, String subject, Optional<Ceiling> accepted) {
      this.ruleId = ruleId;
      this.subject = subject;
      this.accepted = accepted;
    }

    /**
     * Signs it.
     *
     * @param author who decided; one line, at most 60 characters
     * @return a waiver without a reason
     */
    public Signed by(String author) {
      return new Signed(this, author);
    }
  }

  /** A waiver that gives no reason yet. */
  public static final class Signed {
    private final Draft draft;
    private final String author;

    private Signed(Draft draft, String author) {
      this.draft = draft;
      this.author = author;
    }

    /**
     * Completes the waiver.
     *
     * @param reason why, in a sentence; one line, at most 300 characters
     * @return the waiver, which does not expire
     * @throws IllegalArgumentException if author or reason is blank, too long or not one line of
     *     visible characters
     */
    public Waiver because(String reason) {
      return new Waiver(
          draft.ruleId, draft.subject, author, reason, Optional.empty(), draft.accepted);
    }
  }
}
