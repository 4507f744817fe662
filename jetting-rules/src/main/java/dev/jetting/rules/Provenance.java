package dev.jetting.rules;

import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Intake;
import dev.jetting.units.JetFlow;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a setting comes from: what the same jets, needle and turns were proven with, and what the
 * numbers on the jets mean. What nobody told is empty, and stops no report.
 *
 * <p>Not for readings taken on the machine.
 *
 * @param fuel the fuel that the setting was proven with
 * @param intake the intake that it was proven behind
 * @param air the air that it was proven in
 * @param carburettor the carburettor that it was proven in, on this engine
 * @param pilotJetFlow the number on the pilot jet, where it is a flow; empty too where it is a bore
 * @param mainJetFlow the number on the main jet, where it is a flow; empty too where it is a bore
 */
public record Provenance(
    Optional<Fuel> fuel,
    Optional<Intake> intake,
    Optional<Air> air,
    Optional<Carburettor> carburettor,
    Optional<JetFlow> pilotJetFlow,
    Optional<JetFlow> mainJetFlow) {

  private static final Provenance UNKNOWN =
      new Provenance(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * Checks for nulls.
   *
   * @param fuel the fuel that the setting was proven with
   * @param intake the intake that it was proven behind
   * @param air the air that it was proven in
   * @param carburettor the carburettor that it was proven in, on this engine
   * @param pilotJetFlow the number on the pilot jet, where it is a flow
   * @param mainJetFlow the number on the main jet, where it is a flow
   */
  public Provenance {
    Objects.requireNonNull(fuel, "fuel");
    Objects.requireNonNull(intake, "intake");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(carburettor, "carburettor");
    Objects.requireNonNull(pilotJetFlow, "pilotJetFlow");
    Objects.requireNonNull(mainJetFlow, "mainJetFlow");
  }

  /** {@return nothing told} */
  public static Provenance unknown() {
    return UNKNOWN;
  }
}
