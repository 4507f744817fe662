package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import java.util.Objects;

/**
 * A value of a Gaussian process, seen through noise.
 *
 * @param input where
 * @param value what was seen; finite
 * @param noiseVariance variance of the noise, more than zero
 * @param <X> what the process is a function of
 */
record PointObservation<X>(X input, double value, double noiseVariance) {

  /**
   * Checks the numbers.
   *
   * @param input where
   * @param value what was seen; finite
   * @param noiseVariance variance of the noise, more than zero
   * @throws IllegalArgumentException if one is out of range
   */
  public PointObservation {
    Objects.requireNonNull(input, "input");
    Checks.that(Double.isFinite(value), "observed value", value, "any finite number");
    Checks.that(
        noiseVariance > 0 && Double.isFinite(noiseVariance),
        "variance of the noise",
        noiseVariance,
        "more than 0");
  }
}
