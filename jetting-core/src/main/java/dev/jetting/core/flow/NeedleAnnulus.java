package dev.jetting.core.flow;

/**
 * The ring between needle and needle jet.
 *
 * <p>α = K ρ/(2A²) for entry and exit, β = 12 μ L/(g² (1 + 1.5 e²) A) for laminar friction in a
 * narrow eccentric annulus, g half the difference of the diameters. Source of the friction: plane
 * Poiseuille flow with the eccentricity factor 1 + 1.5 e² of the narrow annulus (White, Viscous
 * Fluid Flow, from memory).
 *
 * @param length L, length over which needle and needle jet face each other, m
 * @param entryLoss K
 * @param eccentricity e, 0 centred to 1 touching
 */
public record NeedleAnnulus(double length, double entryLoss, double eccentricity) {

  /**
   * The restriction of the ring.
   *
   * @param jet diameter of the needle jet, m
   * @param needle diameter of the needle where it stands in the jet, m; 0 when it has left the jet
   * @param density ρ of the fuel, kg/m³
   * @param viscosity μ of the fuel, Pa s
   * @return the restriction; infinite where the needle fills the jet
   */
  public Restriction restriction(double jet, double needle, double density, double viscosity) {
    if (needle >= jet) {
      return new Restriction(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    double area = Math.PI / 4 * (jet - needle) * (jet + needle);
    double gap = (jet - needle) / 2;
    return new Restriction(
        entryLoss * density / (2 * area * area),
        12 * viscosity * length / (gap * gap * (1 + 1.5 * eccentricity * eccentricity) * area));
  }
}
