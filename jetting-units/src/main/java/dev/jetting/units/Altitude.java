package dev.jetting.units;

/**
 * A geometric height above mean sea level; negative below it.
 *
 * <p>Kept in metres, from −5000 to 80000.
 *
 * <p>Not a pressure altitude, nor the geopotential altitude that tables of the standard atmosphere
 * are given on. Not for lengths, which are a {@link Length}. The foot is the international one,
 * 0.3048 m exactly.
 */
public final class Altitude extends Scalar<Altitude> {
  private static final Unit FOOT = Unit.of("ft").times("0.3048");
  private static final Kind KIND =
      Kind.of("altitude", Range.fromTo(-5000, 80_000), Unit.of("m"), FOOT);

  private Altitude(double metres) {
    super(metres);
  }

  /**
   * Creates an altitude from metres.
   *
   * @param metres metres, from -5000 to 80000
   * @return the altitude
   * @throws QuantityException if {@code metres} is not finite or out of range
   */
  public static Altitude ofMetres(double metres) {
    return new Altitude(KIND.check(metres));
  }

  /**
   * Creates an altitude from feet.
   *
   * @param feet feet, from about −16404 to about 262467
   * @return the altitude
   * @throws QuantityException if {@code feet} is not finite or out of range
   */
  public static Altitude ofFeet(double feet) {
    return new Altitude(KIND.check(feet, FOOT));
  }

  /**
   * Reads an altitude: metres or feet.
   *
   * @param text such as {@code 850 m} or {@code 2800 ft}
   * @return the altitude
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Altitude parse(String text) {
    return new Altitude(KIND.parse(text));
  }

  /**
   * Returns this altitude in metres.
   *
   * @return metres
   */
  public double metres() {
    return canonical;
  }

  /**
   * Returns this altitude in feet.
   *
   * @return feet
   */
  public double feet() {
    return FOOT.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
