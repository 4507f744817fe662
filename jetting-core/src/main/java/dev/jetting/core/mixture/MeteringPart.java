package dev.jetting.core.mixture;

/** A part, or an adjustment of one, with which a tuner changes the mixture. */
public enum MeteringPart {
  /** Bore of the pilot jet; bigger is richer. */
  PILOT_JET(Circuit.PILOT, 1),
  /** Turns of the pilot circuit's screw; richer is out for a mixture screw, in for an air screw. */
  SCREW(Circuit.PILOT, 1),
  /** Cutaway of the slide; lower is richer. */
  CUTAWAY(Circuit.CUTAWAY, -1),
  /** Bore of the needle jet; bigger is richer. */
  NEEDLE_JET(Circuit.NEEDLE, 1),
  /** Diameter of the needle's cylinder; thinner is richer. */
  NEEDLE_DIAMETER(Circuit.NEEDLE, -1),
  /** Rate of the needle's tapers; steeper is richer. */
  NEEDLE_TAPER(Circuit.NEEDLE, 1),
  /** Groove of the clip from the top; lower is richer. */
  CLIP(Circuit.NEEDLE, 1),
  /** Bore of the main jet; bigger is richer. */
  MAIN_JET(Circuit.MAIN, 1);

  private final Circuit circuit;
  private final int richerSign;

  MeteringPart(Circuit circuit, int richerSign) {
    this.circuit = circuit;
    this.richerSign = richerSign;
  }

  /** {@return the circuit that the part belongs to} */
  public Circuit circuit() {
    return circuit;
  }

  /**
   * +1 where a bigger number is richer, −1 where a smaller one is; a mixture screw for the screw.
   */
  int richerSign() {
    return richerSign;
  }
}
