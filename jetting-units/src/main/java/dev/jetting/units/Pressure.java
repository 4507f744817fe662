package dev.jetting.units;

/**
 * An absolute pressure, or the size of a pressure drop.
 *
 * <p>Kept in pascals, from 0 to 100000000.
 *
 * <p>Not a gauge reading: nothing is added for the atmosphere. Not negative: the sign of a
 * difference is the caller's. Sources of the units: the conventional millimetre of mercury is
 * 13.5951 × 9.80665 Pa = 133.322387415 Pa and the inch is 25.4 of them (mercury of 13595.1 kg/m³,
 * standard gravity; ISO 31-3:1992 and NIST SP 811, from memory).
 */
public final class Pressure extends Scalar<Pressure> {
  private static final Unit HECTOPASCAL = Unit.of("hPa").times("1E+2");
  private static final Unit MILLIBAR = Unit.of("mbar").times("1E+2");
  private static final Unit INCH_OF_MERCURY = Unit.of("inHg").times("3386.388640341");
  private static final Unit MILLIMETRE_OF_MERCURY = Unit.of("mmHg").times("133.322387415");
  private static final Kind KIND =
      Kind.of(
          "pressure",
          Range.fromTo(0, 100_000_000),
          Unit.of("Pa"),
          HECTOPASCAL,
          MILLIBAR,
          INCH_OF_MERCURY,
          MILLIMETRE_OF_MERCURY);

  private Pressure(double pascals) {
    super(pascals);
  }

  /**
   * Creates a pressure from pascals.
   *
   * @param pascals pascals, from 0 to 100000000
   * @return the pressure
   * @throws QuantityException if {@code pascals} is not finite or out of range
   */
  public static Pressure ofPascals(double pascals) {
    return new Pressure(KIND.check(pascals));
  }

  /**
   * Creates a pressure from hectopascals.
   *
   * @param hectopascals hectopascals, from 0 to 1000000
   * @return the pressure
   * @throws QuantityException if {@code hectopascals} is not finite or out of range
   */
  public static Pressure ofHectopascals(double hectopascals) {
    return new Pressure(KIND.check(hectopascals, HECTOPASCAL));
  }

  /**
   * Creates a pressure from millibars.
   *
   * @param millibars millibars, from 0 to 1000000
   * @return the pressure
   * @throws QuantityException if {@code millibars} is not finite or out of range
   */
  public static Pressure ofMillibars(double millibars) {
    return new Pressure(KIND.check(millibars, MILLIBAR));
  }

  /**
   * Creates a pressure from conventional inches of mercury.
   *
   * @param inchesOfMercury conventional inches of mercury, from 0 to about 29530
   * @return the pressure
   * @throws QuantityException if {@code inchesOfMercury} is not finite or out of range
   */
  public static Pressure ofInchesOfMercury(double inchesOfMercury) {
    return new Pressure(KIND.check(inchesOfMercury, INCH_OF_MERCURY));
  }

  /**
   * Creates a pressure from conventional millimetres of mercury.
   *
   * @param millimetresOfMercury conventional millimetres of mercury, from 0 to about 750062
   * @return the pressure
   * @throws QuantityException if {@code millimetresOfMercury} is not finite or out of range
   */
  public static Pressure ofMillimetresOfMercury(double millimetresOfMercury) {
    return new Pressure(KIND.check(millimetresOfMercury, MILLIMETRE_OF_MERCURY));
  }

  /**
   * Reads a pressure: any of its units.
   *
   * @param text such as {@code 101325 Pa}, {@code 1013.25 hPa}, {@code 1013.25 mbar}, {@code 29.92
   *     inHg} or {@code 760 mmHg}
   * @return the pressure
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Pressure parse(String text) {
    return new Pressure(KIND.parse(text));
  }

  /**
   * Returns this pressure in pascals.
   *
   * @return pascals
   */
  public double pascals() {
    return canonical;
  }

  /**
   * Returns this pressure in hectopascals.
   *
   * @return hectopascals
   */
  public double hectopascals() {
    return HECTOPASCAL.fromCanonical(canonical);
  }

  /**
   * Returns this pressure in millibars.
   *
   * @return millibars
   */
  public double millibars() {
    return MILLIBAR.fromCanonical(canonical);
  }

  /**
   * Returns this pressure in conventional inches of mercury.
   *
   * @return conventional inches of mercury
   */
  public double inchesOfMercury() {
    return INCH_OF_MERCURY.fromCanonical(canonical);
  }

  /**
   * Returns this pressure in conventional millimetres of mercury.
   *
   * @return conventional millimetres of mercury
   */
  public double millimetresOfMercury() {
    return MILLIMETRE_OF_MERCURY.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
