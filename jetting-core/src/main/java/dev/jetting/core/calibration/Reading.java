package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something read on an engine: between which mixtures it ran, at a throttle opening and speed, with
 * whatever jets happened to be in and in the weather of that hour.
 *
 * <p>Plain of form: a wideband sensor's λ has both ends alike and its own deviation; a plug colour
 * is a band; "leaner than" has its upper end far out. What a colour or a symptom means is for
 * others to say.
 *
 * @param setup engine, setting, air and fuel when it was read
 * @param throttle throttle opening
 * @param speed engine speed, more than zero
 * @param from the richest mixture that it may mean
 * @param to the leanest mixture that it may mean, not richer than {@code from}
 * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
 */
public record Reading(
    Setup setup,
    ThrottleOpening throttle,
    EngineSpeed speed,
    Lambda from,
    Lambda to,
    double deviation) {

  /**
   * Checks the numbers.
   *
   * @param setup engine, setting, air and fuel when it was read
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param from the richest mixture that it may mean
   * @param to the leanest mixture that it may mean, not richer than {@code from}
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @throws IllegalArgumentException if one is out of range
   */
  public Reading {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(throttle, "throttle");
    Checks.that(
        speed.rpm() > 0,
        () -> Sentence.of("error.name.speed-of-reading"),
        speed,
        () -> Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "rpm")));
    Checks.that(
        from.compareTo(to) <= 0,
        () -> Sentence.of("error.name.rich-end"),
        from,
        () -> Sentence.of("error.lean-end").with("most", to));
    deviation =
        Checks.within(() -> Sentence.of("error.name.reading-deviation"), deviation, 0.001, 1);
  }

  /**
   * A measured λ.
   *
   * @param setup engine, setting, air and fuel when it was read
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param lambda what was measured
   * @param deviation standard deviation in ln λ, 0.001 to 1; a wideband sensor in a two-stroke's
   *     exhaust is taken to be good for 0.02 (assumed)
   * @return the reading
   * @throws IllegalArgumentException if one is out of range
   */
  public static Reading measured(
      Setup setup, ThrottleOpening throttle, EngineSpeed speed, Lambda lambda, double deviation) {
    return new Reading(setup, throttle, speed, lambda, lambda, deviation);
  }

  boolean isPoint() {
    return from.equals(to);
  }

  /** {@return a builder of a reading, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this reading set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.setup = setup;
    builder.throttle = throttle;
    builder.speed = speed;
    builder.from = from;
    builder.to = to;
    builder.deviation = deviation;
    return builder;
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param setup engine, setting, air and fuel when it was read
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withSetup(Setup setup) {
    Builder builder = toBuilder();
    builder.setup = setup;
    return builder.build();
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param throttle throttle opening
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withThrottle(ThrottleOpening throttle) {
    Builder builder = toBuilder();
    builder.throttle = throttle;
    return builder.build();
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param speed engine speed, more than zero
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withSpeed(EngineSpeed speed) {
    Builder builder = toBuilder();
    builder.speed = speed;
    return builder.build();
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param from the richest mixture that it may mean
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withFrom(Lambda from) {
    Builder builder = toBuilder();
    builder.from = from;
    return builder.build();
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param to the leanest mixture that it may mean, not richer than {@code from}
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withTo(Lambda to) {
    Builder builder = toBuilder();
    builder.to = to;
    return builder.build();
  }

  /**
   * Returns this reading with another value of one component; all else stays.
   *
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @return the changed reading
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Reading withDeviation(double deviation) {
    Builder builder = toBuilder();
    builder.deviation = deviation;
    return builder.build();
  }

  /** Names each component of a reading, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Setup setup;
    private @Nullable ThrottleOpening throttle;
    private @Nullable EngineSpeed speed;
    private @Nullable Lambda from;
    private @Nullable Lambda to;
    private @Nullable Double deviation;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value engine, setting, air and fuel when it was read
     * @return this builder
     */
    public Builder setup(Setup value) {
      setup = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value throttle opening
     * @return this builder
     */
    public Builder throttle(ThrottleOpening value) {
      throttle = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value engine speed, more than zero
     * @return this builder
     */
    public Builder speed(EngineSpeed value) {
      speed = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the richest mixture that it may mean
     * @return this builder
     */
    public Builder from(Lambda value) {
      from = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the leanest mixture that it may mean, not richer than {@code from}
     * @return this builder
     */
    public Builder to(Lambda value) {
      to = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value standard deviation of the reading in ln λ, 0.001 to 1
     * @return this builder
     */
    public Builder deviation(double value) {
      deviation = value;
      return this;
    }

    /**
     * Builds the reading.
     *
     * @return the reading
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Reading build() {
      return new Reading(
          Checks.present("reading", "setup", setup),
          Checks.present("reading", "throttle", throttle),
          Checks.present("reading", "speed", speed),
          Checks.present("reading", "from", from),
          Checks.present("reading", "to", to),
          Checks.present("reading", "deviation", deviation));
    }
  }
}
