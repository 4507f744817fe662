package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import java.util.Objects;

/**
 * A slide carburettor without the parts that a tuner changes; those are the {@link Setting}.
 *
 * <p>Not for fixed-venturi, constant-depression or diaphragm carburettors.
 *
 * @param id plain name
 * @param bore diameter of the bore at the slide, 5 mm to 80 mm
 * @param needleJetLength length over which needle and needle jet face each other, more than zero
 * @param needleJetHead height of the needle jet's mouth over the fuel level, in mm of fuel
 * @param pilot the pilot circuit
 * @param floatValve the float valve
 * @param flow flow coefficients of the family
 */
public record Carburettor(
    String id,
    Diameter bore,
    Length needleJetLength,
    Length needleJetHead,
    PilotCircuit pilot,
    FloatValve floatValve,
    FlowCoefficients flow) {

  /**
   * Checks the geometry.
   *
   * @param id plain name
   * @param bore diameter of the bore at the slide, 5 mm to 80 mm
   * @param needleJetLength length over which needle and needle jet face each other, more than zero
   * @param needleJetHead height of the needle jet's mouth over the fuel level, in mm of fuel
   * @param pilot the pilot circuit
   * @param floatValve the float valve
   * @param flow flow coefficients of the family
   * @throws IllegalArgumentException if a number is out of range
   */
  public Carburettor {
    Checks.id("carburettor", id);
    Objects.requireNonNull(needleJetHead, "needleJetHead");
    Objects.requireNonNull(pilot, "pilot");
    Objects.requireNonNull(floatValve, "floatValve");
    Objects.requireNonNull(flow, "flow");
    Checks.that(
        bore.millimetres() >= 5 && bore.millimetres() <= 80,
        "bore of carburettor " + id,
        bore,
        "5 mm to 80 mm");
    Checks.that(
        needleJetLength.millimetres() > 0,
        "needle jet length of carburettor " + id,
        needleJetLength,
        "more than 0 mm");
  }
}
