package dev.jetting.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether anything in a report speaks against a careful first ride, and what the answer rests on.
 *
 * <p>It follows from the rest of the report, and a report with another verdict cannot be made.
 * Never a promise of safety.
 *
 * @param ruling the answer
 * @param dangers ids of the rules that found a danger which no waiver covers
 * @param tooLean whether the mixture is too lean, on any assessed day, at an opening that no waiver
 *     of a lean risk covers
 * @param tooLeanOnOverrun whether the overrun is too lean and no waiver covers it
 * @param unanswered ids of the rules of danger that could not be evaluated
 * @param broken ids of the rules that broke
 * @param waived the dangers that waivers cover, the most dangerous first
 * @param waiversJudgedOn the day by which waivers were judged to hold; empty for a report that was
 *     made without waivers
 */
public record Verdict(
    Ruling ruling,
    List<String> dangers,
    boolean tooLean,
    boolean tooLeanOnOverrun,
    List<String> unanswered,
    List<String> broken,
    List<WaivedDanger> waived,
    Optional<LocalDate> waiversJudgedOn) {

  /** The answers, the best first. */
  public enum Ruling {
    /** Nothing speaks against a careful first ride. */
    PASSES,
    /** Nothing speaks against it except dangers that a person accepted. */
    PASSES_BY_WAIVER,
    /** Nothing wrong was found, but something of importance was not looked at. */
    UNANSWERED,
    /** A danger was found. */
    FAILS
  }

  /**
   * Copies the lists.
   *
   * @param ruling the answer
   * @param dangers ids of the rules that found a danger which no waiver covers
   * @param tooLean whether the mixture is too lean at an opening that no waiver covers
   * @param tooLeanOnOverrun whether the overrun is too lean and no waiver covers it
   * @param unanswered ids of the rules of danger that could not be evaluated
   * @param broken ids of the rules that broke
   * @param waived the dangers that waivers cover, the most dangerous first
   * @param waiversJudgedOn the day by which waivers were judged to hold; empty for a report that
   *     was made without waivers
   */
  public Verdict {
    Objects.requireNonNull(ruling, "ruling");
    Objects.requireNonNull(waiversJudgedOn, "waiversJudgedOn");
    dangers = List.copyOf(dangers);
    unanswered = List.copyOf(unanswered);
    broken = List.copyOf(broken);
    waived = List.copyOf(waived);
  }

  /**
   * Returns whether nothing speaks against a careful first ride, or nothing except waived dangers.
   *
   * @return true if so; never a promise
   */
  public boolean passes() {
    return ruling == Ruling.PASSES || ruling == Ruling.PASSES_BY_WAIVER;
  }

  /**
   * Returns whether nothing speaks against a careful first ride, waived dangers included.
   *
   * @return true if so; never a promise
   */
  public boolean passesWithoutWaivers() {
    return ruling == Ruling.PASSES;
  }
}
