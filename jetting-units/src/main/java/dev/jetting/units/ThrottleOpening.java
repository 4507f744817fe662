package dev.jetting.units;

/**
 * How far the throttle is open, as a share of its full lift from the idle stop.
 *
 * <p>Kept as a share of full lift, from 0 to 1.
 *
 * <p>Not a share of the open area, nor of the grip's rotation.
 */
public final class ThrottleOpening extends Scalar<ThrottleOpening> {
  private static final Unit PERCENT = Unit.of("%").times("0.01");
  private static final Kind KIND =
      Kind.of("throttle opening", Range.fromTo(0, 1), Unit.of(""), PERCENT).readingFractions();

  private static final Unit EIGHTH = Unit.of("eighths").over("8");

  /** On the idle stop. */
  public static final ThrottleOpening CLOSED = new ThrottleOpening(0);

  /** Full lift. */
  public static final ThrottleOpening FULL = new ThrottleOpening(1);

  private ThrottleOpening(double share) {
    super(share);
  }

  /**
   * Returns the throttle opening of this share.
   *
   * @param share the share of full lift, from 0 to 1
   * @return the throttle opening
   * @throws QuantityException if {@code share} is not finite or out of range
   */
  public static ThrottleOpening ofShare(double share) {
    return new ThrottleOpening(KIND.check(share));
  }

  /**
   * Returns the throttle opening of this percentage.
   *
   * @param percent percent, from 0 to 100
   * @return the throttle opening
   * @throws QuantityException if {@code percent} is not finite or out of range
   */
  public static ThrottleOpening ofPercent(double percent) {
    return new ThrottleOpening(KIND.check(percent, PERCENT));
  }

  /**
   * Returns an opening in the eighths that grips are marked with.
   *
   * @param eighths eighths of full lift, from 0 to 8
   * @return the throttle opening
   * @throws QuantityException if {@code eighths} is out of range
   */
  public static ThrottleOpening ofEighths(int eighths) {
    return new ThrottleOpening(KIND.check(eighths, EIGHTH));
  }

  /**
   * Reads a throttle opening: a share, a fraction or percent.
   *
   * @param text such as {@code 0.375}, {@code 3/8} or {@code 37.5 %}
   * @return the throttle opening
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static ThrottleOpening parse(String text) {
    return new ThrottleOpening(KIND.parse(text));
  }

  /**
   * Returns this throttle opening as a share.
   *
   * @return the share of full lift
   */
  public double share() {
    return canonical;
  }

  /**
   * Returns this throttle opening in percent.
   *
   * @return percent
   */
  public double percent() {
    return PERCENT.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
