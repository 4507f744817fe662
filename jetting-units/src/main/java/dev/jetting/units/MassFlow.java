package dev.jetting.units;

/**
 * A mass of air or fuel in a time.
 *
 * <p>Kept in grams a second, from 0 to 1000000.
 *
 * <p>Not a volume in a time, which is a {@link VolumeFlow}, and not the number on a jet, which is a
 * {@link JetFlow}.
 */
public final class MassFlow extends Scalar<MassFlow> {
  private static final Unit KILOGRAM_PER_HOUR = Unit.of("kg/h").over("3.6");
  private static final Unit KILOGRAM_PER_SECOND = Unit.of("kg/s").times("1E+3");
  private static final Kind KIND =
      Kind.of(
          "mass flow",
          Range.fromTo(0, 1_000_000),
          Unit.of("g/s"),
          KILOGRAM_PER_HOUR,
          KILOGRAM_PER_SECOND);

  private MassFlow(double gramsPerSecond) {
    super(gramsPerSecond);
  }

  /**
   * Creates a mass flow from grams a second.
   *
   * @param gramsPerSecond grams a second, from 0 to 1000000
   * @return the mass flow
   * @throws QuantityException if {@code gramsPerSecond} is not finite or out of range
   */
  public static MassFlow ofGramsPerSecond(double gramsPerSecond) {
    return new MassFlow(KIND.check(gramsPerSecond));
  }

  /**
   * Creates a mass flow from kilograms an hour.
   *
   * @param kilogramsPerHour kilograms an hour, from 0 to 3600000
   * @return the mass flow
   * @throws QuantityException if {@code kilogramsPerHour} is not finite or out of range
   */
  public static MassFlow ofKilogramsPerHour(double kilogramsPerHour) {
    return new MassFlow(KIND.check(kilogramsPerHour, KILOGRAM_PER_HOUR));
  }

  /**
   * Creates a mass flow from kilograms a second.
   *
   * @param kilogramsPerSecond kilograms a second, from 0 to 1000
   * @return the mass flow
   * @throws QuantityException if {@code kilogramsPerSecond} is not finite or out of range
   */
  public static MassFlow ofKilogramsPerSecond(double kilogramsPerSecond) {
    return new MassFlow(KIND.check(kilogramsPerSecond, KILOGRAM_PER_SECOND));
  }

  /**
   * Returns the mass flow of a volume flow: ρ V.
   *
   * @param volumeFlow the volume in a time
   * @param density the density of what flows
   * @return the product of the two
   * @throws QuantityException if the product is out of range
   */
  public static MassFlow from(VolumeFlow volumeFlow, Density density) {
    return new MassFlow(
        KIND.check(given(volumeFlow, "volumeFlow") * given(density, "density") / 3600));
  }

  /**
   * Reads a mass flow: grams a second, kilograms an hour or a second.
   *
   * @param text such as {@code 1.65 g/s}, {@code 5.94 kg/h} or {@code 0.00165 kg/s}
   * @return the mass flow
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static MassFlow parse(String text) {
    return new MassFlow(KIND.parse(text));
  }

  /**
   * Returns this mass flow in grams a second.
   *
   * @return grams a second
   */
  public double gramsPerSecond() {
    return canonical;
  }

  /**
   * Returns this mass flow in kilograms an hour.
   *
   * @return kilograms an hour
   */
  public double kilogramsPerHour() {
    return KILOGRAM_PER_HOUR.fromCanonical(canonical);
  }

  /**
   * Returns this mass flow in kilograms a second.
   *
   * @return kilograms a second
   */
  public double kilogramsPerSecond() {
    return KILOGRAM_PER_SECOND.fromCanonical(canonical);
  }

  /**
   * Returns the sum.
   *
   * @param other what to add, in any unit
   * @return this plus {@code other}
   * @throws QuantityException if the sum is out of range
   */
  public MassFlow plus(MassFlow other) {
    return new MassFlow(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  /**
   * Returns the air-fuel ratio of this flow of dry air with a flow of fuel.
   *
   * @param fuel the fuel, more than none
   * @return this over the fuel
   * @throws QuantityException if the quotient is out of range, as it is without air or without fuel
   */
  public AirFuelRatio airToFuel(MassFlow fuel) {
    return AirFuelRatio.of(canonical / given(fuel, "fuel"));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
