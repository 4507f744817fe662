package dev.jetting.rules.tuning;

/** What a rider feels or hears. What it says of the mixture stands in a {@link Meanings}. */
public enum Symptom {
  /**
   * Answers a roll-on cleanly, or idles best with the screw as it stands and falls back to that
   * idle at once: neither lean nor rich, as far as that can be felt. Not for wide openings.
   */
  CLEAN,
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
  /** Idle drops and stumbles, or the engine loads up at small openings: rich. */
  STUMBLES,
  /** Rattles under load: lean, and dangerous. */
  PINGS,
  /** Loses power with heat: lean, and dangerous. */
  FADES,
  /** Slows by itself, shows seizure marks, or the plug has specks of metal: lean, and dangerous. */
  SEIZES,
  /**
   * Feels crisp. No proof of a good mixture: the last step before too lean feels best. Taken for
   * not rich, and a warning.
   */
  CRISP
}
