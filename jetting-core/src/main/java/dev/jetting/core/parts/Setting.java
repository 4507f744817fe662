package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A carburettor setting: the carburettor with the parts that stand in it and what stands before it.
 *
 * @param carburettor the carburettor
 * @param intake what stands before it
 * @param pilotJet bore of the pilot jet, more than zero
 * @param screw the screw of the pilot circuit
 * @param cutaway cutaway of the slide, less than the bore
 * @param idleLift lift of the closed slide on its stop, 0.01 mm or more and less than the bore
 * @param needleJet the needle jet
 * @param needle the needle
 * @param clip where the clip sits; counts the needle's grooves
 * @param mainJet bore of the main jet, more than zero
 * @param floats how the floats are set; empty if unknown: the model then assumes that the fuel
 *     stands as high as the carburettor's heads state
 */
public record Setting(
    Carburettor carburettor,
    Intake intake,
    JetBore pilotJet,
    Screw screw,
    Cutaway cutaway,
    Length idleLift,
    NeedleJet needleJet,
    Needle needle,
    ClipPosition clip,
    JetBore mainJet,
    Optional<Floats> floats) {

  /**
   * Checks that the parts can stand together.
   *
   * @param carburettor the carburettor
   * @param intake what stands before it
   * @param pilotJet bore of the pilot jet, more than zero
   * @param screw the screw of the pilot circuit
   * @param cutaway cutaway of the slide, less than the bore
   * @param idleLift lift of the closed slide on its stop, 0.01 mm or more and less than the bore
   * @param needleJet the needle jet
   * @param needle the needle
   * @param clip where the clip sits
   * @param mainJet bore of the main jet, more than zero
   * @param floats how the floats are set
   * @throws IllegalArgumentException if they cannot: a cutaway or lift beyond the bore, a lift
   *     below 0.01 mm, a needle too thick for the needle jet, a clip counted on other grooves
   */
  public Setting {
    Objects.requireNonNull(intake, "intake");
    Objects.requireNonNull(pilotJet, "pilotJet");
    Objects.requireNonNull(mainJet, "mainJet");
    Objects.requireNonNull(screw, "screw");
    Objects.requireNonNull(floats, "floats");
    double bore = carburettor.bore().millimetres();
    Checks.that(
        cutaway.millimetres() < bore,
        () -> Sentence.of("error.name.cutaway"),
        cutaway,
        () -> Sentence.of("error.less-than-bore").with("size", carburettor.bore()));
    Checks.that(
        idleLift.millimetres() >= 0.01 && idleLift.millimetres() < bore,
        () -> Sentence.of("error.name.idle-lift"),
        idleLift,
        () ->
            Sentence.of("error.lift-and-bore")
                .with("low", new Sentence.Amount(0.01, "mm"))
                .with("size", carburettor.bore()));
    Checks.that(
        needle.cylinder().millimetres() < needleJet.bore().millimetres(),
        () -> Sentence.of("error.name.cylinder-of-needle").with("id", needle.id()),
        needle.cylinder(),
        () -> Sentence.of("error.less-than-needle-jet").with("size", needleJet.bore()));
    Checks.that(
        clip.grooves() == needle.grooves(),
        () -> Sentence.of("error.name.clip-position"),
        clip,
        () ->
            Sentence.of("error.grooves-of")
                .with("count", needle.grooves())
                .with("id", needle.id()));
  }

  /**
   * By how much the fuel stands lower than the carburettor's heads state.
   *
   * @return mm; below zero if it stands higher, 0 for an unknown float level
   */
  public double fuelLowerBy() {
    return floats.map(Floats::lowerBy).orElse(0.0);
  }

  /**
   * This setting in another carburettor: the parts moved over, the float level unknown.
   *
   * @param other the carburettor
   * @return the changed setting
   * @throws IllegalArgumentException if the slide is cut away or lifted beyond its bore
   */
  public Setting withCarburettor(Carburettor other) {
    return toBuilder().carburettor(other).floats(Optional.empty()).build();
  }

  /**
   * This setting behind another intake.
   *
   * @param other the intake
   * @return the changed setting
   */
  public Setting withIntake(Intake other) {
    return toBuilder().intake(other).build();
  }

  /**
   * This setting with another pilot jet.
   *
   * @param other its bore
   * @return the changed setting
   */
  public Setting withPilotJet(JetBore other) {
    return toBuilder().pilotJet(other).build();
  }

  /**
   * This setting with another screw.
   *
   * @param other the screw
   * @return the changed setting
   */
  public Setting withScrew(Screw other) {
    return toBuilder().screw(other).build();
  }

  /**
   * This setting with another slide.
   *
   * @param other its cutaway
   * @return the changed setting
   * @throws IllegalArgumentException if the cutaway is not less than the bore
   */
  public Setting withCutaway(Cutaway other) {
    return toBuilder().cutaway(other).build();
  }

  /**
   * This setting with another needle jet.
   *
   * @param other the needle jet
   * @return the changed setting
   * @throws IllegalArgumentException if the needle does not go into it
   */
  public Setting withNeedleJet(NeedleJet other) {
    return toBuilder().needleJet(other).build();
  }

  /**
   * This setting with another needle.
   *
   * @param other the needle
   * @param position where its clip sits
   * @return the changed setting
   * @throws IllegalArgumentException if it does not go into the needle jet or the clip counts other
   *     grooves
   */
  public Setting withNeedle(Needle other, ClipPosition position) {
    return toBuilder().needle(other).clip(position).build();
  }

  /**
   * This setting with the clip elsewhere.
   *
   * @param other where the clip sits
   * @return the changed setting
   * @throws IllegalArgumentException if it counts other grooves than the needle has
   */
  public Setting withClip(ClipPosition other) {
    return withNeedle(needle, other);
  }

  /**
   * This setting with another main jet.
   *
   * @param other its bore
   * @return the changed setting
   */
  public Setting withMainJet(JetBore other) {
    return toBuilder().mainJet(other).build();
  }

  /**
   * This setting with the floats set otherwise.
   *
   * @param other how the floats are set
   * @return the changed setting
   */
  public Setting withFloats(Floats other) {
    return toBuilder().floats(Optional.of(Objects.requireNonNull(other, "other"))).build();
  }

  /** {@return a builder of a setting, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this setting set} */
  public Builder toBuilder() {
    return new Builder()
        .carburettor(carburettor)
        .intake(intake)
        .pilotJet(pilotJet)
        .screw(screw)
        .cutaway(cutaway)
        .idleLift(idleLift)
        .needleJet(needleJet)
        .needle(needle)
        .clip(clip)
        .mainJet(mainJet)
        .floats(floats);
  }

  /**
   * Returns this setting with another value of one component; all else stays.
   *
   * @param idleLift lift of the closed slide on its stop, 0.01 mm or more and less than the bore
   * @return the changed setting
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Setting withIdleLift(Length idleLift) {
    return toBuilder().idleLift(idleLift).build();
  }

  /** Names each component of a setting, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Carburettor carburettor;
    private @Nullable Intake intake;
    private @Nullable JetBore pilotJet;
    private @Nullable Screw screw;
    private @Nullable Cutaway cutaway;
    private @Nullable Length idleLift;
    private @Nullable NeedleJet needleJet;
    private @Nullable Needle needle;
    private @Nullable ClipPosition clip;
    private @Nullable JetBore mainJet;
    private Optional<Floats> floats = Optional.empty();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the carburettor
     * @return this builder
     */
    public Builder carburettor(Carburettor value) {
      carburettor = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what stands before it
     * @return this builder
     */
    public Builder intake(Intake value) {
      intake = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value bore of the pilot jet, more than zero
     * @return this builder
     */
    public Builder pilotJet(JetBore value) {
      pilotJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the screw of the pilot circuit
     * @return this builder
     */
    public Builder screw(Screw value) {
      screw = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value cutaway of the slide, less than the bore
     * @return this builder
     */
    public Builder cutaway(Cutaway value) {
      cutaway = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value lift of the closed slide on its stop, 0.01 mm or more and less than the bore
     * @return this builder
     */
    public Builder idleLift(Length value) {
      idleLift = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the needle jet
     * @return this builder
     */
    public Builder needleJet(NeedleJet value) {
      needleJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the needle
     * @return this builder
     */
    public Builder needle(Needle value) {
      needle = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value where the clip sits; counts the needle's grooves
     * @return this builder
     */
    public Builder clip(ClipPosition value) {
      clip = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value bore of the main jet, more than zero
     * @return this builder
     */
    public Builder mainJet(JetBore value) {
      mainJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how the floats are set; empty if unknown: the model then assumes that the fuel
     *     stands as high as the carburettor's heads state; need not be set
     * @return this builder
     */
    public Builder floats(Optional<Floats> value) {
      floats = value;
      return this;
    }

    /**
     * Builds the setting.
     *
     * @return the setting
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Setting build() {
      return new Setting(
          Checks.present("setting", "carburettor", carburettor),
          Checks.present("setting", "intake", intake),
          Checks.present("setting", "pilotJet", pilotJet),
          Checks.present("setting", "screw", screw),
          Checks.present("setting", "cutaway", cutaway),
          Checks.present("setting", "idleLift", idleLift),
          Checks.present("setting", "needleJet", needleJet),
          Checks.present("setting", "needle", needle),
          Checks.present("setting", "clip", clip),
          Checks.present("setting", "mainJet", mainJet),
          floats);
    }
  }
}
