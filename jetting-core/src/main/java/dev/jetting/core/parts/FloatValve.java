package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import java.util.Objects;

/**
 * The valve that lets fuel into the float chamber, fed by gravity.
 *
 * @param seat diameter of the seat, more than zero
 * @param supplyHead height of the fuel in an almost empty tank over the valve, in mm of fuel, more
 *     than zero
 * @param discharge discharge coefficient of valve, tap and hose together, more than 0 and at most 1
 */
public record FloatValve(Diameter seat, Length supplyHead, Coefficient discharge) {

  /**
   * Checks the numbers.
   *
   * @param seat diameter of the seat, more than zero
   * @param supplyHead height of the fuel in an almost empty tank over the valve, in mm of fuel,
   *     more than zero
   * @param discharge discharge coefficient of valve, tap and hose together, more than 0 and at most
   *     1
   * @throws IllegalArgumentException if one is out of range
   */
  public FloatValve {
    Objects.requireNonNull(discharge, "discharge");
    Objects.requireNonNull(seat, "seat");
    Checks.that(
        supplyHead.millimetres() > 0,
        "supply head of the float valve",
        supplyHead,
        "more than 0 mm");
    Checks.that(
        discharge.value() > 0 && discharge.value() <= 1,
        "discharge coefficient of the float valve",
        discharge,
        "more than 0 and at most 1");
  }
}
