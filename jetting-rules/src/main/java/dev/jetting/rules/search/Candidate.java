package dev.jetting.rules.search;

import java.util.Comparator;

/**
 * A setting computed in full.
 *
 * @param price in the steps of {@link Costs}
 */
record Candidate(
    Standing standing, double leanRisk, double distance, int newParts, long price, Pick pick) {

  private static final Comparator<Pick> BY_PARTS =
      Comparator.comparingInt(Pick::pilotJet)
          .thenComparingInt(Pick::screw)
          .thenComparingInt(Pick::cutaway)
          .thenComparingInt(Pick::needleJet)
          .thenComparingInt(Pick::needle)
          .thenComparingInt(Pick::clip)
          .thenComparingInt(Pick::mainJet);

  /** The order of the parts in the choices: decides between settings equal in all else. */
  static final Comparator<Candidate> PART_ORDER = Comparator.comparing(Candidate::pick, BY_PARTS);

  /**
   * Best first: right before too rich before too lean; of the too lean the least risk; then the
   * least distance, the fewest new parts, the lowest price.
   */
  static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparing(Candidate::standing)
          .thenComparingDouble(c -> c.standing == Standing.TOO_LEAN ? c.leanRisk : 0)
          .thenComparingDouble(Candidate::distance)
          .thenComparingInt(Candidate::newParts)
          .thenComparingLong(Candidate::price)
          .thenComparing(PART_ORDER);
}
