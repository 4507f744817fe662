package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.Objects;

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
        "area per turn of the pilot screw",
        areaPerTurn,
        "more than 0 mm²");
    Checks.that(
        fixedArea.squareMillimetres() > 0,
        "fixed area of the pilot circuit",
        fixedArea,
        "more than 0 mm²");
    Checks.that(
        uncoversTo.millimetres() > uncoversFrom.millimetres(),
        "lift at which the progression hole is uncovered",
        uncoversTo,
        () -> "more than the " + uncoversFrom + " at which it begins to be");
  }
}
