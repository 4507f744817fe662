package dev.jetting.units;

/**
 * How much a fluid resists shear.
 *
 * <p>Kept in pascal seconds, above 0 up to 1000.
 *
 * <p>Not the kinematic viscosity, which is this over the density: see {@link KinematicViscosity}.
 */
public final class DynamicViscosity extends Scalar<DynamicViscosity> {
  private static final Unit MILLIPASCAL_SECOND = Unit.of("mPa·s", "mPa s", "cP").times("0.001");
  private static final Kind KIND =
      Kind.of(
          "dynamic viscosity",
          Range.aboveUpTo(0, 1000),
          Unit.of("Pa·s", "Pa s"),
          MILLIPASCAL_SECOND);

  private DynamicViscosity(double pascalSeconds) {
    super(pascalSeconds);
  }

  /**
   * Creates a dynamic viscosity from pascal seconds.
   *
   * @param pascalSeconds pascal seconds, above 0 up to 1000
   * @return the dynamic viscosity
   * @throws QuantityException if {@code pascalSeconds} is not finite or out of range
   */
  public static DynamicViscosity ofPascalSeconds(double pascalSeconds) {
    return new DynamicViscosity(KIND.check(pascalSeconds));
  }

  /**
   * Creates a dynamic viscosity from millipascal seconds, which are centipoises.
   *
   * @param millipascalSeconds millipascal seconds, above 0 up to 1000000
   * @return the dynamic viscosity
   * @throws QuantityException if {@code millipascalSeconds} is not finite or out of range
   */
  public static DynamicViscosity ofMillipascalSeconds(double millipascalSeconds) {
    return new DynamicViscosity(KIND.check(millipascalSeconds, MILLIPASCAL_SECOND));
  }

  /**
   * Returns the dynamic viscosity of a fluid of known kinematic viscosity: μ = ν ρ.
   *
   * @param kinematic the kinematic viscosity
   * @param density the density at the same temperature
   * @return the product of the two
   * @throws QuantityException if the product is out of range
   */
  public static DynamicViscosity from(KinematicViscosity kinematic, Density density) {
    return new DynamicViscosity(
        KIND.check(given(kinematic, "kinematic") * given(density, "density") / 1e6));
  }

  /**
   * Reads a dynamic viscosity: pascal seconds, millipascal seconds or centipoises.
   *
   * @param text such as {@code 0.0005 Pa·s}, {@code 0.5 mPa·s} or {@code 0.5 cP}
   * @return the dynamic viscosity
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static DynamicViscosity parse(String text) {
    return new DynamicViscosity(KIND.parse(text));
  }

  /**
   * Returns this dynamic viscosity in pascal seconds.
   *
   * @return pascal seconds
   */
  public double pascalSeconds() {
    return canonical;
  }

  /**
   * Returns this dynamic viscosity in millipascal seconds, which are centipoises.
   *
   * @return millipascal seconds
   */
  public double millipascalSeconds() {
    return MILLIPASCAL_SECOND.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
