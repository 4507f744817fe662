package dev.jetting.core.flow;

/**
 * A jet as a short square-edged orifice, 1 to 10 diameters long.
 *
 * <p>Source: Lichtarowicz, Duggins and Markland, Discharge coefficients for incompressible
 * non-cavitating flow through long orifices, J. Mech. Eng. Sci. 7 (1965): 1/Cd = 1/Cdu + (20/Re)(1
 * + 2.25 L/d) − 0.005 (L/d)/(1 + 7.5 [log₁₀(1.5e-4 Re)]²), Cdu = 0.827 − 0.0085 L/d.
 *
 * <p>As a restriction it is linearised, because jets in series then have a closed form. The square
 * of 1/Cdu + b'/Re is taken as 1/Cdu² + (2/Cdu) b'/Re, without the small last term of the
 * correlation. The tests check the difference from the full correlation, and MODEL.md states it.
 */
public final class ShortOrifice {

  private ShortOrifice() {}

  /**
   * The discharge coefficient at high Reynolds number.
   *
   * @param lengthRatio L/d
   * @return Cdu
   */
  public static double ultimateDischarge(double lengthRatio) {
    return 0.827 - 0.0085 * lengthRatio;
  }

  /**
   * The discharge coefficient by the full correlation.
   *
   * @param reynolds Re on the bore, 10 to 20 000
   * @param lengthRatio L/d, 2 to 10
   * @return Cd
   */
  public static double discharge(double reynolds, double lengthRatio) {
    double log = StrictMath.log10(1.5e-4 * reynolds);
    return 1
        / (1 / ultimateDischarge(lengthRatio)
            + 20 / reynolds * (1 + 2.25 * lengthRatio)
            - 0.005 * lengthRatio / (1 + 7.5 * log * log));
  }

  /**
   * The discharge coefficient by the linearised correlation that the model uses.
   *
   * @param reynolds Re on the bore, above 0
   * @param lengthRatio L/d
   * @return Cd
   */
  public static double linearisedDischarge(double reynolds, double lengthRatio) {
    double cdu = ultimateDischarge(lengthRatio);
    return 1 / Math.sqrt(1 / (cdu * cdu) + 40 * (1 + 2.25 * lengthRatio) / (cdu * reynolds));
  }

  /**
   * The restriction of a jet: α = ρ/(2 Cdu² A²), β = b μ/(2 d A), b = 40 (1 + 2.25 L/d)/Cdu.
   *
   * @param bore d, m
   * @param lengthRatio L/d
   * @param density ρ of the fuel, kg/m³
   * @param viscosity μ of the fuel, Pa s
   * @return the restriction
   */
  public static Restriction restriction(
      double bore, double lengthRatio, double density, double viscosity) {
    double area = Math.PI / 4 * bore * bore;
    double cdu = ultimateDischarge(lengthRatio);
    double b = 40 * (1 + 2.25 * lengthRatio) / cdu;
    return new Restriction(
        density / (2 * cdu * cdu * area * area), b * viscosity / (2 * bore * area));
  }

  /**
   * How the restriction of a jet changes with its bore, L/d staying: α is as d⁻⁴, β as d⁻³.
   *
   * @param jet the restriction
   * @param bore d, m
   * @return ∂α/∂d and ∂β/∂d, in α and β
   */
  public static Restriction byBore(Restriction jet, double bore) {
    return new Restriction(-4 * jet.alpha() / bore, -3 * jet.beta() / bore);
  }
}
