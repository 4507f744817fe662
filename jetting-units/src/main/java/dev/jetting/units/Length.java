package dev.jetting.units;

/**
 * A length, a height or a stroke; never negative.
 *
 * <p>Kept in millimetres, from 0 to 100000.
 *
 * <p>Not for diameters ({@link Diameter}), slide cutaways ({@link Cutaway}), float heights ({@link
 * FloatLevel}) or heights above the sea ({@link Altitude}), which have types of their own.
 */
public final class Length extends Scalar<Length> {
  private static final Kind KIND = Kind.of("length", Range.fromTo(0, 100_000), Unit.of("mm"));

  private Length(double millimetres) {
    super(millimetres);
  }

  /**
   * Creates a length from millimetres.
   *
   * @param millimetres millimetres, from 0 to 100000
   * @return the length
   * @throws QuantityException if {@code millimetres} is not finite or out of range
   */
  public static Length ofMillimetres(double millimetres) {
    return new Length(KIND.check(millimetres));
  }

  /**
   * Reads a length: millimetres.
   *
   * @param text such as {@code 54.5 mm}
   * @return the length
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Length parse(String text) {
    return new Length(KIND.parse(text));
  }

  /**
   * Returns this length in millimetres.
   *
   * @return millimetres
   */
  public double millimetres() {
    return canonical;
  }

  /**
   * Returns the sum.
   *
   * @param other what to add, in any unit
   * @return this plus {@code other}
   * @throws QuantityException if the sum is out of range
   */
  public Length plus(Length other) {
    return new Length(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  /**
   * Returns the difference.
   *
   * @param other what to take away, in any unit
   * @return this minus {@code other}
   * @throws QuantityException if the difference is out of range, as it is below zero
   */
  public Length minus(Length other) {
    return new Length(KIND.check(Sum.of(canonical, -given(other, "other"))));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
