package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.ErrorSource;
import org.jspecify.annotations.Nullable;

/**
 * How far an engine that nobody has measured may differ from the model: standard deviations, of ln
 * (true by modelled flow) for the four sources and of ln λ for the residual.
 *
 * @param pilot of the pilot circuit, 0 to 1
 * @param needle of the ring between needle and needle jet, 0 to 1
 * @param main of the main jet, 0 to 1
 * @param air of the air by its signal, 0 to 1
 * @param residual of what is left, 0 to 1
 * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to 10
 */
public record Spreads(
    double pilot, double needle, double main, double air, double residual, double residualLength) {

  /**
   * Checks the numbers.
   *
   * @param pilot of the pilot circuit, 0 to 1
   * @param needle of the ring between needle and needle jet, 0 to 1
   * @param main of the main jet, 0 to 1
   * @param air of the air by its signal, 0 to 1
   * @param residual of what is left, 0 to 1
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to
   *     10
   * @throws IllegalArgumentException if one is out of range
   */
  public Spreads {
    pilot = Checks.within("spread of the pilot circuit", pilot, 0, 1);
    needle = Checks.within("spread of the needle's ring", needle, 0, 1);
    main = Checks.within("spread of the main jet", main, 0, 1);
    air = Checks.within("spread of the air by its signal", air, 0, 1);
    residual = Checks.within("residual spread", residual, 0, 1);
    residualLength = Checks.within("length of the residual", residualLength, 0.01, 10);
  }

  /**
   * The spread of a source.
   *
   * @param source the source
   * @return its standard deviation
   */
  public double of(ErrorSource source) {
    return switch (source) {
      case PILOT -> pilot;
      case NEEDLE -> needle;
      case MAIN -> main;
      case AIR -> air;
    };
  }

  /** {@return a builder of a set of spreads, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this set of spreads set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.pilot = pilot;
    builder.needle = needle;
    builder.main = main;
    builder.air = air;
    builder.residual = residual;
    builder.residualLength = residualLength;
    return builder;
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param pilot of the pilot circuit, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withPilot(double pilot) {
    Builder builder = toBuilder();
    builder.pilot = pilot;
    return builder.build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param needle of the ring between needle and needle jet, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withNeedle(double needle) {
    Builder builder = toBuilder();
    builder.needle = needle;
    return builder.build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param main of the main jet, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withMain(double main) {
    Builder builder = toBuilder();
    builder.main = main;
    return builder.build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param air of the air by its signal, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withAir(double air) {
    Builder builder = toBuilder();
    builder.air = air;
    return builder.build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param residual of what is left, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withResidual(double residual) {
    Builder builder = toBuilder();
    builder.residual = residual;
    return builder.build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to
   *     10
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Spreads withResidualLength(double residualLength) {
    Builder builder = toBuilder();
    builder.residualLength = residualLength;
    return builder.build();
  }

  /** Names each component of a set of spreads, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Double pilot;
    private @Nullable Double needle;
    private @Nullable Double main;
    private @Nullable Double air;
    private @Nullable Double residual;
    private @Nullable Double residualLength;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value of the pilot circuit, 0 to 1
     * @return this builder
     */
    public Builder pilot(double value) {
      pilot = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of the ring between needle and needle jet, 0 to 1
     * @return this builder
     */
    public Builder needle(double value) {
      needle = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of the main jet, 0 to 1
     * @return this builder
     */
    public Builder main(double value) {
      main = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of the air by its signal, 0 to 1
     * @return this builder
     */
    public Builder air(double value) {
      air = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of what is left, 0 to 1
     * @return this builder
     */
    public Builder residual(double value) {
      residual = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how far apart in throttle opening two residuals are that differ, 0.01 to 10
     * @return this builder
     */
    public Builder residualLength(double value) {
      residualLength = value;
      return this;
    }

    /**
     * Builds the set of spreads.
     *
     * @return the set of spreads
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Spreads build() {
      return new Spreads(
          Checks.present("set of spreads", "pilot", pilot),
          Checks.present("set of spreads", "needle", needle),
          Checks.present("set of spreads", "main", main),
          Checks.present("set of spreads", "air", air),
          Checks.present("set of spreads", "residual", residual),
          Checks.present("set of spreads", "residualLength", residualLength));
    }
  }
}
