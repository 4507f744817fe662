package dev.jetting.units;

/**
 * A diameter: of a needle, a needle jet, a venturi or a cylinder, to the thousandth of a millimetre
 * and beyond.
 *
 * <p>Kept in millimetres, above 0 up to 1000.
 *
 * <p>Not for jets, which are numbered: see {@link JetBore} and {@link JetFlow}.
 */
public final class Diameter extends Scalar<Diameter> {
  private static final Kind KIND = Kind.of("diameter", Range.aboveUpTo(0, 1000), Unit.of("mm"));

  private Diameter(double millimetres) {
    super(millimetres);
  }

  /**
   * Creates a diameter from millimetres.
   *
   * @param millimetres millimetres, above 0 up to 1000
   * @return the diameter
   * @throws QuantityException if {@code millimetres} is not finite or out of range
   */
  public static Diameter ofMillimetres(double millimetres) {
    return new Diameter(KIND.check(millimetres));
  }

  /**
   * Reads a diameter: millimetres.
   *
   * @param text such as {@code 2.485 mm}
   * @return the diameter
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Diameter parse(String text) {
    return new Diameter(KIND.parse(text));
  }

  /**
   * Returns this diameter in millimetres.
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
