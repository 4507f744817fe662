package dev.jetting.core.flow;

/**
 * The air that an engine draws past the slide, and the pulsation behind it.
 *
 * <p>Filter, upstream gap (raised by the cutaway) and downstream gap lie in series; what the crank
 * makes behind them is that of {@link Pulsation}. The air is what the gaps pass under the wave,
 * less what streams back: A_eff p₀/√(R T₀) φ Ψ(1 − d) n.
 *
 * @param bore bore at the slide, m
 * @param cutaway height by which the cutaway raises the upstream edge, m
 * @param idleLift lift of the closed slide, m
 * @param upstreamDischarge discharge coefficient of the upstream gap
 * @param downstreamDischarge discharge coefficient of the downstream gap
 * @param filterResistance 1/A_F², m⁻⁴; 0 for an open mouth
 * @param pulsation that of the engine's inlet
 * @param peakRevolutions N of the power peak, for which the ports are sized, 1/s
 * @param signal s, factor on the root of the wave's height for the same air; 1 unless an engine is
 *     known to differ
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
    Pulsation pulsation,
    double peakRevolutions,
    double signal,
    double sweptVolume,
    double pressure,
    double temperature,
    double gasConstant) {

  /** √(R T) of the dry air in which the usual port is given. */
  private static final double USUAL_ROOT = Math.sqrt(287.05287 * 288.15);

  /**
   * The state of the air side.
   *
   * @param lift x, m
   * @param revolutions N, 1/s
   * @param openShare φ, share of the turn for which the needle jet's wave stands
   * @param depression height of that wave, Pa
   * @param pilotShare φ of the pilot's wave
   * @param pilotDepression height of the pilot's wave, Pa
   * @param filterShare share of the depression that falls at the filter
   * @param upstreamShare share of the depression that falls at the upstream gap
   * @param chargeShare air by what the engine would draw with nothing before its inlet
   * @param airFlow mean mass flow of moist air, kg/s
   */
  public record State(
      double lift,
      double revolutions,
      double openShare,
      double depression,
      double pilotShare,
      double pilotDepression,
      double filterShare,
      double upstreamShare,
      double chargeShare,
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
   * The air side at a throttle opening and speed.
   *
   * @param throttle θ, 0 to 1
   * @param deliveryRatio η at this speed
   * @param revolutionsPerSecond N, 1/s
   * @return the state there
   */
  public State at(double throttle, double deliveryRatio, double revolutionsPerSecond) {
    double lift = lift(throttle);
    double upstream = resistance(upstreamDischarge * SlideGap.area(bore, lift + cutaway));
    double downstream = resistance(downstreamDischarge * SlideGap.area(bore, lift));
    double sum = upstream + downstream + filterResistance;
    double area = 1 / Math.sqrt(sum);

    double root = Math.sqrt(gasConstant * temperature);
    Pulsation.Wave wave =
        pulsation.at(
            area * root / (sweptVolume * revolutionsPerSecond),
            Pulsation.PORT_AT_PEAK * (peakRevolutions / revolutionsPerSecond) * (root / USUAL_ROOT),
            deliveryRatio);
    double passed =
        wave.openShare() * IsentropicFlow.psiOfDrop(wave.drop(), IsentropicFlow.GAMMA_AIR);
    double airFlow = area * pressure / root * passed * wave.passed();
    double unthrottled = density() * sweptVolume * deliveryRatio * revolutionsPerSecond;
    return new State(
        lift,
        revolutionsPerSecond,
        wave.openShare(),
        pressure * heard(wave.drop()),
        wave.pilotShare(),
        pressure * heard(wave.pilotDrop()),
        filterResistance / sum,
        upstream / sum,
        airFlow / unthrottled,
        airFlow);
  }

  /** The drop with another signal: s² times it while small, and never all of the pressure. */
  private double heard(double drop) {
    double square = signal * signal;
    return square * drop / (1 + drop * (square - 1));
  }

  private static double resistance(double effectiveArea) {
    return 1 / (effectiveArea * effectiveArea);
  }
}
