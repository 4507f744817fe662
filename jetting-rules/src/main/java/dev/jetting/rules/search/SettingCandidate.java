package dev.jetting.rules.search;

import java.util.Comparator;

/**
 * A setting computed in full.
 *
 * @param price in the steps of {@link Costs}
 */
record SettingCandidate(
    Standing standing,
    double leanRisk,
    double distance,
    int newParts,
    long price,
    ChoiceIndices pick) {

  private static final Comparator<ChoiceIndices> BY_PARTS =
      Comparator.comparingInt(ChoiceIndices::pilotJet)
          .thenComparingInt(ChoiceIndices::screw)
          .thenComparingInt(ChoiceIndices::cutaway)
          .thenComparingInt(ChoiceIndices::needleJet)
          .thenComparingInt(ChoiceIndices::needle)
          .thenComparingInt(ChoiceIndices::clip)
          .thenComparingInt(ChoiceIndices::mainJet);

  /** The order of the parts in the choices: decides between settings equal in all else. */
  static final Comparator<SettingCandidate> PART_ORDER =
      Comparator.comparing(SettingCandidate::pick, BY_PARTS);

  /**
   * Best first: right before too rich before too lean; of the too lean the least risk; then the
   * least distance, the fewest new parts, the lowest price.
   */
  static final Comparator<SettingCandidate> BEST_FIRST =
      Comparator.comparing(SettingCandidate::standing)
          .thenComparingDouble(c -> c.standing == Standing.TOO_LEAN ? c.leanRisk : 0)
          .thenComparingDouble(SettingCandidate::distance)
          .thenComparingInt(SettingCandidate::newParts)
          .thenComparingLong(SettingCandidate::price)
          .thenComparing(PART_ORDER);
}
