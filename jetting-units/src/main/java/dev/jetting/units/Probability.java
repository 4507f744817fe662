package dev.jetting.units;

/**
 * How likely something is, such as a lean mixture at a throttle opening.
 *
 * <p>A number from 0 to 1.
 *
 * <p>Not a share of a quantity, such as {@link RelativeHumidity} or {@link ThrottleOpening}.
 */
public final class Probability extends Scalar<Probability> {
  private static final Unit PERCENT = Unit.of("%").times("0.01");
  private static final Kind KIND = Kind.of("probability", Range.fromTo(0, 1), Unit.of(""), PERCENT);

  private Probability(double value) {
    super(value);
  }

  /**
   * Returns the probability of this number.
   *
   * @param value 0 for never, 1 for certain; from 0 to 1
   * @return the probability
   * @throws QuantityException if {@code value} is not finite or out of range
   */
  public static Probability of(double value) {
    return new Probability(KIND.check(value));
  }

  /**
   * Returns the probability of this percentage.
   *
   * @param percent percent, from 0 to 100
   * @return the probability
   * @throws QuantityException if {@code percent} is not finite or out of range
   */
  public static Probability ofPercent(double percent) {
    return new Probability(KIND.check(percent, PERCENT));
  }

  /**
   * Reads a probability: a decimal or percent.
   *
   * @param text such as {@code 0.05} or {@code 5 %}
   * @return the probability
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Probability parse(String text) {
    return new Probability(KIND.parse(text));
  }

  /**
   * Returns this probability as a number.
   *
   * @return 0 for never to 1 for certain
   */
  public double value() {
    return canonical;
  }

  /**
   * Returns this probability in percent.
   *
   * @return percent
   */
  public double percent() {
    return PERCENT.fromCanonical(canonical);
  }

  /**
   * Returns the probability that it does not happen.
   *
   * @return one minus this
   */
  public Probability complement() {
    return new Probability(KIND.check(Sum.of(1, -canonical)));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
