package dev.jetting.units;

/**
 * A volume of fuel or air in a time, in an engine.
 *
 * <p>Kept in litres an hour, from 0 to 1000000000.
 *
 * <p>Not the number on a jet, which is a {@link JetFlow}; not a consumption over a distance, which
 * is a {@link FuelConsumption}.
 */
public final class VolumeFlow extends Scalar<VolumeFlow> {
  private static final Unit CUBIC_CENTIMETRE_PER_MINUTE =
      Unit.of("cm³/min", "cm3/min").times("0.06");
  private static final Unit CUBIC_METRE_PER_SECOND = Unit.of("m³/s", "m3/s").times("3.6E+6");
  private static final Kind KIND =
      Kind.of(
          "volume flow",
          Range.fromTo(0, 1_000_000_000),
          Unit.of("L/h", "l/h"),
          CUBIC_CENTIMETRE_PER_MINUTE,
          CUBIC_METRE_PER_SECOND);

  private VolumeFlow(double litresPerHour) {
    super(litresPerHour);
  }

  /**
   * Creates a volume flow from litres an hour.
   *
   * @param litresPerHour litres an hour, from 0 to 1000000000
   * @return the volume flow
   * @throws QuantityException if {@code litresPerHour} is not finite or out of range
   */
  public static VolumeFlow ofLitresPerHour(double litresPerHour) {
    return new VolumeFlow(KIND.check(litresPerHour));
  }

  /**
   * Creates a volume flow from cubic centimetres a minute.
   *
   * @param cubicCentimetresPerMinute cubic centimetres a minute, from 0 to about 1.67e10
   * @return the volume flow
   * @throws QuantityException if {@code cubicCentimetresPerMinute} is not finite or out of range
   */
  public static VolumeFlow ofCubicCentimetresPerMinute(double cubicCentimetresPerMinute) {
    return new VolumeFlow(KIND.check(cubicCentimetresPerMinute, CUBIC_CENTIMETRE_PER_MINUTE));
  }

  /**
   * Creates a volume flow from cubic metres a second.
   *
   * @param cubicMetresPerSecond cubic metres a second, from 0 to about 277.8
   * @return the volume flow
   * @throws QuantityException if {@code cubicMetresPerSecond} is not finite or out of range
   */
  public static VolumeFlow ofCubicMetresPerSecond(double cubicMetresPerSecond) {
    return new VolumeFlow(KIND.check(cubicMetresPerSecond, CUBIC_METRE_PER_SECOND));
  }

  /**
   * Returns the volume flow of a mass flow: m / ρ.
   *
   * @param massFlow the mass in a time
   * @param density the density of what flows
   * @return the quotient of the two
   * @throws QuantityException if the quotient is out of range
   */
  public static VolumeFlow from(MassFlow massFlow, Density density) {
    return new VolumeFlow(
        KIND.check(given(massFlow, "massFlow") / given(density, "density") * 3600));
  }

  /**
   * Reads a volume flow: litres an hour, cubic centimetres a minute or cubic metres a second.
   *
   * @param text such as {@code 8.2 L/h}, {@code 136 cm³/min} or {@code 0.02 m³/s}
   * @return the volume flow
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static VolumeFlow parse(String text) {
    return new VolumeFlow(KIND.parse(text));
  }

  /**
   * Returns this volume flow in litres an hour.
   *
   * @return litres an hour
   */
  public double litresPerHour() {
    return canonical;
  }

  /**
   * Returns this volume flow in cubic centimetres a minute.
   *
   * @return cubic centimetres a minute
   */
  public double cubicCentimetresPerMinute() {
    return CUBIC_CENTIMETRE_PER_MINUTE.fromCanonical(canonical);
  }

  /**
   * Returns this volume flow in cubic metres a second.
   *
   * @return cubic metres a second
   */
  public double cubicMetresPerSecond() {
    return CUBIC_METRE_PER_SECOND.fromCanonical(canonical);
  }

  /**
   * Returns the sum.
   *
   * @param other what to add, in any unit
   * @return this plus {@code other}
   * @throws QuantityException if the sum is out of range
   */
  public VolumeFlow plus(VolumeFlow other) {
    return new VolumeFlow(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
