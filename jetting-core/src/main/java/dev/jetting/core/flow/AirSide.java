package dev.jetting.core.flow;

/**
 * The air that an engine draws past the slide, and the depression that it makes there.
 *
 * <p>Filter, upstream gap (raised by the cutaway) and downstream gap lie in series; the depression
 * behind them is the one at which what the gaps pass is what the crankcase takes:
 *
 * <p>A_eff p₀/√(R T₀) Ψ(r) = k r p₀/(R T₀) V η N, k = s (1+2β)/φ: a pump behind a nozzle, solved in
 * closed form ({@link IsentropicFlow#dropBehindPump}).
 *
 * @param bore bore at the slide, m
 * @param cutaway height by which the cutaway raises the upstream edge, m
 * @param idleLift lift of the closed slide, m
 * @param upstreamDischarge discharge coefficient of the upstream gap
 * @param downstreamDischarge discharge coefficient of the downstream gap
 * @param filterResistance 1/A_F², m⁻⁴; 0 for an open mouth
 * @param openShare φ₁, share of the cycle in which the inlet is open at full lift
 * @param blowback β₁, share of the charge blown back at full lift
 * @param signal s, factor on the peak of the pulsation; 1 unless an engine is known to differ
 * @param sweptVolume V, m³
 * @param pressure p₀, Pa
 * @param temperature T₀, K
 * @param gasConstant R of the moist air, J/(kg K)
 */
public record AirSide(
    double bore,
    double cutaway,
    double idleLift,
    double upstreamDischarge,
    double downstreamDischarge,
    double filterResistance,
    double openShare,
    double blowback,
    double signal,
    double sweptVolume,
    double pressure,
    double temperature,
    double gasConstant) {

  /**
   * The state of the air side.
   *
   * @param lift x, m
   * @param openShare φ, share of the cycle in which fuel is drawn
   * @param pressureRatio r
   * @param depression Δp = p₀ (1 − r), Pa
   * @param filterShare share of the depression that falls at the filter
   * @param upstreamShare share of the depression that falls at the upstream gap
   * @param airFlow mean mass flow of moist air, kg/s
   */
  public record State(
      double lift,
      double openShare,
      double pressureRatio,
      double depression,
      double filterShare,
      double upstreamShare,
      double airFlow) {}

  /**
   * Lift of the slide at a throttle opening.
   *
   * @param throttle θ, 0 to 1
   * @return x_idle + θ (D − x_idle), m
   */
  public double lift(double throttle) {
    return idleLift + throttle * (bore - idleLift);
  }

  /** {@return density of the moist air, kg/m³} */
  public double density() {
    return pressure / (gasConstant * temperature);
  }

  /**
   * Solves the balance.
   *
   * @param throttle θ, 0 to 1
   * @param deliveryRatio η at this speed
   * @param revolutionsPerSecond N, 1/s
   * @return the state there
   */
  public State at(double throttle, double deliveryRatio, double revolutionsPerSecond) {
    double lift = lift(throttle);
    double u = lift / bore;
    double phi = 1 - (1 - openShare) * u;
    double peak = signal * (1 + 2 * blowback * u) / phi;

    double upstream = resistance(upstreamDischarge * SlideGap.area(bore, lift + cutaway));
    double downstream = resistance(downstreamDischarge * SlideGap.area(bore, lift));
    double sum = upstream + downstream + filterResistance;

    double gapFlow = pressure / Math.sqrt(gasConstant * temperature * sum);
    double unthrottled = density() * sweptVolume * deliveryRatio * revolutionsPerSecond;
    double drop =
        IsentropicFlow.dropBehindPump(gapFlow / (peak * unthrottled), IsentropicFlow.GAMMA_AIR);
    double ratio = 1 - drop;
    return new State(
        lift,
        phi,
        ratio,
        pressure * drop,
        filterResistance / sum,
        upstream / sum,
        ratio * unthrottled);
  }

  private static double resistance(double effectiveArea) {
    return 1 / (effectiveArea * effectiveArea);
  }
}
