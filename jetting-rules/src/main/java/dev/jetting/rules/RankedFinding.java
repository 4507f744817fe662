package dev.jetting.rules;

import static java.util.Comparator.comparing;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * A finding with the rule that made it, in the order of danger: severity first, then how far beyond
 * its limit, then rule id, subject, throttle and text. A waived finding keeps its place.
 *
 * @param ruleId id of the rule
 * @param severity how much it matters
 * @param finding the finding
 * @param waiver the waiver that covers it; empty if none does
 */
public record RankedFinding(
    String ruleId, Severity severity, Finding finding, Optional<Waiver> waiver)
    implements Comparable<RankedFinding> {

  private static final Comparator<RankedFinding> ORDER =
      comparing(RankedFinding::severity)
          .reversed()
          .thenComparing(r -> -r.finding().excess())
          .thenComparing(RankedFinding::ruleId)
          .thenComparing(r -> r.finding().subject())
          .thenComparing(r -> r.finding().band().from())
          .thenComparing(r -> r.finding().band().to())
          .thenComparing(r -> r.finding().text());

  /**
   * Checks for nulls.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param finding the finding
   * @param waiver the waiver that covers it; empty if none does
   */
  public RankedFinding {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(waiver, "waiver");
  }

  /** The more dangerous comes first. */
  @Override
  public int compareTo(RankedFinding other) {
    return ORDER.compare(this, other);
  }
}
