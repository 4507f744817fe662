package dev.jetting.rules.json;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.TemperatureDifference;
import java.util.Optional;

/**
 * A setup in JSON.
 *
 * @param engine the engine
 * @param setting the carburettor with the parts in it
 * @param air the air of the day
 * @param fuel the fuel in the tank
 * @param fuelWarmerBy how much warmer than the air the fuel in the float chamber is; left out where
 *     it is as warm as the air, which is assumed
 */
record SetupForm(
    Engine engine,
    Setting setting,
    Air air,
    Fuel fuel,
    Optional<TemperatureDifference> fuelWarmerBy) {

  static SetupForm of(Setup setup) {
    return new SetupForm(
        setup.engine(),
        setup.setting(),
        setup.air(),
        setup.fuel(),
        Optional.of(setup.fuelWarmerBy()).filter(k -> !k.equals(Setup.ASSUMED_FUEL_WARMER_BY)));
  }

  Setup setup() {
    return Setup.builder()
        .engine(engine)
        .setting(setting)
        .air(air)
        .fuel(fuel)
        .fuelWarmerBy(fuelWarmerBy.orElse(Setup.ASSUMED_FUEL_WARMER_BY))
        .build();
  }
}
