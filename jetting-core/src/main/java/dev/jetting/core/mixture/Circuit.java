package dev.jetting.core.mixture;

/** The four fields of the throttle range that a tuner distinguishes. */
public enum Circuit {
  /** Pilot jet and screw. */
  PILOT,
  /** The cutaway of the slide. */
  CUTAWAY,
  /** Needle jet, needle and clip. */
  NEEDLE,
  /** The main jet. */
  MAIN
}
