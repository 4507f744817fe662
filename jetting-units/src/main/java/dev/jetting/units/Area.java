package dev.jetting.units;

/**
 * An area, such as the open cross-section of a jet or a port.
 *
 * <p>Kept in square millimetres, from 0 to 1000000.
 *
 * <p>Not an effective area: a discharge coefficient is not part of it.
 */
public final class Area extends Scalar<Area> {
  private static final Kind KIND =
      Kind.of("area", Range.fromTo(0, 1_000_000), Unit.of("mm²", "mm2"));

  private Area(double squareMillimetres) {
    super(squareMillimetres);
  }

  /**
   * Creates an area from square millimetres.
   *
   * @param squareMillimetres square millimetres, from 0 to 1000000
   * @return the area
   * @throws QuantityException if {@code squareMillimetres} is not finite or out of range
   */
  public static Area ofSquareMillimetres(double squareMillimetres) {
    return new Area(KIND.check(squareMillimetres));
  }

  /**
   * Returns the area of a circle, π/4 d².
   *
   * @param diameter the diameter
   * @return the area
   */
  public static Area ofCircle(Diameter diameter) {
    double d = given(diameter, "diameter");
    return new Area(KIND.check(Math.PI / 4 * d * d));
  }

  /**
   * Returns the area of a ring, such as the gap between a needle and its jet: π/4 (outer² −
   * inner²).
   *
   * @param outer the outer diameter
   * @param inner the inner diameter, at most the outer
   * @return the area
   * @throws QuantityException if {@code inner} is larger than {@code outer}
   */
  public static Area ofRing(Diameter outer, Diameter inner) {
    double o = given(outer, "outer");
    double i = given(inner, "inner");
    return new Area(KIND.check(Math.PI / 4 * (o - i) * (o + i)));
  }

  /**
   * Reads an area: square millimetres.
   *
   * @param text such as {@code 1.25 mm²} or {@code 1.25 mm2}
   * @return the area
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Area parse(String text) {
    return new Area(KIND.parse(text));
  }

  /**
   * Returns this area in square millimetres.
   *
   * @return square millimetres
   */
  public double squareMillimetres() {
    return canonical;
  }

  /**
   * Returns the sum.
   *
   * @param other what to add, in any unit
   * @return this plus {@code other}
   * @throws QuantityException if the sum is out of range
   */
  public Area plus(Area other) {
    return new Area(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  /**
   * Returns the difference.
   *
   * @param other what to take away, in any unit
   * @return this minus {@code other}
   * @throws QuantityException if the difference is out of range, as it is below zero
   */
  public Area minus(Area other) {
    return new Area(KIND.check(Sum.of(canonical, -given(other, "other"))));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
