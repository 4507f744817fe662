package dev.jetting.rules.tuning;

/** What a rider feels or hears. What it says of the mixture stands in a {@link Meanings}. */
public enum Symptom {
  /** Falls flat when the throttle is opened: taken for lean, with little trust. */
  BOGS,
  /** Fires every other turn: rich. */
  FOUR_STROKES,
  /** Answers late: lean. */
  HESITATES,
  /** Speeds up and slows down at a steady throttle: lean. */
  SURGES,
  /** Revolutions stay up when the throttle is shut: lean at closed throttle. */
  HANGS,
  /** Rattles under load: lean, and dangerous. */
  PINGS,
  /**
   * Feels crisp. No proof of a good mixture: the last step before too lean feels best. Taken for
   * not rich, and a warning.
   */
  CRISP
}
