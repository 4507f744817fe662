package dev.jetting.rules.kit;

/** What the parts of a series are for. */
public enum SeriesKind {
  /** The jet of the pilot circuit. */
  PILOT_JET,
  /** The slide, by its cutaway. */
  SLIDE,
  /** The tube in which the needle hangs. */
  NEEDLE_JET,
  /** The needle. */
  NEEDLE,
  /** The jet at the foot of the main path. */
  MAIN_JET,
  /** The screw of the pilot circuit. */
  SCREW,
  /** The valve that lets fuel into the float chamber. */
  FLOAT_VALVE
}
