package dev.jetting.core.flow;

/**
 * A jet, and how it changes with its bore.
 *
 * @param restriction what it does to the fuel
 * @param byBore ∂α/∂d and ∂β/∂d, in α and β; d the bore in m
 */
public record Jet(Restriction restriction, Restriction byBore) {

  /**
   * A jet as a {@link ShortOrifice}.
   *
   * @param bore d, m
   * @param lengthRatio L/d
   * @param density ρ of the fuel, kg/m³
   * @param viscosity μ of the fuel, Pa s
   * @return the jet
   */
  public static Jet of(double bore, double lengthRatio, double density, double viscosity) {
    Restriction restriction = ShortOrifice.restriction(bore, lengthRatio, density, viscosity);
    return new Jet(restriction, ShortOrifice.byBore(restriction, bore));
  }

  /**
   * A jet that passes a factor more.
   *
   * @param factor factor on the flow, more than 0
   * @return the other jet
   */
  public Jet passing(double factor) {
    return new Jet(restriction.passing(factor), byBore.passing(factor));
  }
}
