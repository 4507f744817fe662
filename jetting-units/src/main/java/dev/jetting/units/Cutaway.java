package dev.jetting.units;

/**
 * How far the upstream edge of a throttle slide is cut away: 3.5 mm is a cutaway 35 in the trade's
 * tenths. A higher cutaway is leaner just off idle.
 *
 * <p>Kept in millimetres, from 0 to 50.
 *
 * <p>Not for how far the slide is open, which is a {@link ThrottleOpening}.
 */
public final class Cutaway extends Scalar<Cutaway> {
  private static final Unit TENTH = Unit.of("tenths", "1/10 mm").times("0.1");
  private static final Kind KIND = Kind.of("cutaway", Range.fromTo(0, 50), Unit.of("mm"), TENTH);

  private Cutaway(double millimetres) {
    super(millimetres);
  }

  /**
   * Creates a cutaway from millimetres.
   *
   * @param millimetres millimetres, from 0 to 50
   * @return the cutaway
   * @throws QuantityException if {@code millimetres} is not finite or out of range
   */
  public static Cutaway ofMillimetres(double millimetres) {
    return new Cutaway(KIND.check(millimetres));
  }

  /**
   * Creates a cutaway from tenths of a millimetre.
   *
   * @param tenths tenths of a millimetre, from 0 to 500
   * @return the cutaway
   * @throws QuantityException if {@code tenths} is not finite or out of range
   */
  public static Cutaway ofTenths(double tenths) {
    return new Cutaway(KIND.check(tenths, TENTH));
  }

  /**
   * Reads a cutaway: millimetres or tenths.
   *
   * @param text such as {@code 3.5 mm}, {@code 35 tenths} or {@code 35 1/10 mm}; a bare number is
   *     refused
   * @return the cutaway
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Cutaway parse(String text) {
    return new Cutaway(KIND.parse(text));
  }

  /**
   * Returns this cutaway in millimetres.
   *
   * @return millimetres
   */
  public double millimetres() {
    return canonical;
  }

  /**
   * Returns this cutaway in tenths of a millimetre.
   *
   * @return tenths of a millimetre
   */
  public double tenths() {
    return TENTH.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
