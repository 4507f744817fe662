package dev.jetting.core.air;

/**
 * The CIPM-2007 equation for the density of moist air, in SI units. The constants are those of
 * Metrologia 45 (2008) 149–155, appendix A. The mole fraction of carbon dioxide is 400·10⁻⁶, the
 * paper's value for where it is not measured.
 */
final class Cipm2007 {

  static final double LEAST_PRESSURE = 60_000;
  static final double GREATEST_PRESSURE = 110_000;
  static final double LEAST_CELSIUS = 15;
  static final double GREATEST_CELSIUS = 27;

  private static final double MOLAR_GAS_CONSTANT = 8.314472;
  private static final double MOLAR_MASS_DRY_AIR = 28.96546e-3;
  private static final double MOLAR_MASS_WATER = 18.01528e-3;
  static final double VAPOUR_TO_DRY_AIR_MOLAR_MASS = MOLAR_MASS_WATER / MOLAR_MASS_DRY_AIR;

  private static final double ZERO_CELSIUS = 273.15;

  private Cipm2007() {}

  /** Saturation pressure over water, Pa: equation A1.1. */
  static double saturationPressure(double kelvin) {
    return StrictMath.exp(
        1.2378847e-5 * kelvin * kelvin
            - 1.9121316e-2 * kelvin
            + 33.93711047
            - 6.3431645e3 / kelvin);
  }

  /** Enhancement factor: equation A1.2. */
  static double enhancementFactor(double pascals, double kelvin) {
    double t = kelvin - ZERO_CELSIUS;
    return 1.00062 + 3.14e-8 * pascals + 5.6e-7 * t * t;
  }

  static double vapourMoleFraction(double pascals, double kelvin, double humidity) {
    return humidity * enhancementFactor(pascals, kelvin) * saturationPressure(kelvin) / pascals;
  }

  /** Compressibility factor: equation A1.4. */
  static double compressibility(double pascals, double kelvin, double vapourMoleFraction) {
    double t = kelvin - ZERO_CELSIUS;
    double x = vapourMoleFraction;
    double pOverT = pascals / kelvin;
    double first =
        1.58123e-6
            - 2.9331e-8 * t
            + 1.1043e-10 * t * t
            + (5.707e-6 - 2.051e-8 * t) * x
            + (1.9898e-4 - 2.376e-6 * t) * x * x;
    double second = 1.83e-11 - 0.765e-8 * x * x;
    return 1 - pOverT * first + pOverT * pOverT * second;
  }

  /** Density, kg/m³: equation 1. */
  static double density(double pascals, double kelvin, double vapourMoleFraction) {
    double ideal = pascals * MOLAR_MASS_DRY_AIR / (MOLAR_GAS_CONSTANT * kelvin);
    double lightening = 1 - vapourMoleFraction * (1 - VAPOUR_TO_DRY_AIR_MOLAR_MASS);
    return ideal * lightening / compressibility(pascals, kelvin, vapourMoleFraction);
  }
}
