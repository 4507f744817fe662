package dev.jetting.core.air;

/** The formulas for the density of moist air. */
public enum AirFormula {

  /**
   * CIPM-2007, with compressibility and enhancement factor, for 400 µmol/mol of carbon dioxide.
   * Source: A. Picard, R. S. Davis, M. Gläser and K. Fujii, "Revised formula for the density of
   * moist air (CIPM-2007)", Metrologia 45 (2008) 149–155. Its recommended range is 600 hPa to 1100
   * hPa and 15 °C to 27 °C, relative uncertainty 2.2·10⁻⁵; beyond it is an extrapolation, see
   * {@link Air#withinRecommendedRange()}.
   */
  CIPM_2007 {
    @Override
    double vapourMoleFraction(double pascals, double kelvin, double humidity) {
      return Cipm2007.vapourMoleFraction(pascals, kelvin, humidity);
    }

    @Override
    double density(double pascals, double kelvin, double vapourMoleFraction) {
      return Cipm2007.density(pascals, kelvin, vapourMoleFraction);
    }

    @Override
    double vapourToDryAirMolarMass() {
      return Cipm2007.VAPOUR_TO_DRY_AIR_MOLAR_MASS;
    }
  },

  /**
   * Dry air and water vapour as two ideal gases side by side: faster, and at sea level 0.02 %
   * lighter than {@link #CIPM_2007} at 40 °C, 0.09 % at −20 °C. Dry air has the gas constant of the
   * standard atmosphere, 287.05287 J/(kg K) (ISO 2533:1975); the saturation pressure is that of
   * {@link Psychrometrics}.
   */
  IDEAL_GAS {
    @Override
    double vapourMoleFraction(double pascals, double kelvin, double humidity) {
      return humidity * SaturationPressure.overWater(kelvin) / pascals;
    }

    @Override
    double density(double pascals, double kelvin, double vapourMoleFraction) {
      double lightening = 1 - vapourMoleFraction * (1 - Psychrometrics.VAPOUR_TO_DRY_AIR);
      return pascals * lightening / (StandardAtmosphere.GAS_CONSTANT * kelvin);
    }

    @Override
    double vapourToDryAirMolarMass() {
      return Psychrometrics.VAPOUR_TO_DRY_AIR;
    }
  };

  /** Share of all molecules that are water. */
  abstract double vapourMoleFraction(double pascals, double kelvin, double humidity);

  /** Density in kg/m³. */
  abstract double density(double pascals, double kelvin, double vapourMoleFraction);

  /** Molar mass of water over that of dry air. */
  abstract double vapourToDryAirMolarMass();

  double dryAirMassFraction(double vapourMoleFraction) {
    double dry = 1 - vapourMoleFraction;
    return dry / (dry + vapourMoleFraction * vapourToDryAirMolarMass());
  }
}
