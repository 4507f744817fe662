package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Sentence;
import org.jspecify.annotations.Nullable;

/**
 * How the passages of a carburettor family flow: the numbers of the mixture model that no ruler
 * gives.
 *
 * <p>{@link #assumed()} is the library's own set, set by trial so that a common-practice setting
 * and its neighbours land in the usual band; none of it is a measurement of a real carburettor.
 * Somebody with a flow bench replaces it.
 *
 * @param upstreamGap C_U, discharge coefficient of the gap on the filter side of the slide
 * @param downstreamGap C_D, discharge coefficient of the gap on the engine side
 * @param nozzleClosed κ₀, share of the upstream depression felt at the needle jet, slide shut
 * @param nozzleOpen κ₁, the same at full lift
 * @param nozzleExponent m, how it grows between
 * @param neckEffect ν, how much a longer neck weakens it
 * @param needleEntryLoss K_n, entry and exit loss of the ring between needle and needle jet
 * @param needleEccentricity e, 0 for a centred needle to 1 for one that touches
 * @param pilotOutlet C_o, discharge coefficient of the pilot outlet
 * @param pilotBleed C_b, discharge coefficient of the pilot air bleed
 * @param mainJetLength length of the main jet's bore by its diameter
 * @param pilotJetLength length of the pilot jet's bore by its diameter
 */
