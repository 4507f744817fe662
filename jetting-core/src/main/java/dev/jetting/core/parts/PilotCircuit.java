package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The pilot circuit of a carburettor apart from the jet in it.
 *
 * <p>With a mixture screw the screw sets the outlet and the air bleed is fixed; with an air screw
 * it sets the bleed and the outlet is fixed.
 *
 * @param screwKind which passage the screw meters
 * @param areaPerTurn area that one turn out opens, more than zero
 * @param fixedArea with a mixture screw the area of the air bleed, with an air screw that of the
 *     outlet; more than zero
 * @param progressionHole area of the progression hole that the rising slide uncovers
 * @param uncoversFrom lift above idle at which the slide begins to uncover it
 * @param uncoversTo lift above idle at which it is fully uncovered; more than {@code uncoversFrom}
 * @param head height of the outlet over the fuel level, in mm of fuel
 * @param mostTurns turns at which the screw does nothing more or comes loose
 */
public record PilotCircuit(
    ScrewKind screwKind,
    Area areaPerTurn,
    Area fixedArea,
    Area progressionHole,
    Length uncoversFrom,
    Length uncoversTo,
    Length head,
    ScrewTurns mostTurns) {

  /**
   * Checks the geometry.
   *
   * @param screwKind which passage the screw meters
   * @param areaPerTurn area that one turn out opens, more than zero
   * @param fixedArea with a mixture screw the area of the air bleed, with an air screw that of the
   *     outlet
   * @param progressionHole area of the progression hole that the rising slide uncovers
   * @param uncoversFrom lift above idle at which the slide begins to uncover it
   * @param uncoversTo lift above idle at which it is fully uncovered
   * @param head height of the outlet over the fuel level, in mm of fuel
   * @param mostTurns turns at which the screw does nothing more or comes loose
   * @throws IllegalArgumentException if an area that must be open is zero or the progression hole
   *     is covered before it is uncovered
   */
  public PilotCircuit {
    Objects.requireNonNull(screwKind, "screwKind");
    Objects.requireNonNull(progressionHole, "progressionHole");
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(mostTurns, "mostTurns");
    Checks.that(
        areaPerTurn.squareMillimetres() > 0,
        () -> Sentence.of("error.name.area-per-turn"),
        areaPerTurn,
        () -> Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "mm²")));
    Checks.that(
        fixedArea.squareMillimetres() > 0,
        () -> Sentence.of("error.name.fixed-area"),
        fixedArea,
        () -> Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "mm²")));
    Checks.that(
        uncoversTo.millimetres() > uncoversFrom.millimetres(),
        () -> Sentence.of("error.name.uncovered"),
        uncoversTo,
        () -> Sentence.of("error.uncovered").with("low", uncoversFrom));
  }

  /** {@return a builder of a pilot circuit, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this pilot circuit set} */
  public Builder toBuilder() {
    return new Builder()
        .screwKind(screwKind)
        .areaPerTurn(areaPerTurn)
        .fixedArea(fixedArea)
        .progressionHole(progressionHole)
        .uncoversFrom(uncoversFrom)
        .uncoversTo(uncoversTo)
        .head(head)
        .mostTurns(mostTurns);
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param screwKind which passage the screw meters
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withScrewKind(ScrewKind screwKind) {
    return toBuilder().screwKind(screwKind).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param areaPerTurn area that one turn out opens, more than zero
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withAreaPerTurn(Area areaPerTurn) {
    return toBuilder().areaPerTurn(areaPerTurn).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param fixedArea with a mixture screw the area of the air bleed, with an air screw that of the
   *     outlet; more than zero
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withFixedArea(Area fixedArea) {
    return toBuilder().fixedArea(fixedArea).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param progressionHole area of the progression hole that the rising slide uncovers
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withProgressionHole(Area progressionHole) {
    return toBuilder().progressionHole(progressionHole).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param uncoversFrom lift above idle at which the slide begins to uncover it
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withUncoversFrom(Length uncoversFrom) {
    return toBuilder().uncoversFrom(uncoversFrom).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param uncoversTo lift above idle at which it is fully uncovered; more than {@code
   *     uncoversFrom}
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withUncoversTo(Length uncoversTo) {
    return toBuilder().uncoversTo(uncoversTo).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param head height of the outlet over the fuel level, in mm of fuel
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withHead(Length head) {
    return toBuilder().head(head).build();
  }

  /**
   * Returns this pilot circuit with another value of one component; all else stays.
   *
   * @param mostTurns turns at which the screw does nothing more or comes loose
   * @return the changed pilot circuit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PilotCircuit withMostTurns(ScrewTurns mostTurns) {
    return toBuilder().mostTurns(mostTurns).build();
  }

  /** Names each component of a pilot circuit, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable ScrewKind screwKind;
    private @Nullable Area areaPerTurn;
    private @Nullable Area fixedArea;
    private @Nullable Area progressionHole;
    private @Nullable Length uncoversFrom;
    private @Nullable Length uncoversTo;
    private @Nullable Length head;
    private @Nullable ScrewTurns mostTurns;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value which passage the screw meters
     * @return this builder
     */
    public Builder screwKind(ScrewKind value) {
      screwKind = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value area that one turn out opens, more than zero
     * @return this builder
     */
    public Builder areaPerTurn(Area value) {
      areaPerTurn = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value with a mixture screw the area of the air bleed, with an air screw that of the
     *     outlet; more than zero
     * @return this builder
     */
    public Builder fixedArea(Area value) {
      fixedArea = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value area of the progression hole that the rising slide uncovers
     * @return this builder
     */
    public Builder progressionHole(Area value) {
      progressionHole = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value lift above idle at which the slide begins to uncover it
     * @return this builder
     */
    public Builder uncoversFrom(Length value) {
      uncoversFrom = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value lift above idle at which it is fully uncovered; more than {@code uncoversFrom}
     * @return this builder
     */
    public Builder uncoversTo(Length value) {
      uncoversTo = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value height of the outlet over the fuel level, in mm of fuel
     * @return this builder
     */
    public Builder head(Length value) {
      head = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value turns at which the screw does nothing more or comes loose
     * @return this builder
     */
    public Builder mostTurns(ScrewTurns value) {
      mostTurns = value;
      return this;
    }

    /**
     * Builds the pilot circuit.
     *
     * @return the pilot circuit
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public PilotCircuit build() {
      return new PilotCircuit(
          Checks.present("pilot circuit", "screwKind", screwKind),
          Checks.present("pilot circuit", "areaPerTurn", areaPerTurn),
          Checks.present("pilot circuit", "fixedArea", fixedArea),
          Checks.present("pilot circuit", "progressionHole", progressionHole),
          Checks.present("pilot circuit", "uncoversFrom", uncoversFrom),
          Checks.present("pilot circuit", "uncoversTo", uncoversTo),
          Checks.present("pilot circuit", "head", head),
          Checks.present("pilot circuit", "mostTurns", mostTurns));
    }
  }
}
