package dev.jetting.units;

/**
 * Air to fuel in a mixture, by mass, written 14.7:1.
 *
 * <p>A number above 0 up to 100000000.
 *
 * <p>Not comparable between fuels: what is lean for petrol is rich for ethanol. {@link Lambda} is.
 */
public final class AirFuelRatio extends Scalar<AirFuelRatio> {
  private static final Kind KIND =
      Kind.of("air-fuel ratio", Range.aboveUpTo(0, 100_000_000), Unit.of(":1", ""));

  private AirFuelRatio(double value) {
    super(value);
  }

  /**
   * Returns the air-fuel ratio of this number.
   *
   * @param value mass units of air to one of fuel, above 0 up to 100000000
   * @return the air-fuel ratio
   * @throws QuantityException if {@code value} is not finite or out of range
   */
  public static AirFuelRatio of(double value) {
    return new AirFuelRatio(KIND.check(value));
  }

  /**
   * Returns the air-fuel ratio of a λ in a fuel.
   *
   * @param lambda λ
   * @param stoichiometric air to fuel where neither is left over, for the fuel
   * @return the product of the two
   * @throws QuantityException if the product is out of range
   */
  public static AirFuelRatio from(Lambda lambda, AirFuelRatio stoichiometric) {
    return new AirFuelRatio(
        KIND.check(given(lambda, "lambda") * given(stoichiometric, "stoichiometric")));
  }

  /**
   * Returns the λ of this mixture in a fuel.
   *
   * @param stoichiometric air to fuel where neither is left over, for the fuel
   * @return this ratio over the stoichiometric one
   * @throws QuantityException if the quotient is out of range
   */
  public Lambda lambda(AirFuelRatio stoichiometric) {
    return Lambda.of(canonical / given(stoichiometric, "stoichiometric"));
  }

  /**
   * Reads an air-fuel ratio: a decimal with or without {@code :1}.
   *
   * @param text such as {@code 14.7:1} or {@code 14.7}
   * @return the air-fuel ratio
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static AirFuelRatio parse(String text) {
    return new AirFuelRatio(KIND.parse(text));
  }

  /**
   * Returns this air-fuel ratio as a number.
   *
   * @return mass units of air to one of fuel
   */
  public double value() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
