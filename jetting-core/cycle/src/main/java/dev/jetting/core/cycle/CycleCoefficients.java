package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;

/**
 * What the equations of the cycle assume beyond the coefficients of the carburettor.
 *
 * @param portDischarge discharge coefficient of inlet and transfer ports, 0.3 to 1
 * @param reversedShare share of the suction at the needle jet that a stream backwards makes, 0 to
 *     1: how much fuel blown-back air takes again
 * @param pilotSlip speed of the air by that of the fuel in the pilot's outlet, 1 to 10
 * @param fuelColumn length of the fuel between main jet and needle jet in mm, 0 to 1000; its
 *     inertia is counted with that of the jets; at 0 none at all is
 * @param smoothing pressure difference in Pa below which a flow is made smooth through zero, 0.01
 *     to 1000
 * @param tolerance relative error that the integrator aims at in each step, 1e-12 to 1e-4
 */
public record CycleCoefficients(
    Coefficient portDischarge,
    Coefficient reversedShare,
    Coefficient pilotSlip,
    Coefficient fuelColumn,
    Coefficient smoothing,
    Coefficient tolerance) {

  private static final CycleCoefficients ASSUMED =
      new CycleCoefficients(
          Coefficient.assumed(0.7, "1", "a sharp-edged port; not measured"),
          Coefficient.assumed(0.5, "1", "between no fuel and as much as forwards; not measured"),
          Coefficient.assumed(1, "1", "fuel and air in the pilot's outlet move together"),
          Coefficient.assumed(25, "mm", "usual height from main jet to needle jet"),
          Coefficient.assumed(5, "Pa", "its effect on the mixture is below a thousandth"),
          Coefficient.assumed(1e-8, "1", "the periodic state then closes to a millionth"));

  /**
   * Checks the ranges.
   *
   * @param portDischarge discharge coefficient of inlet and transfer ports, 0.3 to 1
   * @param reversedShare share of the suction that a stream backwards makes, 0 to 1
   * @param pilotSlip speed of the air by that of the fuel in the pilot's outlet, 1 to 10
   * @param fuelColumn length of the fuel between main jet and needle jet in mm, 0 to 1000
   * @param smoothing pressure difference in Pa below which a flow is made smooth, 0.01 to 1000
   * @param tolerance relative error that the integrator aims at, 1e-12 to 1e-4
   * @throws IllegalArgumentException if one is out of range
   */
  public CycleCoefficients {
    Checks.within("discharge coefficient of the ports", portDischarge.value(), 0.3, 1);
    Checks.within("share of suction backwards", reversedShare.value(), 0, 1);
    Checks.within("slip in the pilot's outlet", pilotSlip.value(), 1, 10);
    Checks.within("length of the fuel column in mm", fuelColumn.value(), 0, 1000);
    Checks.within("smoothing in Pa", smoothing.value(), 0.01, 1000);
    Checks.within("tolerance of the integrator", tolerance.value(), 1e-12, 1e-4);
  }

  /** {@return the project's own assumed set} */
  public static CycleCoefficients assumed() {
    return ASSUMED;
  }

  /**
   * Returns these coefficients with another discharge coefficient of the ports.
   *
   * @param other discharge coefficient, 0.3 to 1
   * @return the changed coefficients
   */
  public CycleCoefficients withPortDischarge(Coefficient other) {
    return new CycleCoefficients(other, reversedShare, pilotSlip, fuelColumn, smoothing, tolerance);
  }

  /**
   * Returns these coefficients with another share of suction backwards.
   *
   * @param other share, 0 to 1
   * @return the changed coefficients
   */
  public CycleCoefficients withReversedShare(Coefficient other) {
    return new CycleCoefficients(portDischarge, other, pilotSlip, fuelColumn, smoothing, tolerance);
  }

  /**
   * Returns these coefficients with another slip in the pilot's outlet.
   *
   * @param other slip, 1 to 10
   * @return the changed coefficients
   */
  public CycleCoefficients withPilotSlip(Coefficient other) {
    return new CycleCoefficients(
        portDischarge, reversedShare, other, fuelColumn, smoothing, tolerance);
  }

  /**
   * Returns these coefficients with another fuel column.
   *
   * @param other length in mm, 0 to 1000; at 0 the fuel has no inertia
   * @return the changed coefficients
   */
  public CycleCoefficients withFuelColumn(Coefficient other) {
    return new CycleCoefficients(
        portDischarge, reversedShare, pilotSlip, other, smoothing, tolerance);
  }

  /**
   * Returns these coefficients with another smoothing.
   *
   * @param other pressure difference in Pa, 0.01 to 1000
   * @return the changed coefficients
   */
  public CycleCoefficients withSmoothing(Coefficient other) {
    return new CycleCoefficients(
        portDischarge, reversedShare, pilotSlip, fuelColumn, other, tolerance);
  }

  /**
   * Returns these coefficients with another tolerance.
   *
   * @param other relative error that the integrator aims at, 1e-12 to 1e-4
   * @return the changed coefficients
   */
  public CycleCoefficients withTolerance(Coefficient other) {
    return new CycleCoefficients(
        portDischarge, reversedShare, pilotSlip, fuelColumn, smoothing, other);
  }
}
