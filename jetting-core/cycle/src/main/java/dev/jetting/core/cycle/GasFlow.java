package dev.jetting.core.cycle;

import dev.jetting.core.flow.IsentropicFlow;

/**
 * Quasi-steady flow of air through an opening, in either direction: {@link IsentropicFlow}, made
 * smooth through zero. Below a drop d_s the flow goes with the drop itself: √d becomes d/(d² +
 * d_s²)^¼, which an integrator can follow.
 *
 * @param smoothing pressure difference d_s, Pa
 */
record GasFlow(double smoothing) {

  static final double GAMMA = IsentropicFlow.GAMMA_AIR;

  /**
   * Mass flow from a to b.
   *
   * @param area effective area, m²
   * @param a the gas on one side
   * @param b the gas on the other
   * @return kg/s; below zero from b to a
   */
  double flow(double area, Gas a, Gas b) {
    return a.pressure >= b.pressure ? oneWay(area, a, b) : -oneWay(area, b, a);
  }

  private double oneWay(double area, Gas from, Gas to) {
    double drop = 1 - to.pressure / from.pressure;
    double small = smoothing / from.pressure;
    double factor = Math.sqrt(drop / Math.sqrt(drop * drop + small * small));
    return area
        * from.pressure
        / Math.sqrt(from.gasTemperature)
        * IsentropicFlow.psiOfDrop(drop, GAMMA)
        * factor;
  }

  /**
   * A gas at rest.
   *
   * @param pressure p, Pa
   * @param gasTemperature R T, J/kg
   */
  record Gas(double pressure, double gasTemperature) {

    /** A gas by its mass in a volume: R T = p V/m. */
    static Gas in(double volume, double pressure, double mass) {
      return new Gas(pressure, pressure * volume / mass);
    }
  }
}
