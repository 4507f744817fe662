package dev.jetting.rules.search;

/** What a tuner chooses when he sets a carburettor. */
public enum PartKind {
  /** The pilot jet. */
  PILOT_JET,
  /** The turns of the screw; nothing to buy. */
  SCREW,
  /** The slide, by its cutaway. */
  SLIDE,
  /** The needle jet. */
  NEEDLE_JET,
  /** The needle. */
  NEEDLE,
  /** The groove of the needle's clip; nothing to buy. */
  CLIP,
  /** The main jet. */
  MAIN_JET
}
