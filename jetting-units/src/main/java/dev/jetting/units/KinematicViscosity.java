package dev.jetting.units;

/**
 * The dynamic viscosity of a fluid over its density.
 *
 * <p>Kept in square millimetres a second, which are centistokes, above 0 up to 1000000.
 *
 * <p>Not the dynamic viscosity: see {@link DynamicViscosity}.
 */
public final class KinematicViscosity extends Scalar<KinematicViscosity> {
  private static final Kind KIND =
      Kind.of(
          "kinematic viscosity", Range.aboveUpTo(0, 1_000_000), Unit.of("mm²/s", "mm2/s", "cSt"));

  private KinematicViscosity(double squareMillimetresPerSecond) {
    super(squareMillimetresPerSecond);
  }

  /**
   * Creates a kinematic viscosity from square millimetres a second, which are centistokes.
   *
   * @param squareMillimetresPerSecond square millimetres a second, above 0 up to 1000000
   * @return the kinematic viscosity
   * @throws QuantityException if {@code squareMillimetresPerSecond} is not finite or out of range
   */
  public static KinematicViscosity ofSquareMillimetresPerSecond(double squareMillimetresPerSecond) {
    return new KinematicViscosity(KIND.check(squareMillimetresPerSecond));
  }

  /**
   * Returns the kinematic viscosity of a fluid of known dynamic viscosity: ν = μ / ρ.
   *
   * @param dynamic the dynamic viscosity
   * @param density the density at the same temperature
   * @return the quotient of the two
   * @throws QuantityException if the quotient is out of range
   */
  public static KinematicViscosity from(DynamicViscosity dynamic, Density density) {
    return new KinematicViscosity(
        KIND.check(given(dynamic, "dynamic") / given(density, "density") * 1e6));
  }

  /**
   * Reads a kinematic viscosity: square millimetres a second or centistokes.
   *
   * @param text such as {@code 0.55 mm²/s}, {@code 0.55 mm2/s} or {@code 0.55 cSt}
   * @return the kinematic viscosity
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static KinematicViscosity parse(String text) {
    return new KinematicViscosity(KIND.parse(text));
  }

  /**
   * Returns this kinematic viscosity in square millimetres a second, which are centistokes.
   *
   * @return square millimetres a second
   */
  public double squareMillimetresPerSecond() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
