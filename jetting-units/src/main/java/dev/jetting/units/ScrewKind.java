package dev.jetting.units;

/**
 * Which fluid an idle mixture screw meters, and so which way turning it out works. Both kinds are
 * counted out from gently seated, in {@link ScrewTurns}.
 *
 * <p>Not for the throttle stop screw, which sets the idle speed.
 */
public enum ScrewKind {
  /** On the engine side of the slide, meters the idle mixture (a fuel screw): out is richer. */
  MIXTURE,

  /** On the filter side of the slide, meters the idle air: out is leaner. */
  AIR;

  /**
   * Returns whether turning the screw out makes the idle mixture richer.
   *
   * @return true for the mixture screw, false for the air screw
   */
  public boolean outIsRicher() {
    return this == MIXTURE;
  }
}
