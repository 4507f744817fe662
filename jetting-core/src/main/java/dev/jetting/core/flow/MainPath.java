package dev.jetting.core.flow;

/**
 * The way of the fuel through main jet and needle jet.
 *
 * @param nozzle suction at the needle jet's mouth
 * @param annulus needle in needle jet
 * @param annulusFactor factor on what the ring passes; 1 unless an engine is known to differ
 * @param needleJet diameter of the needle jet, m
 * @param mainJet restriction of the main jet
 * @param head height of the mouth over the fuel level, m
 * @param density ρ of the fuel, kg/m³
 * @param viscosity μ of the fuel, Pa s
 */
public record MainPath(
    Nozzle nozzle,
    NeedleAnnulus annulus,
    double annulusFactor,
    double needleJet,
    Restriction mainJet,
    double head,
    double density,
    double viscosity) {

  /** Standard acceleration of free fall, m/s² (exact by definition, ISO 80000-3). */
  public static final double GRAVITY = 9.80665;

  /**
   * Suction at the needle jet's mouth: Δp (i_F + κ i_U)/S.
   *
   * @param air state of the air side
   * @param u lift by bore
   * @return Δp_N, Pa
   */
  public double suction(AirSide.State air, double u) {
    return air.depression() * (air.filterShare() + nozzle.factor(u) * air.upstreamShare());
  }

  /**
   * The fuel while the inlet is open.
   *
   * @param flow mass flow, kg/s
   * @param ringsSay ∂ ln flow/∂ ln of what the ring passes, 0 to 1; the main jet has the rest
   */
  public record Fuel(double flow, double ringsSay) {}

  /**
   * The fuel while the inlet is open.
   *
   * @param suction Δp_N, Pa
   * @param needle diameter of the needle in the jet, m
   * @return its flow, and which of ring and main jet meters it
   */
  public Fuel fuel(double suction, double needle) {
    Restriction ring =
        annulus.restriction(needleJet, needle, density, viscosity).passing(annulusFactor);
    double alpha = ring.alpha() + mainJet.alpha();
    double beta = ring.beta() + mainJet.beta();
    double flow = Restriction.flow(alpha, beta, suction - density * GRAVITY * head);
    return new Fuel(density * flow, Restriction.say(ring.alpha(), ring.beta(), alpha, beta, flow));
  }
}
