package dev.jetting.units;

/**
 * The height at which the floats are set, measured as the carburettor's trade measures it (commonly
 * from the bowl joint to the float). Greater is usually a lower fuel level, hence leaner.
 *
 * <p>Kept in millimetres, from 0 to 200.
 *
 * <p>Not the depth of the fuel itself: what a float height makes of that depends on the
 * carburettor.
 */
public final class FloatLevel extends Scalar<FloatLevel> {
  private static final Kind KIND = Kind.of("float level", Range.fromTo(0, 200), Unit.of("mm"));

  private FloatLevel(double millimetres) {
    super(millimetres);
  }

  /**
   * Creates a float level from millimetres.
   *
   * @param millimetres millimetres, from 0 to 200
   * @return the float level
   * @throws QuantityException if {@code millimetres} is not finite or out of range
   */
  public static FloatLevel ofMillimetres(double millimetres) {
    return new FloatLevel(KIND.check(millimetres));
  }

  /**
   * Reads a float level: millimetres.
   *
   * @param text such as {@code 19.5 mm}
   * @return the float level
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static FloatLevel parse(String text) {
    return new FloatLevel(KIND.parse(text));
  }

  /**
   * Returns this float level in millimetres.
   *
   * @return millimetres
   */
  public double millimetres() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
