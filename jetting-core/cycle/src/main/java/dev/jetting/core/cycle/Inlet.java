package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Pressure;

/**
 * How the crankcase is opened to the carburettor: by the piston's skirt, by a rotary valve or by a
 * reed. Angles are degrees of the crank; areas are geometric, before a discharge coefficient.
 */
public sealed interface Inlet {

  /** {@return the greatest open area} */
  Area area();

  /**
   * A port in the cylinder wall that the piston's skirt uncovers about top dead centre.
   *
   * @param duration degrees for which it is open, 60 to 240; half of them before top dead centre
   * @param area open area at top dead centre, more than zero
   */
  record PistonPort(double duration, Area area) implements Inlet {

    /**
     * Checks the numbers.
     *
     * @param duration degrees for which it is open, 60 to 240
     * @param area open area at top dead centre, more than zero
     * @throws IllegalArgumentException if a number is out of range
     */
    public PistonPort {
      Checks.within("duration of the inlet port in degrees", duration, 60, 240);
      Inlet.positive(area);
    }
  }

  /**
   * A disc or drum on the crankshaft. Its area rises and falls evenly over the ramp and is full in
   * between.
   *
   * @param opensBefore degrees before top dead centre at which it begins to open, 60 to 180
   * @param closesAfter degrees after top dead centre at which it is shut, 20 to 120
   * @param ramp degrees from shut to full, 5 to 60
   * @param area greatest open area, more than zero
   */
  record RotaryValve(double opensBefore, double closesAfter, double ramp, Area area)
      implements Inlet {

    /**
     * Checks the numbers.
     *
     * @param opensBefore degrees before top dead centre at which it begins to open, 60 to 180
     * @param closesAfter degrees after top dead centre at which it is shut, 20 to 120
     * @param ramp degrees from shut to full, 5 to 60
     * @param area greatest open area, more than zero
     * @throws IllegalArgumentException if a number is out of range
     */
    public RotaryValve {
      Checks.within("opening of the rotary valve in degrees", opensBefore, 60, 180);
      Checks.within("closing of the rotary valve in degrees", closesAfter, 20, 120);
      Checks.within("ramp of the rotary valve in degrees", ramp, 5, 60);
      Inlet.positive(area);
    }
  }

  /**
   * Petals that the pressure difference lifts. Their mass is left out: they follow the pressure at
   * once, which a real petal does at low speed only.
   *
   * @param area greatest open area, more than zero
   * @param fullyOpenAt pressure difference that lifts the petals fully, more than zero; they open
   *     in proportion to it
   */
  record Reed(Area area, Pressure fullyOpenAt) implements Inlet {

    /**
     * Checks the numbers.
     *
     * @param area greatest open area, more than zero
     * @param fullyOpenAt pressure difference that lifts the petals fully, more than zero
     * @throws IllegalArgumentException if a number is out of range
     */
    public Reed {
      Inlet.positive(area);
      Checks.that(
          fullyOpenAt.pascals() > 0,
          "pressure that opens the reed fully",
          fullyOpenAt,
          "more than 0 Pa");
    }
  }

  private static void positive(Area area) {
    Checks.that(area.squareMillimetres() > 0, "area of the inlet", area, "more than 0 mm²");
  }
}
