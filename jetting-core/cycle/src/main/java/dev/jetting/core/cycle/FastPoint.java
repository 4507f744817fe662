package dev.jetting.core.cycle;

import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.MassFlow;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * The mixture at one throttle opening and speed by {@link FastCycle}; flows are means over a turn.
 *
 * @param throttle throttle opening by lift
 * @param speed engine speed
 * @param air moist air
 * @param mainFuel fuel and oil through main jet and needle jet
 * @param pilotFuel fuel and oil through the pilot jet
 * @param lambda the mixture; {@link dev.jetting.core.mixture.MixturePoint#LEANEST} where no fuel to
 *     speak of flows
 */
public record FastPoint(
    ThrottleOpening throttle,
    EngineSpeed speed,
    MassFlow air,
    MassFlow mainFuel,
    MassFlow pilotFuel,
    Lambda lambda) {

  /**
   * Checks for nulls.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed
   * @param air moist air
   * @param mainFuel fuel and oil through main jet and needle jet
   * @param pilotFuel fuel and oil through the pilot jet
   * @param lambda the mixture
   */
  public FastPoint {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(mainFuel, "mainFuel");
    Objects.requireNonNull(pilotFuel, "pilotFuel");
    Objects.requireNonNull(lambda, "lambda");
  }
}
