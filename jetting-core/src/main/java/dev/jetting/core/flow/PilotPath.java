package dev.jetting.core.flow;

/**
 * The pilot circuit: jet, bleed air, and the emulsion's way out past the screw and the progression
 * hole.
 *
 * <p>The depression w in the well is the one root in [0, Δp] of (C_o A_o)² 2 E = (ṁ_p +
 * ṁ_b)(ṁ_p/ρ_f + ṁ_b/ρ): the outlet passes what jet and bleed bring, as a homogeneous mixture whose
 * air expands at its temperature, E = (p_e²/p₀) ln((p₀ − w)/p_e), with p_e the pressure behind the
 * slide, or (p₀ − w)/√e where the outlet chokes. For small Δp it is Δp − w. The left side falls
 * with w, the right side rises.
 *
 * @param jet the pilot jet
 * @param head height of the outlet over the fuel level, m
 * @param bleed C_b A_b, effective area of the air bleed, m²
 * @param outlet C_o times the outlet area at closed throttle, m²
 * @param progression C_o times the area of the progression hole, m²
 * @param uncoverFrom lift above idle at which the slide begins to uncover the progression hole, m
 * @param uncoverTo lift above idle at which it is uncovered, m
 * @param fuelDensity ρ_f, kg/m³
 * @param airDensity ρ, kg/m³
 * @param ambient p₀, Pa
 */
public record PilotPath(
    Jet jet,
    double head,
    double bleed,
    double outlet,
    double progression,
    double uncoverFrom,
    double uncoverTo,
    double fuelDensity,
    double airDensity,
    double ambient) {

  /** (p₀ − w) by the pressure at which a gas that keeps its temperature chokes: √e. */
  private static final double CHOKED = Math.sqrt(Math.E);

  /**
   * The state of the pilot circuit.
   *
   * @param wellDepression w, Pa
   * @param fuelFlow mass flow of fuel while the wave stands, kg/s
   * @param outlet C_o A_o, with what the slide uncovers, m²
   * @param depression Δp behind the slide, Pa
   */
  public record State(double wellDepression, double fuelFlow, double outlet, double depression) {}

  /**
   * Solves the balance.
   *
   * @param depression Δp behind the slide, Pa
   * @param liftAboveIdle lift over the closed position, m
   * @return the state there
   */
  public State at(double depression, double liftAboveIdle) {
    double area = outlet + progression * uncovered(liftAboveIdle);
    double well =
        Roots.ofFalling(
            w -> {
              double fuel = fuelFlow(w);
              double air = bleedFlow(w);
              return area * area * 2 * expansion(w, depression)
                  - (fuel + air) * (fuel / fuelDensity + air / airDensity);
            },
            0,
            depression);
    return new State(well, fuelFlow(well), area, depression);
  }

  /**
   * How the fuel answers to the bore of the pilot jet: ∂ ln ṁ_p/∂ d.
   *
   * <p>By the implicit derivative of the balance, in the volume flow q of the fuel and the well's w
   * = ρ_f g h + α q² + β q. A smaller restriction lowers w at the same q. The outlet and the bleed
   * answer by E = −∂(left − right)/∂w, and more fuel weighs by P = −∂(left − right)/∂q.
   *
   * @param state a state of this path
   * @return 1/m, zero or more; 0 where no fuel flows
   */
  public double byBore(State state) {
    double fuel = state.fuelFlow;
    if (fuel == 0) {
      return 0;
    }
    double well = state.wellDepression;
    double air = bleedFlow(well);
    double flow = fuel / fuelDensity;
    double mixed = flow + air / airDensity;
    double byWell =
        2 * state.outlet * state.outlet * expansionByWell(well, state.depression)
            + air / (2 * well) * (mixed + (fuel + air) / airDensity);
    double byFuel = fuelDensity * mixed + fuel + air;
    Restriction own = jet.restriction();
    double steepness = 2 * own.alpha() * flow + own.beta();
    return own.sensitivity(jet.byBore(), flow) * byWell * steepness / (byWell * steepness + byFuel);
  }

  /** E, Pa. */
  private double expansion(double well, double depression) {
    double before = ambient - well;
    double behind = ambient - depression;
    if (behind * CHOKED < before) {
      return before * before / (2 * Math.E * ambient);
    }
    return behind * behind / ambient * StrictMath.log1p((depression - well) / behind);
  }

  /** −∂E/∂w. */
  private double expansionByWell(double well, double depression) {
    double before = ambient - well;
    double behind = Math.max(ambient - depression, before / CHOKED);
    return behind * behind / (ambient * before);
  }

  private double bleedFlow(double well) {
    return bleed * Math.sqrt(2 * airDensity * well);
  }

  private double fuelFlow(double well) {
    return fuelDensity * jet.restriction().flow(well - fuelDensity * MainPath.GRAVITY * head);
  }

  /** Cubic smooth step from 0 to 1. */
  private double uncovered(double liftAboveIdle) {
    double t = (liftAboveIdle - uncoverFrom) / (uncoverTo - uncoverFrom);
    double held = Math.min(Math.max(t, 0), 1);
    return held * held * (3 - 2 * held);
  }
}
