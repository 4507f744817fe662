package dev.jetting.core.fuel;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;

/**
 * The kinematic viscosity of a liquid at one temperature.
 *
 * @param temperature where it holds; not null
 * @param viscosity in mm²/s, 0.1 to 1 000 000; not null
 */
public record ViscosityPoint(Temperature temperature, Coefficient viscosity) {

  /**
   * Checks the unit and the range.
   *
   * @param temperature where it holds
   * @param viscosity in mm²/s
   * @throws IllegalArgumentException if the unit is not {@code mm²/s} or the value out of range
   */
  public ViscosityPoint {
    requireNonNull(temperature, "temperature");
    double value = FuelComponent.valueOf("kinematic viscosity", viscosity, FuelComponent.MM2_PER_S);
    Checks.within(() -> Sentence.of("error.name.viscosity-in"), value, 0.1, 1e6);
  }
}
