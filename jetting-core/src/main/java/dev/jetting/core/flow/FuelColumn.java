package dev.jetting.core.flow;

/**
 * The column of fuel from the main jet to the mouth of the needle jet, by its inertia.
 *
 * <p>Three lengths by their areas: the bore of the main jet, the column below the needle jet's
 * mouth, and the ring round the needle, which widens with the lift. The parts are those of a usual
 * carburettor of that bore (assumed), not those fitted: with its own, a bigger jet could be leaner.
 *
 * @param bore bore of the slide D, m
 * @param ringLength length of the needle jet L_j, m
 * @param jetLengthRatio length of the main jet by its diameter
 */
public record FuelColumn(double bore, double ringLength, double jetLengthRatio) {

  /** From main jet to needle jet, m: the column of the cycle's coefficients (assumed). */
  private static final double LENGTH = 0.025;

  private static final double QUARTER_PI = Math.PI / 4;
  private static final double MAIN_JET_BY_BORE = 0.041;
  private static final double NEEDLE_JET_BY_BORE = 0.089;
  private static final double NEEDLE_BY_BORE = 0.0845;
  private static final double TAPER = 0.0235;

  /**
   * Length by area of the whole column.
   *
   * @param lift x, m, 0 to the bore
   * @return Σ L/A, 1/m, more than 0
   */
  public double lengthByArea(double lift) {
    double needleJet = NEEDLE_JET_BY_BORE * bore;
    double needle = NEEDLE_BY_BORE * bore - TAPER * lift;
    return jetLengthRatio / (QUARTER_PI * MAIN_JET_BY_BORE * bore)
        + LENGTH / (QUARTER_PI * needleJet * needleJet)
        + ringLength / (QUARTER_PI * (needleJet - needle) * (needleJet + needle));
  }
}
