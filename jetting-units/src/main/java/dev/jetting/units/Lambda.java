package dev.jetting.units;

/**
 * Air over the air that the fuel needs (λ): below 1 rich, above 1 lean.
 *
 * <p>A number above 0 up to 1000000.
 *
 * <p>Not for an air-fuel ratio by mass, which means different mixtures in different fuels: that is
 * an {@link AirFuelRatio}, tied to λ by the stoichiometric ratio of the fuel.
 */
public final class Lambda extends Scalar<Lambda> {
  private static final Kind KIND = Kind.of("lambda", Range.aboveUpTo(0, 1_000_000), Unit.of(""));

  private Lambda(double value) {
    super(value);
  }

  /**
   * Returns the λ of this number.
   *
   * @param value air over the air needed, above 0 up to 1000000
   * @return the λ
   * @throws QuantityException if {@code value} is not finite or out of range
   */
  public static Lambda of(double value) {
    return new Lambda(KIND.check(value));
  }

  /**
   * Reads a λ.
   *
   * @param text such as {@code 0.88}
   * @return the λ
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Lambda parse(String text) {
    return new Lambda(KIND.parse(text));
  }

  /**
   * Returns this λ as a number.
   *
   * @return air over the air needed
   */
  public double value() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
