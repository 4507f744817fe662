package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.VolumeFlow;
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

  private static final double STANDARD_GRAVITY = 9.80665;

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

  /**
   * What it passes, held open, under the head of an almost empty tank: C A √(2 g h), with standard
   * gravity g = 9.80665 m/s² (by definition).
   *
   * @return the flow
   */
  public VolumeFlow greatestFlow() {
    double diameter = seat.millimetres() * 1e-3;
    double area = Math.PI / 4 * diameter * diameter;
    double speed = Math.sqrt(2 * STANDARD_GRAVITY * supplyHead.millimetres() * 1e-3);
    return VolumeFlow.ofCubicMetresPerSecond(discharge.value() * area * speed);
  }
}
