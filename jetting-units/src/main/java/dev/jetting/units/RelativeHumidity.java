package dev.jetting.units;

/**
 * The water vapour in the air as a share of what saturated air of the same temperature holds.
 *
 * <p>Kept as a share of saturation, from 0 to 1.
 *
 * <p>Not a dew point, which is a {@link Temperature}, nor a mass of water in a mass of air; leading
 * from one to the other takes the temperature and pressure of the air.
 */
public final class RelativeHumidity extends Scalar<RelativeHumidity> {
  private static final Unit PERCENT = Unit.of("%").times("0.01");
  private static final Kind KIND =
      Kind.of("relative humidity", Range.fromTo(0, 1), Unit.of(""), PERCENT);

  private RelativeHumidity(double share) {
    super(share);
  }

  /**
   * Returns the relative humidity of this share.
   *
   * @param share share of saturation, from 0 to 1
   * @return the relative humidity
   * @throws QuantityException if {@code share} is not finite or out of range
   */
  public static RelativeHumidity ofShare(double share) {
    return new RelativeHumidity(KIND.check(share));
  }

  /**
   * Returns the relative humidity of this percentage.
   *
   * @param percent percent of saturation, from 0 to 100
   * @return the relative humidity
   * @throws QuantityException if {@code percent} is not finite or out of range
   */
  public static RelativeHumidity ofPercent(double percent) {
    return new RelativeHumidity(KIND.check(percent, PERCENT));
  }

  /**
   * Reads a relative humidity: a share or percent.
   *
   * @param text such as {@code 0.45} or {@code 45 %}
   * @return the relative humidity
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static RelativeHumidity parse(String text) {
    return new RelativeHumidity(KIND.parse(text));
  }

  /**
   * Returns this relative humidity as a share.
   *
   * @return share of saturation
   */
  public double share() {
    return canonical;
  }

  /**
   * Returns this relative humidity in percent of saturation.
   *
   * @return percent of saturation
   */
  public double percent() {
    return PERCENT.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
