package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import org.hipparchus.special.Erf;

/**
 * A normal distribution.
 *
 * @param mean its mean; finite
 * @param deviation its standard deviation, zero or more
 */
public record Normal(double mean, double deviation) {

  /**
   * Checks the numbers.
   *
   * @param mean its mean; finite
   * @param deviation its standard deviation, zero or more
   * @throws IllegalArgumentException if one is not finite or the deviation is below zero
   */
  public Normal {
    Checks.that(Double.isFinite(mean), "mean of a normal distribution", mean, "any finite number");
    Checks.that(
        deviation >= 0 && Double.isFinite(deviation),
        "standard deviation of a normal distribution",
        deviation,
        "0 or more");
    mean += 0.0; // −0.0 becomes 0.0
  }

  /**
   * The probability of more than a number.
   *
   * @param number the number
   * @return 0 to 1; without spread 1 where the mean is above the number, 0 elsewhere
   */
  public double above(double number) {
    if (deviation == 0) {
      return mean > number ? 1 : 0;
    }
    return upperTail((number - mean) / deviation);
  }

  /**
   * With an independent normal number of mean zero added.
   *
   * @param variance its variance, zero or more
   * @return the sum
   * @throws IllegalArgumentException if the variance is below zero or not finite
   */
  public Normal plus(double variance) {
    Checks.that(
        variance >= 0 && Double.isFinite(variance), "variance of a number", variance, "0 or more");
    return new Normal(mean, Math.sqrt(deviation * deviation + variance));
  }

  /** P(standard normal &gt; t). */
  static double upperTail(double t) {
    return Erf.erfc(t / Math.sqrt(2)) / 2;
  }

  /** Density of the standard normal distribution. */
  static double density(double t) {
    return StrictMath.exp(-t * t / 2) / Math.sqrt(2 * Math.PI);
  }
}
