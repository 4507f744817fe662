package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.MassFlow;
import java.util.Objects;

/**
 * The closed throttle after a long open run: engine speed still high, the engine at its hottest,
 * and only the pilot circuit to bring fuel, and oil with it.
 *
 * <p>Fuel that the needle jet may still give behind the shut slide is not counted, neither in λ nor
 * in the fuel a turn. The signal there is not well known, and leaving it out errs on the safe side.
 *
 * @param speed engine speed
 * @param airFlow moist air
 * @param pilotFuelFlow fuel and oil through the pilot jet
 * @param lambda mixture on the pilot's fuel alone; {@link MixturePoint#LEANEST} without fuel
 * @param fuelShareOfOpen fuel and oil a turn by that at full throttle at the same speed; 0 where
 *     none flows at full throttle
 */
public record Overrun(
    EngineSpeed speed,
    MassFlow airFlow,
    MassFlow pilotFuelFlow,
    Lambda lambda,
    double fuelShareOfOpen) {

  /**
   * Checks the share.
   *
   * @param speed engine speed
   * @param airFlow moist air
   * @param pilotFuelFlow fuel and oil through the pilot jet
   * @param lambda mixture on the pilot's fuel alone
   * @param fuelShareOfOpen fuel and oil a turn by that at full throttle at the same speed
   * @throws IllegalArgumentException if the share is below zero or not finite
   */
  public Overrun {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(airFlow, "airFlow");
    Objects.requireNonNull(pilotFuelFlow, "pilotFuelFlow");
    Objects.requireNonNull(lambda, "lambda");
    Checks.that(
        fuelShareOfOpen >= 0 && fuelShareOfOpen < Double.POSITIVE_INFINITY,
        "fuel on the overrun by that at full throttle",
        fuelShareOfOpen,
        "a finite number, 0 or more");
  }
}