public record FlowCoefficients(
    Coefficient upstreamGap,
    Coefficient downstreamGap,
    Coefficient nozzleClosed,
    Coefficient nozzleOpen,
    Coefficient nozzleExponent,
    Coefficient neckEffect,
    Coefficient needleEntryLoss,
    Coefficient needleEccentricity,
    Coefficient pilotOutlet,
    Coefficient pilotBleed,
    Coefficient mainJetLength,
    Coefficient pilotJetLength) {

  private static final String BY_HAND =
      "set by trial so that a common-practice setting and its neighbours land in the usual band; not measured";

  private static final FlowCoefficients ASSUMED =
      new FlowCoefficients(
          Coefficient.assumed(0.80, "1", "rounded edge of the cutaway; " + BY_HAND),
          Coefficient.assumed(0.75, "1", "sharp edge of the slide; " + BY_HAND),
          Coefficient.assumed(0.38, "1", "slow air below a shut slide; " + BY_HAND),
          Coefficient.assumed(1.84, "1", BY_HAND),
          Coefficient.assumed(1.78, "1", BY_HAND),
          Coefficient.assumed(2, "1", BY_HAND),
          Coefficient.assumed(1.05, "1", "one velocity head and a little; " + BY_HAND),
          Coefficient.assumed(0.95, "1", "the stream presses the needle to one side; " + BY_HAND),
          Coefficient.assumed(0.82, "1", BY_HAND),
          Coefficient.assumed(0.46, "1", BY_HAND),
          Coefficient.assumed(2, "1", "usual shape of a jet"),
          Coefficient.assumed(2, "1", "usual shape of a jet"));

  /**
   * Checks each coefficient against the range in which the equations keep their meaning.
   *
   * @param upstreamGap C_U, discharge coefficient of the gap on the filter side of the slide
   * @param downstreamGap C_D, discharge coefficient of the gap on the engine side
   * @param nozzleClosed κ₀, share of the upstream depression felt at the needle jet, slide shut
   * @param nozzleOpen κ₁, the same at full lift
   * @param nozzleExponent m, how it grows between
   * @param neckEffect ν, how much a longer neck weakens it
   * @param needleEntryLoss K_n, entry and exit loss of the ring between needle and needle jet
   * @param needleEccentricity e, 0 for a centred needle to 1 for one that touches
   * @param pilotOutlet C_o, discharge coefficient of the pilot outlet
   * @param pilotBleed C_b, discharge coefficient of the pilot air bleed
   * @param mainJetLength length of the main jet's bore by its diameter
   * @param pilotJetLength length of the pilot jet's bore by its diameter
   * @throws IllegalArgumentException if one is out of range
   */
  public FlowCoefficients {
    share("upstreamGap", upstreamGap);
    share("downstreamGap", downstreamGap);
    within("nozzleClosed", nozzleClosed, 0, 10);
    within("nozzleOpen", nozzleOpen, nozzleClosed.value(), 10);
    within("nozzleExponent", nozzleExponent, 0.1, 10);
    within("neckEffect", neckEffect, 0, 20);
    within("needleEntryLoss", needleEntryLoss, 0.1, 10);
    within("needleEccentricity", needleEccentricity, 0, 1);
    share("pilotOutlet", pilotOutlet);
    share("pilotBleed", pilotBleed);
    within("mainJetLength", mainJetLength, 0.5, 10);
    within("pilotJetLength", pilotJetLength, 0.5, 10);
  }

  /** {@return the library's own assumed set} */
  public static FlowCoefficients assumed() {
    return ASSUMED;
  }

  private static void share(String name, Coefficient c) {
    within(name, c, 0.05, 1);
  }

  private static void within(String name, Coefficient c, double low, double high) {
    Checks.within(
        () -> Sentence.of("error.name.flow-coefficient").with("id", name), c.value(), low, high);
  }

  /** {@return a builder of a set of coefficients, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this set of coefficients set} */
  public Builder toBuilder() {
    return new Builder()
        .upstreamGap(upstreamGap)
        .downstreamGap(downstreamGap)
        .nozzleClosed(nozzleClosed)
        .nozzleOpen(nozzleOpen)
        .nozzleExponent(nozzleExponent)
        .neckEffect(neckEffect)
        .needleEntryLoss(needleEntryLoss)
        .needleEccentricity(needleEccentricity)
        .pilotOutlet(pilotOutlet)
        .pilotBleed(pilotBleed)
        .mainJetLength(mainJetLength)
        .pilotJetLength(pilotJetLength);
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param upstreamGap C_U, discharge coefficient of the gap on the filter side of the slide
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withUpstreamGap(Coefficient upstreamGap) {
    return toBuilder().upstreamGap(upstreamGap).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param downstreamGap C_D, discharge coefficient of the gap on the engine side
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withDownstreamGap(Coefficient downstreamGap) {
    return toBuilder().downstreamGap(downstreamGap).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param nozzleClosed κ₀, share of the upstream depression felt at the needle jet, slide shut
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNozzleClosed(Coefficient nozzleClosed) {
    return toBuilder().nozzleClosed(nozzleClosed).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param nozzleOpen κ₁, the same at full lift
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNozzleOpen(Coefficient nozzleOpen) {
    return toBuilder().nozzleOpen(nozzleOpen).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param nozzleExponent m, how it grows between
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNozzleExponent(Coefficient nozzleExponent) {
    return toBuilder().nozzleExponent(nozzleExponent).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param neckEffect ν, how much a longer neck weakens it
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNeckEffect(Coefficient neckEffect) {
    return toBuilder().neckEffect(neckEffect).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param needleEntryLoss K_n, entry and exit loss of the ring between needle and needle jet
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNeedleEntryLoss(Coefficient needleEntryLoss) {
    return toBuilder().needleEntryLoss(needleEntryLoss).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param needleEccentricity e, 0 for a centred needle to 1 for one that touches
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withNeedleEccentricity(Coefficient needleEccentricity) {
    return toBuilder().needleEccentricity(needleEccentricity).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param pilotOutlet C_o, discharge coefficient of the pilot outlet
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withPilotOutlet(Coefficient pilotOutlet) {
    return toBuilder().pilotOutlet(pilotOutlet).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param pilotBleed C_b, discharge coefficient of the pilot air bleed
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withPilotBleed(Coefficient pilotBleed) {
    return toBuilder().pilotBleed(pilotBleed).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param mainJetLength length of the main jet's bore by its diameter
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withMainJetLength(Coefficient mainJetLength) {
    return toBuilder().mainJetLength(mainJetLength).build();
  }

  /**
   * Returns this set of coefficients with another value of one component; all else stays.
   *
   * @param pilotJetLength length of the pilot jet's bore by its diameter
   * @return the changed set of coefficients
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public FlowCoefficients withPilotJetLength(Coefficient pilotJetLength) {
    return toBuilder().pilotJetLength(pilotJetLength).build();
  }

  /** Names each component of a set of coefficients, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Coefficient upstreamGap;
    private @Nullable Coefficient downstreamGap;
    private @Nullable Coefficient nozzleClosed;
    private @Nullable Coefficient nozzleOpen;
    private @Nullable Coefficient nozzleExponent;
    private @Nullable Coefficient neckEffect;
    private @Nullable Coefficient needleEntryLoss;
    private @Nullable Coefficient needleEccentricity;
    private @Nullable Coefficient pilotOutlet;
    private @Nullable Coefficient pilotBleed;
    private @Nullable Coefficient mainJetLength;
    private @Nullable Coefficient pilotJetLength;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value C_U, discharge coefficient of the gap on the filter side of the slide
     * @return this builder
     */
    public Builder upstreamGap(Coefficient value) {
      upstreamGap = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value C_D, discharge coefficient of the gap on the engine side
     * @return this builder
     */
    public Builder downstreamGap(Coefficient value) {
      downstreamGap = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value κ₀, share of the upstream depression felt at the needle jet, slide shut
     * @return this builder
     */
    public Builder nozzleClosed(Coefficient value) {
      nozzleClosed = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value κ₁, the same at full lift
     * @return this builder
     */
    public Builder nozzleOpen(Coefficient value) {
      nozzleOpen = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value m, how it grows between
     * @return this builder
     */
    public Builder nozzleExponent(Coefficient value) {
      nozzleExponent = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value ν, how much a longer neck weakens it
     * @return this builder
     */
    public Builder neckEffect(Coefficient value) {
      neckEffect = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value K_n, entry and exit loss of the ring between needle and needle jet
     * @return this builder
     */
    public Builder needleEntryLoss(Coefficient value) {
      needleEntryLoss = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value e, 0 for a centred needle to 1 for one that touches
     * @return this builder
     */
    public Builder needleEccentricity(Coefficient value) {
      needleEccentricity = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value C_o, discharge coefficient of the pilot outlet
     * @return this builder
     */
    public Builder pilotOutlet(Coefficient value) {
      pilotOutlet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value C_b, discharge coefficient of the pilot air bleed
     * @return this builder
     */
    public Builder pilotBleed(Coefficient value) {
      pilotBleed = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value length of the main jet's bore by its diameter
     * @return this builder
     */
    public Builder mainJetLength(Coefficient value) {
      mainJetLength = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value length of the pilot jet's bore by its diameter
     * @return this builder
     */
    public Builder pilotJetLength(Coefficient value) {
      pilotJetLength = value;
      return this;
    }

    /**
     * Builds the set of coefficients.
     *
     * @return the set of coefficients
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public FlowCoefficients build() {
      return new FlowCoefficients(
          Checks.present("set of coefficients", "upstreamGap", upstreamGap),
          Checks.present("set of coefficients", "downstreamGap", downstreamGap),
          Checks.present("set of coefficients", "nozzleClosed", nozzleClosed),
          Checks.present("set of coefficients", "nozzleOpen", nozzleOpen),
          Checks.present("set of coefficients", "nozzleExponent", nozzleExponent),
          Checks.present("set of coefficients", "neckEffect", neckEffect),
          Checks.present("set of coefficients", "needleEntryLoss", needleEntryLoss),
          Checks.present("set of coefficients", "needleEccentricity", needleEccentricity),
          Checks.present("set of coefficients", "pilotOutlet", pilotOutlet),
          Checks.present("set of coefficients", "pilotBleed", pilotBleed),
          Checks.present("set of coefficients", "mainJetLength", mainJetLength),
          Checks.present("set of coefficients", "pilotJetLength", pilotJetLength));
    }
  }
}
