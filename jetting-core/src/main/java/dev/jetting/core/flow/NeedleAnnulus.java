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

  /**
   * A ring, and how it changes with the diameters that make it.
   *
   * @param restriction what it does to the fuel
   * @param byJet ∂α/∂D and ∂β/∂D, in α and β; D the diameter of the needle jet in m
   * @param byNeedle the same with the diameter of the needle
   */
  public record Ring(Restriction restriction, Restriction byJet, Restriction byNeedle) {

    /**
     * A ring by its restriction: α is as A⁻², β as g⁻² A⁻¹.
     *
     * @param restriction what it does to the fuel
     * @param jet diameter of the needle jet, m
     * @param needle diameter of the needle where it stands in the jet, m; 0 when it has left the
     *     jet, and then it has nothing to say
     * @return the ring
     */
    static Ring of(Restriction restriction, double jet, double needle) {
      double areaByJet = 2 * jet / ((jet - needle) * (jet + needle));
      double areaByNeedle = -2 * needle / ((jet - needle) * (jet + needle));
      double gapByJet = 1 / (jet - needle);
      double gapByNeedle = needle == 0 ? 0 : -gapByJet;
      return new Ring(
          restriction,
          changed(restriction, areaByJet, gapByJet),
          changed(restriction, areaByNeedle, gapByNeedle));
    }

    /** By how much the restriction changes where ln A and ln g change by so much. */
    private static Restriction changed(Restriction ring, double lnArea, double lnGap) {
      return new Restriction(-2 * lnArea * ring.alpha(), -(lnArea + 2 * lnGap) * ring.beta());
    }
  }
}
