package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import java.util.Objects;

/**
 * An interval in which a value of a Gaussian process was seen, through noise: a colour between two
 * others, or a symptom that means "leaner than".
 *
 * @param input where
 * @param low lower end; minus infinity for none
 * @param high upper end, above the lower; infinity for none
 * @param noiseDeviation standard deviation of the noise, more than zero
 * @param <X> what the process is a function of
 */
record IntervalObservation<X>(X input, double low, double high, double noiseDeviation) {

  /**
   * Checks the numbers.
   *
   * @param input where
   * @param low lower end; minus infinity for none
   * @param high upper end, above the lower; infinity for none
   * @param noiseDeviation standard deviation of the noise, more than zero
   * @throws IllegalArgumentException if the ends are not in order or the noise is zero
   */
  public IntervalObservation {
    Objects.requireNonNull(input, "input");
    Checks.that(low < high, "lower end of an observed interval", low, "less than its upper end");
    Checks.that(
        noiseDeviation > 0 && Double.isFinite(noiseDeviation),
        "standard deviation of the noise",
        noiseDeviation,
        "more than 0");
  }
}
