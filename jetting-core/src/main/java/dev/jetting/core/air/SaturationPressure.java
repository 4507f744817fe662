package dev.jetting.core.air;

/**
 * Saturation pressure of water vapour, Pa, after Hyland and Wexler (1983) as given in ASHRAE
 * Fundamentals 2017, chapter 1, equations 5 (ice) and 6 (water).
 */
final class SaturationPressure {

  private SaturationPressure() {}

  /** Over liquid water; published for 0 °C to 200 °C, continued below for supercooled water. */
  static double overWater(double kelvin) {
    double t = kelvin;
    return StrictMath.exp(
        -5.8002206e3 / t
            + 1.3914993
            + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
            + 6.5459673 * StrictMath.log(t));
  }

  /** Over ice; published for −100 °C to 0 °C. */
  static double overIce(double kelvin) {
    double t = kelvin;
    return StrictMath.exp(
        -5.6745359e3 / t
            + 6.3925247
            + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13)))
            + 4.1635019 * StrictMath.log(t));
  }
}
