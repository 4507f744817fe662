package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

  /** {@return a builder of a disturbance, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this disturbance set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.at = at;
    builder.reach = reach;
    builder.mean = mean;
    builder.deviation = deviation;
    return builder;
  }

  /**
   * Returns this disturbance with another value of one component; all else stays.
   *
   * @param at the throttle opening where it is strongest
   * @return the changed disturbance
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Disturbance withAt(ThrottleOpening at) {
    Builder builder = toBuilder();
    builder.at = at;
    return builder.build();
  }

  /**
   * Returns this disturbance with another value of one component; all else stays.
   *
   * @param reach how far it reaches, as a share of the throttle's travel; 0.01 to 10
   * @return the changed disturbance
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Disturbance withReach(double reach) {
    Builder builder = toBuilder();
    builder.reach = reach;
    return builder.build();
  }

  /**
   * Returns this disturbance with another value of one component; all else stays.
   *
   * @param mean mean of the rise of ln λ where it is strongest, −1 to 1; below zero for richer
   * @return the changed disturbance
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Disturbance withMean(double mean) {
    Builder builder = toBuilder();
    builder.mean = mean;
    return builder.build();
  }

  /**
   * Returns this disturbance with another value of one component; all else stays.
   *
   * @param deviation standard deviation of that, 0 to 1
   * @return the changed disturbance
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Disturbance withDeviation(double deviation) {
    Builder builder = toBuilder();
    builder.deviation = deviation;
    return builder.build();
  }

  /** Names each component of a disturbance, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable ThrottleOpening at;
    private @Nullable Double reach;
    private @Nullable Double mean;
    private @Nullable Double deviation;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the throttle opening where it is strongest
     * @return this builder
     */
    public Builder at(ThrottleOpening value) {
      at = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how far it reaches, as a share of the throttle's travel; 0.01 to 10
     * @return this builder
     */
    public Builder reach(double value) {
      reach = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value mean of the rise of ln λ where it is strongest, −1 to 1; below zero for richer
     * @return this builder
     */
    public Builder mean(double value) {
      mean = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value standard deviation of that, 0 to 1
     * @return this builder
     */
    public Builder deviation(double value) {
      deviation = value;
      return this;
    }

    /**
     * Builds the disturbance.
     *
     * @return the disturbance
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Disturbance build() {
      return new Disturbance(
          Checks.present("disturbance", "at", at),
          Checks.present("disturbance", "reach", reach),
          Checks.present("disturbance", "mean", mean),
          Checks.present("disturbance", "deviation", deviation));
    }
  }
}
