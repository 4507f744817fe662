package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * What a fault does to the mixture over the throttle range, as a hypothesis: ln λ rises by a normal
 * number times exp(−(t − at)²/(2 reach²)). For example a blocked pilot jet: lean at closed
 * throttle, and not from an eighth on.
 *
 * <p>Not for what a part does: that is the model's.
 *
 * @param at the throttle opening where it is strongest
 * @param reach how far it reaches, as a share of the throttle's travel; 0.01 to 10
 * @param mean mean of the rise of ln λ where it is strongest, −1 to 1; below zero for richer
 * @param deviation standard deviation of that, 0 to 1
 */
public record Disturbance(ThrottleOpening at, double reach, double mean, double deviation) {

  /**
   * Checks the numbers.
   *
   * @param at the throttle opening where it is strongest
   * @param reach how far it reaches, as a share of the throttle's travel; 0.01 to 10
   * @param mean mean of the rise of ln λ where it is strongest, −1 to 1
   * @param deviation standard deviation of that, 0 to 1
   * @throws IllegalArgumentException if a number is out of range
   */
  public Disturbance {
    Objects.requireNonNull(at, "at");
    reach = Checks.within("reach of a disturbance", reach, 0.01, 10);
    mean = Checks.within("mean of a disturbance in ln λ", mean, -1, 1);
    deviation = Checks.within("deviation of a disturbance in ln λ", deviation, 0, 1);
  }

  /** Its share at a place: 1 where it is strongest; 0 for a source, and before the fault. */
  double share(Place place) {
    double distance = (place.throttle() - at.share()) / reach;
    return place.disturbed() ? StrictMath.exp(-distance * distance / 2) : 0;
  }

  /** A kernel with this one's variance added. */
  Kernel<Place> with(Kernel<Place> other) {
    return (a, b) -> other.covariance(a, b) + deviation * deviation * share(a) * share(b);
  }
}
