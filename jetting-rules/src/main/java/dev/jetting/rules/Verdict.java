package dev.jetting.rules;

import com.google.common.collect.ImmutableSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Whether anything in a report speaks against a careful first ride, and what the answer rests on.
 *
 * <p>It follows from the rest of the report, and a report with another verdict cannot be made.
 * Never a promise of safety.
 *
 * @param ruling the answer
 * @param dangers ids of the rules that found a danger which no waiver covers
 * @param lean where the mixture is too lean and no waiver covers it; empty if nowhere
 * @param unanswered ids of the rules of danger that could not be evaluated
 * @param broken ids of the rules that broke
 * @param waived the dangers that waivers cover, the most dangerous first
 * @param waiversJudgedOn the day by which waivers were judged to hold; empty for a report that was
 *     made without waivers
 */
public record Verdict(
    Ruling ruling,
    List<String> dangers,
    Set<Lean> lean,
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

  /** Where a mixture may be too lean. */
  public enum Lean {
    /**
     * As it is ridden: on any assessed day, at an opening that no waiver of a lean risk covers,
     * climbs included.
     */
    RIDDEN,
    /** On the overrun: the closed throttle after a long open run. */
    OVERRUN
  }

  /**
   * Copies the lists.
   *
   * @param ruling the answer
   * @param dangers ids of the rules that found a danger which no waiver covers
   * @param lean where the mixture is too lean and no waiver covers it; empty if nowhere
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
    lean = ImmutableSet.copyOf(lean.stream().sorted().toList());
    unanswered = List.copyOf(unanswered);
    broken = List.copyOf(broken);
    waived = List.copyOf(waived);
  }

  /** {@return whether the mixture is too lean as it is ridden, and no waiver covers it} */
  public boolean tooLean() {
    return lean.contains(Lean.RIDDEN);
  }

  /** {@return whether the overrun is too lean and no waiver covers it} */
  public boolean tooLeanOnOverrun() {
    return lean.contains(Lean.OVERRUN);
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
