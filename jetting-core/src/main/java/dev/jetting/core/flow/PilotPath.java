package dev.jetting.core.flow;

/**
 * The pilot circuit: jet, bleed air, and the emulsion's way out past the screw and the progression
 * hole.
 *
 * <p>The depression w in the well is the one root in [0, Δp] of (C_o A_o)² 2 E = (ṁ_p +
 * ṁ_b)(ṁ_p/ρ_f + ṁ_b/ρ). The outlet passes what jet and bleed bring, as a homogeneous mixture whose
 * air expands at its temperature. So E = (p_e²/p₀) ln((p₀ − w)/p_e), with p_e the pressure behind
 * the slide, or (p₀ − w)/√e where the outlet chokes. For small Δp it is Δp − w. The left side falls
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

  private static final int NEWTON_STEPS = 40;
  private static final int MOST_STEPS = 200;

  /** Of w; the error left after it is about its square. */
  private static final double SMALL_STEP = 1e-9;

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
    double well = well(area, depression);
    return new State(well, fuelFlow(well), area, depression);
  }

  /**
   * The root of the balance, by Newton's method within a bracket: where a step would leave it, and
   * after many, the bracket is halved. It ends where the next step would be below rounding.
   */
  private double well(double area, double depression) {
    double low = 0;
    double high = depression;
    double well = depression / 2;
    for (int i = 0; i < MOST_STEPS && low < well && well < high; i++) {
      double fuel = fuelFlow(well);
      double air = bleedFlow(well);
      double mixed = fuel / fuelDensity + air / airDensity;
      double left = 2 * area * area * expansion(well, depression) - (fuel + air) * mixed;
      if (left > 0) {
        low = well;
      } else {
        high = well;
      }
      double steepness = -byWell(area, depression, well, air, mixed, fuel + air);
      if (fuel > 0) {
        Restriction own = jet.restriction();
        double flow = fuel / fuelDensity;
        steepness -= (fuelDensity * mixed + fuel + air) / (2 * own.alpha() * flow + own.beta());
      }
      double next = well - left / steepness;
      if (Math.abs(next - well) <= SMALL_STEP * well) {
        return next;
      }
      boolean inside = low < next && next < high;
      well = inside && i < NEWTON_STEPS ? next : (low + high) / 2;
    }
    return well;
  }

  /** How fast the balance's left side less its right one falls with w, the fuel held. */
  private double byWell(
      double area, double depression, double well, double air, double mixed, double flow) {
    return 2 * area * area * expansionByWell(well, depression)
        + air / (2 * well) * (mixed + flow / airDensity);
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
    double byWell = byWell(state.outlet, state.depression, well, air, mixed, fuel + air);
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
