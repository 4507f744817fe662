package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.FloatLevel;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How the floats of a carburettor are set, against how they are meant to be.
 *
 * <p>The depth at which floats swim does not depend on how they are set. So the fuel stands lower
 * by as much as they are set higher above the joint (assumed: measured in the middle of the float).
 * Not for carburettors whose trade measures the other way round, from the bottom of the bowl.
 *
 * @param set the float level as it was measured
 * @param nominal the float level at which the carburettor's heads hold
 */
public record Floats(FloatLevel set, FloatLevel nominal) {

  /**
   * Checks for nulls.
   *
   * @param set the float level as it was measured
   * @param nominal the float level at which the carburettor's heads hold
   */
  public Floats {
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(nominal, "nominal");
  }

  /** {@return by how many mm the fuel stands lower than it is meant to; below zero if higher} */
  public double lowerBy() {
    return set.millimetres() - nominal.millimetres();
  }

  /** {@return a builder of a float setting, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this float setting set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.set = set;
    builder.nominal = nominal;
    return builder;
  }

  /**
   * Returns this float setting with another value of one component; all else stays.
   *
   * @param set the float level as it was measured
   * @return the changed float setting
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Floats withSet(FloatLevel set) {
    Builder builder = toBuilder();
    builder.set = set;
    return builder.build();
  }

  /**
   * Returns this float setting with another value of one component; all else stays.
   *
   * @param nominal the float level at which the carburettor's heads hold
   * @return the changed float setting
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Floats withNominal(FloatLevel nominal) {
    Builder builder = toBuilder();
    builder.nominal = nominal;
    return builder.build();
  }

  /** Names each component of a float setting, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable FloatLevel set;
    private @Nullable FloatLevel nominal;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the float level as it was measured
     * @return this builder
     */
    public Builder set(FloatLevel value) {
      set = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the float level at which the carburettor's heads hold
     * @return this builder
     */
    public Builder nominal(FloatLevel value) {
      nominal = value;
      return this;
    }

    /**
     * Builds the float setting.
     *
     * @return the float setting
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Floats build() {
      return new Floats(
          Checks.present("float setting", "set", set),
          Checks.present("float setting", "nominal", nominal));
    }
  }
}
