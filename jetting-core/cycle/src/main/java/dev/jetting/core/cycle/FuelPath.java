package dev.jetting.core.cycle;

import dev.jetting.core.flow.Restriction;

/**
 * Fuel through main jet and needle jet under a pulsating suction: I dQ/dt = Δ − α Q² − β Q, with Δ
 * the suction less the head of fuel. Fuel does not flow back.
 *
 * @param restriction α and β of main jet and ring in series
 * @param inertance I = ρ Σ L/A over jet, column and ring, kg/m⁴; 0 for fuel without inertia
 * @param headPressure ρ g h, Pa
 * @param density ρ, kg/m³
 */
record FuelPath(Restriction restriction, double inertance, double headPressure, double density) {

  boolean hasInertia() {
    return inertance > 0;
  }

  /** Volume flow in m³/s once it has settled under a steady suction in Pa. */
  double settled(double suction) {
    return restriction.flow(suction - headPressure);
  }

  /** How fast the volume flow grows, m³/s². */
  double acceleration(double suction, double flow) {
    double held = Math.max(flow, 0);
    double rest =
        suction - headPressure - restriction.alpha() * held * held - restriction.beta() * held;
    return flow <= 0 && rest < 0 ? 0 : rest / inertance;
  }
}
