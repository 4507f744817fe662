package dev.jetting.core.cycle;

import dev.jetting.core.flow.Restriction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The pilot circuit under a depression at one instant: jet and bleed feed a well, and the outlet
 * passes air and fuel as one compressible mixture.
 *
 * <p>With x the share of air by mass and S the slip, the mixture's specific volume is v = (x v_g +
 * S (1−x) v_l)(x + (1−x)/S). This is the momentum form for separated flow. The fuel keeps the air
 * at its temperature, so v_g = v_w p_w/p, and the mass flux down to a pressure p is G = √(2 ∫ v
 * dp)/v. It has one greatest value, beyond which the outlet is choked. Slip and mass flux: any
 * textbook on two-phase flow (from memory).
 *
 * @param jet restriction of the pilot jet
 * @param headPressure ρ_f g h, Pa
 * @param bleed effective area of the bleed, m²
 * @param outlet effective area of the outlet, m²
 * @param slip S, 1 or more
 * @param fuelDensity ρ_f, kg/m³
 * @param ambient ambient pressure, Pa
 * @param gasTemperature R T of ambient air, J/kg
 */
record PilotOutlet(
    Restriction jet,
    double headPressure,
    double bleed,
    double outlet,
    double slip,
    double fuelDensity,
    double ambient,
    double gasTemperature) {

  private static final double RELATIVE = 1e-10;
  private static final int MOST_EVALUATIONS = 200;

  /**
   * Mass flow of pilot fuel.
   *
   * @param depression ambient pressure less that behind the slide, Pa; below zero counts as none
   * @return kg/s
   */
  double fuelFlow(double depression) {
    if (depression <= 0) {
      return 0;
    }
    double least = depression * 1e-9;
    UnivariateFunction balance = w -> passed(w, depression) - fuel(w) - bleedFlow(w);
    if (balance.value(depression) >= 0) {
      return fuel(depression);
    }
    if (balance.value(least) <= 0) {
      return fuel(least);
    }
    return fuel(root(balance, least, depression));
  }

  private double fuel(double well) {
    return fuelDensity * jet.flow(well - headPressure);
  }

  /** Incompressible: the bleed's own drop is small. */
  private double bleedFlow(double well) {
    return bleed * Math.sqrt(2 * ambient / gasTemperature * well);
  }

  private double passed(double well, double depression) {
    double fuel = fuel(well);
    double air = bleedFlow(well);
    double dry = air == 0 ? 0 : air / (air + fuel);
    double inWell = ambient - well;
    double factor = dry + (1 - dry) / slip;
    Mixture mixture =
        new Mixture(factor * dry * gasTemperature, factor * slip * (1 - dry) / fuelDensity, inWell);
    return outlet * mixture.flux(ambient - depression);
  }

  private static double root(UnivariateFunction f, double from, double to) {
    return new BracketingNthOrderBrentSolver(RELATIVE, to * RELATIVE * RELATIVE, 5)
        .solve(MOST_EVALUATIONS, f, from, to);
  }

  /** v = c/p + l: a gas at constant temperature and a liquid. */
  private record Mixture(double c, double l, double from) {

    double flux(double to) {
      double choked = choking();
      double end = Math.max(to, choked);
      return Math.sqrt(2 * work(end)) / volume(end);
    }

    private double volume(double p) {
      return c / p + l;
    }

    private double work(double p) {
      return c * StrictMath.log(from / p) + l * (from - p);
    }

    /** Where G stops to grow: 2 ∫ v dp · c/p² = v². */
    private double choking() {
      UnivariateFunction f = p -> 2 * work(p) * c - volume(p) * p * volume(p) * p;
      double least = from * 1e-6;
      return f.value(least) <= 0 ? least : root(f, least, from);
    }
  }
}
