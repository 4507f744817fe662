package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Length;

/**
 * The way from the slide to the inlet.
 *
 * @param length its length, more than zero
 * @param area its cross section, more than zero
 * @param inertia whether the gas in it has inertia, or follows the pressure at once
 */
public record IntakeTract(Length length, Area area, Inertia inertia) {

  /** Whether the gas in the tract has inertia. */
  public enum Inertia {
    /** One volume in which the pressure is the same everywhere. */
    LEFT_OUT,
    /** A column of gas between two halves of the volume: the first resonance of the tract. */
    COUNTED
  }

  /**
   * Checks the numbers.
   *
   * @param length its length, more than zero
   * @param area its cross section, more than zero
   * @param inertia whether the gas in it has inertia
   * @throws IllegalArgumentException if a number is zero
   */
  public IntakeTract {
    Checks.that(length.millimetres() > 0, "length of the intake tract", length, "more than 0 mm");
    Checks.that(
        area.squareMillimetres() > 0, "cross section of the intake tract", area, "more than 0 mm²");
  }

  /** {@return its volume in m³} */
  double volume() {
    return length.millimetres() * 1e-3 * area.squareMillimetres() * 1e-6;
  }
}
