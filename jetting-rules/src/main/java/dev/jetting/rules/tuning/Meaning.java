package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import org.jspecify.annotations.Nullable;

/**
 * What a colour or a symptom says of the mixture: a band of λ by the λ that the engine needs at
 * that opening, and how far to trust it.
 *
 * @param from the richest, by the λ needed; 0.01 to {@code to}
 * @param to the leanest, by the λ needed; to 100
 * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
 * @param why where the numbers come from
 */
public record Meaning(double from, double to, double deviation, String why) {

  static final double NO_LIMIT_RICH = 0.01;
  static final double NO_LIMIT_LEAN = 100;

  /**
   * Checks the band.
   *
   * @param from the richest, by the λ needed; 0.01 to {@code to}
   * @param to the leanest, by the λ needed; to 100
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @param why where the numbers come from
   * @throws IllegalArgumentException if a number is out of range
   */
  public Meaning {
    boolean ordered = from >= NO_LIMIT_RICH && from < to && to <= NO_LIMIT_LEAN;
    if (!ordered || !(deviation >= 0.001 && deviation <= 1)) {
      throw InvalidValueException.worded(
          Sentence.of("error.meaning")
              .with("low", from)
              .with("high", to)
              .with("deviation", deviation),
          Sentence.of("error.meaning.allowed"));
    }
    if (why.isBlank()) {
      throw InvalidValueException.worded(
          Sentence.of("error.blank").with("what", Sentence.of("error.name.meaning-reason")),
          Sentence.of("error.source-or-reason"));
    }
  }

  static Meaning assumed(double from, double to, double deviation) {
    return new Meaning(from, to, deviation, "assumed; not measured");
  }

  Reading reading(Setup setup, ThrottleOpening throttle, EngineSpeed speed) {
    double need = setup.engine().need().at(throttle).value();
    return Reading.builder()
        .setup(setup)
        .throttle(throttle)
        .speed(speed)
        .from(Lambda.of(need * from))
        .to(Lambda.of(need * to))
        .deviation(deviation)
        .build();
  }

  /** {@return a builder of a meaning, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this meaning set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.from = from;
    builder.to = to;
    builder.deviation = deviation;
    builder.why = why;
    return builder;
  }

  /**
   * Returns this meaning with another value of one component; all else stays.
   *
   * @param from the richest, by the λ needed; 0.01 to {@code to}
   * @return the changed meaning
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Meaning withFrom(double from) {
    Builder builder = toBuilder();
    builder.from = from;
    return builder.build();
  }

  /**
   * Returns this meaning with another value of one component; all else stays.
   *
   * @param to the leanest, by the λ needed; to 100
   * @return the changed meaning
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Meaning withTo(double to) {
    Builder builder = toBuilder();
    builder.to = to;
    return builder.build();
  }

  /**
   * Returns this meaning with another value of one component; all else stays.
   *
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @return the changed meaning
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Meaning withDeviation(double deviation) {
    Builder builder = toBuilder();
    builder.deviation = deviation;
    return builder.build();
  }

  /**
   * Returns this meaning with another value of one component; all else stays.
   *
   * @param why where the numbers come from
   * @return the changed meaning
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Meaning withWhy(String why) {
    Builder builder = toBuilder();
    builder.why = why;
    return builder.build();
  }

  /** Names each component of a meaning, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Double from;
    private @Nullable Double to;
    private @Nullable Double deviation;
    private @Nullable String why;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the richest, by the λ needed; 0.01 to {@code to}
     * @return this builder
     */
    public Builder from(double value) {
      from = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the leanest, by the λ needed; to 100
     * @return this builder
     */
    public Builder to(double value) {
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
     * Sets one component.
     *
     * @param value where the numbers come from
     * @return this builder
     */
    public Builder why(String value) {
      why = value;
      return this;
    }

    /**
     * Builds the meaning.
     *
     * @return the meaning
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Meaning build() {
      return new Meaning(
          Checks.present("meaning", "from", from),
          Checks.present("meaning", "to", to),
          Checks.present("meaning", "deviation", deviation),
          Checks.present("meaning", "why", why));
    }
  }
}
