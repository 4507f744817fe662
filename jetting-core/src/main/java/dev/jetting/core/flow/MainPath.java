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
   * Fuel flow while the inlet is open.
   *
   * @param suction Δp_N, Pa
   * @param needle diameter of the needle in the jet, m
   * @return mass flow, kg/s
   */
  public double flow(double suction, double needle) {
    return density
        * annulus
            .restriction(needleJet, needle, density, viscosity)
            .passing(annulusFactor)
            .then(mainJet)
            .flow(suction - density * GRAVITY * head);
  }
}
