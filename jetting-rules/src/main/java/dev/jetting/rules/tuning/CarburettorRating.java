package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FuelConsumption;
import dev.jetting.units.MassFlow;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * What a carburettor does for an engine: power lost by its restriction, signal where the engine
 * turns slowly, and consumption when cruising. A bigger bore loses less and gives its jets a weaker
 * signal.
 *
 * <p>For comparing bores on one engine; the power itself is not predicted.
 *
 * @param carburettor the carburettor
 * @param powerLost share of the air at the power peak that its restriction costs, 0 to 1; near
 *     enough, of the power
 * @param lowSignal depression at the needle jet at a quarter throttle and a third of the peak
 *     speed, by the head of fuel that it must lift with the floats as they are set; {@link
 *     Double#MAX_VALUE} where it need lift none; below about 2 the needle jet feeds unsteadily
 *     (assumed)
 * @param cruiseThrottle throttle opening that gives the cruising load
 * @param cruiseConsumption consumption when cruising
 */
public record CarburettorRating(
    Carburettor carburettor,
    double powerLost,
    double lowSignal,
    ThrottleOpening cruiseThrottle,
    FuelConsumption cruiseConsumption) {

  /**
   * Checks for nulls.
   *
   * @param carburettor the carburettor
   * @param powerLost share of the air at the power peak that its restriction costs, 0 to 1
   * @param lowSignal depression at the needle jet at a quarter throttle and a third of the peak
   *     speed, by the head of fuel that it must lift
   * @param cruiseThrottle throttle opening that gives the cruising load
   * @param cruiseConsumption consumption when cruising
   */
  public CarburettorRating {
    Objects.requireNonNull(carburettor, "carburettor");
    Objects.requireNonNull(cruiseThrottle, "cruiseThrottle");
    Objects.requireNonNull(cruiseConsumption, "cruiseConsumption");
  }

  /**
   * A cruising load.
   *
   * @param speed engine speed, more than zero
   * @param airFlow air that the load asks for, more than zero
   * @param kilometresPerHour road speed, 1 to 400
   */
  public record Cruise(EngineSpeed speed, MassFlow airFlow, double kilometresPerHour) {
    /**
     * Checks the numbers.
     *
     * @param speed engine speed, more than zero
     * @param airFlow air that the load asks for, more than zero
     * @param kilometresPerHour road speed, 1 to 400
     * @throws IllegalArgumentException if one is out of range
     */
    public Cruise {
      if (speed.rpm() <= 0
          || airFlow.gramsPerSecond() <= 0
          || !(kilometresPerHour >= 1 && kilometresPerHour <= 400)) {
        throw new IllegalArgumentException(
            "cruise at "
                + speed
                + " with "
                + airFlow
                + " of air: allowed more than 0 of both, and a road speed of 1 to 400 km/h");
      }
    }
  }

  /**
   * Rates the carburettor of a setup.
   *
   * @param setup engine and carburettor, jetted as it would be ridden
   * @param cruise the cruising load
   * @return the rating
   * @throws IllegalArgumentException if even full throttle does not pass the cruising load's air
   */
  public static CarburettorRating of(Setup setup, Cruise cruise) {
    return CarburettorRater.rate(setup, cruise);
  }
}
