package dev.jetting.units;

/**
 * The volume that a piston sweeps in one stroke, or the sum of it over the cylinders.
 *
 * <p>Kept in cubic centimetres, above 0 up to 100000.
 *
 * <p>Not the volume of a combustion chamber, a crankcase or a tank.
 */
public final class Displacement extends Scalar<Displacement> {
  private static final Kind KIND =
      Kind.of("displacement", Range.aboveUpTo(0, 100_000), Unit.of("cm³", "cm3", "cc"));

  private Displacement(double cubicCentimetres) {
    super(cubicCentimetres);
  }

  /**
   * Creates a displacement from cubic centimetres.
   *
   * @param cubicCentimetres cubic centimetres, above 0 up to 100000
   * @return the displacement
   * @throws QuantityException if {@code cubicCentimetres} is not finite or out of range
   */
  public static Displacement ofCubicCentimetres(double cubicCentimetres) {
    return new Displacement(KIND.check(cubicCentimetres));
  }

  /**
   * Returns the displacement of one cylinder, π/4 bore² stroke.
   *
   * @param bore the diameter of the cylinder
   * @param stroke the stroke, more than none
   * @return the displacement
   * @throws QuantityException if the product is out of range
   */
  public static Displacement ofCylinder(Diameter bore, Length stroke) {
    double d = given(bore, "bore");
    return new Displacement(KIND.check(Math.PI / 4 * d * d * given(stroke, "stroke") / 1000));
  }

  /**
   * Reads a displacement: cubic centimetres.
   *
   * @param text such as {@code 123.6 cm³}, {@code 123.6 cm3} or {@code 123.6 cc}
   * @return the displacement
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Displacement parse(String text) {
    return new Displacement(KIND.parse(text));
  }

  /**
   * Returns this displacement in cubic centimetres.
   *
   * @return cubic centimetres
   */
  public double cubicCentimetres() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
