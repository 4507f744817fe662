package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Screw;
import dev.jetting.rules.ranges.SizeRanges;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Length;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a seller says to set a kit on one machine: parts by their ids in the catalogue.
 *
 * @param machine id of the machine
 * @param pilotJet id of the pilot jet
 * @param screw kind of screw that the turns are meant for, and the turns
 * @param slide id of the slide
 * @param idleLift lift of the closed slide on its stop
 * @param needleJet id of the needle jet
 * @param needle id of the needle
 * @param clip where its clip sits
 * @param mainJet id of the main jet
 * @param fittedScrew id of the screw to fit; empty for the one that the carburettor comes with
 * @param floatValve id of the float valve to fit; empty for the one that the carburettor comes with
 * @param floats how to set the floats; empty where the seller does not say
 */
public record Recommendation(
    String machine,
    String pilotJet,
    Screw screw,
    String slide,
    Length idleLift,
    String needleJet,
    String needle,
    ClipPosition clip,
    String mainJet,
    Optional<String> fittedScrew,
    Optional<String> floatValve,
    Optional<Floats> floats) {

  /**
   * Checks the ids.
   *
   * @param machine id of the machine
   * @param pilotJet id of the pilot jet
   * @param screw kind of screw that the turns are meant for, and the turns
   * @param slide id of the slide
   * @param idleLift lift of the closed slide on its stop
   * @param needleJet id of the needle jet
   * @param needle id of the needle
   * @param clip where its clip sits
   * @param mainJet id of the main jet
   * @param fittedScrew id of the screw to fit; empty for the one that the carburettor comes with
   * @param floatValve id of the float valve to fit; empty for the one that the carburettor comes
   *     with
   * @param floats how to set the floats; empty where the seller does not say
   * @throws IllegalArgumentException if a text is blank, longer than 60 characters or not one line
   *     of visible characters, or a size is out of the range that an assessment can compute with
   */
  public Recommendation {
    Checks.id("machine", "recommended machine", machine);
    Checks.id("pilotJet", "recommended pilot jet", pilotJet);
    SizeRanges.screwTurns("screw.turns", screw.turns());
    Checks.id("slide", "recommended slide", slide);
    SizeRanges.idleLift("idleLift", idleLift);
    Checks.id("needleJet", "recommended needle jet", needleJet);
    Checks.id("needle", "recommended needle", needle);
    Objects.requireNonNull(clip, "clip");
    Checks.id("mainJet", "recommended main jet", mainJet);
    fittedScrew.ifPresent(id -> Checks.id("fittedScrew", "recommended screw", id));
    floatValve.ifPresent(id -> Checks.id("floatValve", "recommended float valve", id));
    floats.ifPresent(levels -> SizeRanges.floats("floats", levels));
  }

  /** {@return a builder of a recommendation, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this recommendation set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.machine = machine;
    builder.pilotJet = pilotJet;
    builder.screw = screw;
    builder.slide = slide;
    builder.idleLift = idleLift;
    builder.needleJet = needleJet;
    builder.needle = needle;
    builder.clip = clip;
    builder.mainJet = mainJet;
    builder.fittedScrew = fittedScrew;
    builder.floatValve = floatValve;
    builder.floats = floats;
    return builder;
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param machine id of the machine
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withMachine(String machine) {
    Builder builder = toBuilder();
    builder.machine = machine;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param pilotJet id of the pilot jet
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withPilotJet(String pilotJet) {
    Builder builder = toBuilder();
    builder.pilotJet = pilotJet;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param screw kind of screw that the turns are meant for, and the turns
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withScrew(Screw screw) {
    Builder builder = toBuilder();
    builder.screw = screw;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param slide id of the slide
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withSlide(String slide) {
    Builder builder = toBuilder();
    builder.slide = slide;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param idleLift lift of the closed slide on its stop
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withIdleLift(Length idleLift) {
    Builder builder = toBuilder();
    builder.idleLift = idleLift;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param needleJet id of the needle jet
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withNeedleJet(String needleJet) {
    Builder builder = toBuilder();
    builder.needleJet = needleJet;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param needle id of the needle
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withNeedle(String needle) {
    Builder builder = toBuilder();
    builder.needle = needle;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param clip where its clip sits
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withClip(ClipPosition clip) {
    Builder builder = toBuilder();
    builder.clip = clip;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param mainJet id of the main jet
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withMainJet(String mainJet) {
    Builder builder = toBuilder();
    builder.mainJet = mainJet;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param fittedScrew id of the screw to fit; empty for the one that the carburettor comes with
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withFittedScrew(Optional<String> fittedScrew) {
    Builder builder = toBuilder();
    builder.fittedScrew = fittedScrew;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param floatValve id of the float valve to fit; empty for the one that the carburettor comes
   *     with
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withFloatValve(Optional<String> floatValve) {
    Builder builder = toBuilder();
    builder.floatValve = floatValve;
    return builder.build();
  }

  /**
   * Returns this recommendation with another value of one component; all else stays.
   *
   * @param floats how to set the floats; empty where the seller does not say
   * @return the changed recommendation
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Recommendation withFloats(Optional<Floats> floats) {
    Builder builder = toBuilder();
    builder.floats = floats;
    return builder.build();
  }

  /** Names each component of a recommendation, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String machine;
    private @Nullable String pilotJet;
    private @Nullable Screw screw;
    private @Nullable String slide;
    private @Nullable Length idleLift;
    private @Nullable String needleJet;
    private @Nullable String needle;
    private @Nullable ClipPosition clip;
    private @Nullable String mainJet;
    private Optional<String> fittedScrew = Optional.empty();
    private Optional<String> floatValve = Optional.empty();
    private Optional<Floats> floats = Optional.empty();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value id of the machine
     * @return this builder
     */
    public Builder machine(String value) {
      machine = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the pilot jet
     * @return this builder
     */
    public Builder pilotJet(String value) {
      pilotJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value kind of screw that the turns are meant for, and the turns
     * @return this builder
     */
    public Builder screw(Screw value) {
      screw = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the slide
     * @return this builder
     */
    public Builder slide(String value) {
      slide = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value lift of the closed slide on its stop
     * @return this builder
     */
    public Builder idleLift(Length value) {
      idleLift = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the needle jet
     * @return this builder
     */
    public Builder needleJet(String value) {
      needleJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the needle
     * @return this builder
     */
    public Builder needle(String value) {
      needle = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value where its clip sits
     * @return this builder
     */
    public Builder clip(ClipPosition value) {
      clip = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the main jet
     * @return this builder
     */
    public Builder mainJet(String value) {
      mainJet = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value id of the screw to fit; empty for the one that the carburettor comes with
     * @return this builder
     */
    public Builder fittedScrew(Optional<String> value) {
      fittedScrew = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value id of the float valve to fit; empty for the one that the carburettor comes with
     * @return this builder
     */
    public Builder floatValve(Optional<String> value) {
      floatValve = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value how to set the floats; empty where the seller does not say
     * @return this builder
     */
    public Builder floats(Optional<Floats> value) {
      floats = value;
      return this;
    }

    /**
     * Builds the recommendation.
     *
     * @return the recommendation
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Recommendation build() {
      return new Recommendation(
          Checks.present("recommendation", "machine", machine),
          Checks.present("recommendation", "pilotJet", pilotJet),
          Checks.present("recommendation", "screw", screw),
          Checks.present("recommendation", "slide", slide),
          Checks.present("recommendation", "idleLift", idleLift),
          Checks.present("recommendation", "needleJet", needleJet),
          Checks.present("recommendation", "needle", needle),
          Checks.present("recommendation", "clip", clip),
          Checks.present("recommendation", "mainJet", mainJet),
          fittedScrew,
          floatValve,
          floats);
    }
  }
}
