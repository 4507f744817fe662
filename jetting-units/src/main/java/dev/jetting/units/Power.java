package dev.jetting.units;

/**
 * The power of an engine.
 *
 * <p>Kept in kilowatts, from 0 to 1000000.
 *
 * <p>Not a torque, and not a power corrected to standard air unless its source says so. Metric
 * horsepower (PS) is 75 kgf·m/s, mechanical horsepower (hp) 550 ft·lbf/s, both exactly, with
 * standard gravity, the foot and the pound by definition.
 */
public final class Power extends Scalar<Power> {
  private static final Unit METRIC_HORSEPOWER = Unit.of("PS").times("0.73549875");
  private static final Unit MECHANICAL_HORSEPOWER = Unit.of("hp").times("0.74569987158227022");
  private static final Kind KIND =
      Kind.of(
          "power",
          Range.fromTo(0, 1_000_000),
          Unit.of("kW"),
          METRIC_HORSEPOWER,
          MECHANICAL_HORSEPOWER);

  private Power(double kilowatts) {
    super(kilowatts);
  }

  /**
   * Creates a power from kilowatts.
   *
   * @param kilowatts kilowatts, from 0 to 1000000
   * @return the power
   * @throws QuantityException if {@code kilowatts} is not finite or out of range
   */
  public static Power ofKilowatts(double kilowatts) {
    return new Power(KIND.check(kilowatts));
  }

  /**
   * Creates a power from metric horsepower.
   *
   * @param metricHorsepower metric horsepower, from 0 to about 1.36e6
   * @return the power
   * @throws QuantityException if {@code metricHorsepower} is not finite or out of range
   */
  public static Power ofMetricHorsepower(double metricHorsepower) {
    return new Power(KIND.check(metricHorsepower, METRIC_HORSEPOWER));
  }

  /**
   * Creates a power from mechanical horsepower.
   *
   * @param mechanicalHorsepower mechanical horsepower, from 0 to about 1.34e6
   * @return the power
   * @throws QuantityException if {@code mechanicalHorsepower} is not finite or out of range
   */
  public static Power ofMechanicalHorsepower(double mechanicalHorsepower) {
    return new Power(KIND.check(mechanicalHorsepower, MECHANICAL_HORSEPOWER));
  }

  /**
   * Reads a power: kilowatts, metric or mechanical horsepower.
   *
   * @param text such as {@code 12.5 kW}, {@code 17 PS} or {@code 16.8 hp}
   * @return the power
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Power parse(String text) {
    return new Power(KIND.parse(text));
  }

  /**
   * Returns this power in kilowatts.
   *
   * @return kilowatts
   */
  public double kilowatts() {
    return canonical;
  }

  /**
   * Returns this power in metric horsepower.
   *
   * @return metric horsepower
   */
  public double metricHorsepower() {
    return METRIC_HORSEPOWER.fromCanonical(canonical);
  }

  /**
   * Returns this power in mechanical horsepower.
   *
   * @return mechanical horsepower
   */
  public double mechanicalHorsepower() {
    return MECHANICAL_HORSEPOWER.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
