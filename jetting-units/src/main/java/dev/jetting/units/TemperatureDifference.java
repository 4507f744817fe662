package dev.jetting.units;

/**
 * How much warmer one temperature is than another; negative if it is colder.
 *
 * <p>Kept in kelvin, which are degrees Celsius, from −5000 to 5000.
 *
 * <p>Not a {@link Temperature}: it has no zero point, so 10 °C of difference is 18 °F of
 * difference.
 */
public final class TemperatureDifference extends Scalar<TemperatureDifference> {
  private static final Unit FAHRENHEIT_DEGREE = Unit.of("°F").times("5").over("9");
  private static final Kind KIND =
      Kind.of(
          "temperature difference",
          Range.fromTo(-5000, 5000),
          Unit.of("K", "°C"),
          FAHRENHEIT_DEGREE);

  private TemperatureDifference(double kelvin) {
    super(kelvin);
  }

  /**
   * Creates a temperature difference from kelvin, which are degrees Celsius.
   *
   * @param kelvin kelvin, from -5000 to 5000
   * @return the temperature difference
   * @throws QuantityException if {@code kelvin} is not finite or out of range
   */
  public static TemperatureDifference ofKelvin(double kelvin) {
    return new TemperatureDifference(KIND.check(kelvin));
  }

  /**
   * Creates a temperature difference from degrees Fahrenheit.
   *
   * @param fahrenheitDegrees degrees Fahrenheit, from −9000 to 9000
   * @return the temperature difference
   * @throws QuantityException if {@code fahrenheitDegrees} is not finite or out of range
   */
  public static TemperatureDifference ofFahrenheitDegrees(double fahrenheitDegrees) {
    return new TemperatureDifference(KIND.check(fahrenheitDegrees, FAHRENHEIT_DEGREE));
  }

  /**
   * Reads a temperature difference: kelvin, degrees Celsius or Fahrenheit, all of them differences.
   *
   * @param text such as {@code 10 K}, {@code -10 °C} or {@code 18 °F}
   * @return the temperature difference
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static TemperatureDifference parse(String text) {
    return new TemperatureDifference(KIND.parse(text));
  }

  /**
   * Returns this temperature difference in kelvin, which are degrees Celsius.
   *
   * @return kelvin
   */
  public double kelvin() {
    return canonical;
  }

  /**
   * Returns this temperature difference in degrees Fahrenheit.
   *
   * @return degrees Fahrenheit
   */
  public double fahrenheitDegrees() {
    return FAHRENHEIT_DEGREE.fromCanonical(canonical);
  }

  /**
   * Returns the sum.
   *
   * @param other what to add, in any unit
   * @return this plus {@code other}
   * @throws QuantityException if the sum is out of range
   */
  public TemperatureDifference plus(TemperatureDifference other) {
    return new TemperatureDifference(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  /**
   * Returns the difference the other way round.
   *
   * @return this with the opposite sign
   */
  public TemperatureDifference negated() {
    return new TemperatureDifference(KIND.check(-canonical));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
