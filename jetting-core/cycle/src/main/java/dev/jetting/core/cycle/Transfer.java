package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Pressure;

/**
 * The transfer ports, which the piston uncovers about bottom dead centre, and what stands behind
 * them.
 *
 * @param duration degrees of the crank for which they are open, 60 to 180
 * @param area open area at bottom dead centre, more than zero
 * @param pull by how much the pressure in the cylinder is below ambient while they are open, a
 *     mean; zero for an exhaust that does not pull
 */
public record Transfer(double duration, Area area, Pressure pull) {

  /** A strong pipe pulls by a few tenths of a bar for a part of the time (assumed). */
  private static final double MOST_PULL = 50_000;

  /**
   * Checks the numbers.
   *
   * @param duration degrees of the crank for which they are open, 60 to 180
   * @param area open area at bottom dead centre, more than zero
   * @param pull by how much the pressure in the cylinder is below ambient while they are open
   * @throws IllegalArgumentException if a number is out of range
   */
  public Transfer {
    Checks.within("duration of the transfer ports in degrees", duration, 60, 180);
    Checks.that(
        area.squareMillimetres() > 0, "area of the transfer ports", area, "more than 0 mm²");
    Checks.that(pull.pascals() <= MOST_PULL, "pull behind the transfer ports", pull, "0 to 50 kPa");
  }
}
