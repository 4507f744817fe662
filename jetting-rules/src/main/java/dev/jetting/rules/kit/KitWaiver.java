package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.rules.Ceiling;
import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.Waiver;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A person's decision to sell a kit in spite of a finding on one machine, up to what the finding
 * measured. It names the machine, so it stays with it when the kit's recommendations change their
 * order.
 *
 * <pre>{@code
 * KitWaiver waiver =
 *     KitWaiver.of(validation, result, finding)
 *         .by("A. Weaver")
 *         .because("Sold with the bigger main jet.")
 *         .until(LocalDate.of(2027, 3, 31));
 * validator.waiving(List.of(waiver), today).validate(kit, KitDepth.SETTING);
 * }</pre>
 *
 * <p>Not for a finding on the kit's parts, such as an unknown id: correct the kit.
 *
 * @param kit id of the kit
 * @param machine id of the machine
 * @param ruleId id of the rule, or one that it had before; {@code kit-coverage} for the coverage
 * @param subject path of the part or circuit, exactly as the finding names it; {@code coverage} for
 *     the coverage
 * @param author who decided; one line, at most 60 characters
 * @param reason why, in a sentence; one line, at most 300 characters
 * @param expires the last day on which it holds; empty for one that does not expire
 * @param measured the worst measured value that is accepted
 * @param band the throttle band that it was accepted in
 */
public record KitWaiver(
    String kit,
    String machine,
    String ruleId,
    String subject,
    String author,
    String reason,
    Optional<LocalDate> expires,
    Measure measured,
    ThrottleBand band) {

  /** The subject of a waiver of {@code kit-coverage}. */
  public static final String COVERAGE = "coverage";

  /**
   * Checks the texts.
   *
   * @param kit id of the kit
   * @param machine id of the machine
   * @param ruleId id of the rule, or one that it had before
   * @param subject path of the part or circuit, exactly as the finding names it
   * @param author who decided; one line, at most 60 characters
   * @param reason why, in a sentence; one line, at most 300 characters
   * @param expires the last day on which it holds
   * @param measured the worst measured value that is accepted
   * @param band the throttle band that it was accepted in
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters
   */
  public KitWaiver {
    Checks.id("kit", "kit", kit);
    Checks.id("machine", "machine", machine);
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(band, "band");
    Waiver checked = new Waiver(ruleId, subject, author, reason, expires, Optional.empty());
    author = checked.author();
    reason = checked.reason();
  }

  /**
   * Begins a waiver of a finding, up to what it measured, in its throttle band.
   *
   * @param validation the result for the kit
   * @param result the result for the machine
   * @param finding one of the machine's findings, or {@code kit-coverage} of the machine
   * @return a waiver without author and reason
   * @throws IllegalArgumentException if the finding is none on the machine
   */
  public static Draft of(KitValidation validation, MachineResult result, RankedFinding finding) {
    boolean onMachine =
        validation.machines().contains(result) && result.findings().contains(finding);
    boolean coverage =
        validation.findings().contains(finding)
            && KitFindings.isCoverageOf(finding, result.machine());
    if (!onMachine && !coverage) {
      throw InvalidValueException.worded(
          Sentence.of("error.waiver-finding").with("id", finding.ruleId()),
          Sentence.of("error.waiver-finding.machine").with("machine", result.machine()));
    }
    return new Draft(
        validation.kit(),
        result.machine(),
        finding,
        coverage ? COVERAGE : finding.finding().subject());
  }

  /**
   * This waiver with a last day.
   *
   * @param lastDay the last day on which it holds
   * @return the changed waiver
   */
  public KitWaiver until(LocalDate lastDay) {
    return new KitWaiver(
        kit, machine, ruleId, subject, author, reason, Optional.of(lastDay), measured, band);
  }

  /** The same for the setup sheet of the machine, or for its coverage. */
  Waiver on(String engine, String carburettor) {
    Ceiling accepted = new Ceiling(engine, carburettor, measured, band);
    return new Waiver(ruleId, subject, author, reason, expires, Optional.of(accepted));
  }

  /** The same without what it accepts, and of what. */
  Waiver signed() {
    return new Waiver(ruleId, subject, author, reason, expires, Optional.empty());
  }

  /** A waiver that nobody has signed yet. */
  public static final class Draft {
    private final String kit;
    private final String machine;
    private final RankedFinding finding;
    private final String subject;

    private Draft(String kit, String machine, RankedFinding finding, String subject) {
      this.kit = kit;
      this.machine = machine;
      this.finding = finding;
      this.subject = subject;
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
    public KitWaiver because(String reason) {
      return new KitWaiver(
          draft.kit,
          draft.machine,
          draft.finding.ruleId(),
          draft.subject,
          author,
          reason,
          Optional.empty(),
          draft.finding.finding().measured(),
          draft.finding.finding().band());
    }
  }
}
