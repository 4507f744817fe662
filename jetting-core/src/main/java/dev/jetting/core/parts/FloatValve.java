package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
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
        () -> Sentence.of("error.name.supply-head"),
        supplyHead,
        () -> Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "mm")));
    Checks.that(
        discharge.value() > 0 && discharge.value() <= 1,
        () -> Sentence.of("error.name.discharge"),
        discharge,
        () -> Sentence.of("error.more-than-at-most").with("low", 0).with("most", 1));
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
