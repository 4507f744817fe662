package dev.jetting.units;

/**
 * A temperature, of air, fuel or an engine; a dew point is one too.
 *
 * <p>Kept in kelvin, above 0 up to 5000.
 *
 * <p>Not for a difference of two temperatures, which is a {@link TemperatureDifference}: 10 °C is
 * 50 °F, but 10 °C warmer is 18 °F warmer.
 */
public final class Temperature extends Scalar<Temperature> {
  private static final Unit CELSIUS = Unit.of("°C").plus("273.15");
  private static final Unit FAHRENHEIT = Unit.of("°F").plus("459.67").times("5").over("9");
  private static final Kind KIND =
      Kind.of("temperature", Range.aboveUpTo(0, 5000), Unit.of("K"), CELSIUS, FAHRENHEIT);

  private Temperature(double kelvin) {
    super(kelvin);
  }

  /**
   * Creates a temperature from kelvin.
   *
   * @param kelvin kelvin, above 0 up to 5000
   * @return the temperature
   * @throws QuantityException if {@code kelvin} is not finite or out of range
   */
  public static Temperature ofKelvin(double kelvin) {
    return new Temperature(KIND.check(kelvin));
  }

  /**
   * Creates a temperature from degrees Celsius.
   *
   * @param celsius degrees Celsius, above −273.15 up to 4726.85
   * @return the temperature
   * @throws QuantityException if {@code celsius} is not finite or out of range
   */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(KIND.check(celsius, CELSIUS));
  }

  /**
   * Creates a temperature from degrees Fahrenheit.
   *
   * @param fahrenheit degrees Fahrenheit, above −459.67 up to 8540.33
   * @return the temperature
   * @throws QuantityException if {@code fahrenheit} is not finite or out of range
   */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return new Temperature(KIND.check(fahrenheit, FAHRENHEIT));
  }

  /**
   * Reads a temperature: kelvin, degrees Celsius or Fahrenheit.
   *
   * @param text such as {@code 293.15 K}, {@code 20 °C} or {@code 68 °F}
   * @return the temperature
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Temperature parse(String text) {
    return new Temperature(KIND.parse(text));
  }

  /**
   * Returns this temperature in kelvin.
   *
   * @return kelvin
   */
  public double kelvin() {
    return canonical;
  }

  /**
   * Returns this temperature in degrees Celsius.
   *
   * @return degrees Celsius
   */
  public double celsius() {
    return CELSIUS.fromCanonical(canonical);
  }

  /**
   * Returns this temperature in degrees Fahrenheit.
   *
   * @return degrees Fahrenheit
   */
  public double fahrenheit() {
    return FAHRENHEIT.fromCanonical(canonical);
  }

  /**
   * Returns the temperature that is warmer by a difference.
   *
   * @param difference how much warmer; colder if negative
   * @return the sum
   * @throws QuantityException if the sum is out of range
   */
  public Temperature plus(TemperatureDifference difference) {
    return new Temperature(KIND.check(Sum.of(canonical, given(difference, "difference"))));
  }

  /**
   * Returns the temperature that is colder by a difference.
   *
   * @param difference how much colder; warmer if negative
   * @return this minus {@code difference}
   * @throws QuantityException if the result is out of range
   */
  public Temperature minus(TemperatureDifference difference) {
    return new Temperature(KIND.check(Sum.of(canonical, -given(difference, "difference"))));
  }

  /**
   * Returns how much warmer this is than the other temperature.
   *
   * @param other the temperature to compare with
   * @return this minus {@code other}; negative if this is colder
   */
  public TemperatureDifference minus(Temperature other) {
    return TemperatureDifference.ofKelvin(Sum.of(canonical, -given(other, "other")));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
