package dev.jetting.core.mixture;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Setting;
import java.util.Objects;

/**
 * Everything that decides the mixture: an engine, the setting of its carburettor, the air of the
 * day and the fuel in the tank.
 *
 * @param engine the engine
 * @param setting the setting of its carburettor
 * @param air the air of the day
 * @param fuel the fuel in the tank, at the temperature of the air
 */
public record Setup(Engine engine, Setting setting, Air air, Fuel fuel) {

  /**
   * Checks for nulls.
   *
   * @param engine the engine
   * @param setting the setting of its carburettor
   * @param air the air of the day
   * @param fuel the fuel in the tank, at the temperature of the air
   */
  public Setup {
    Objects.requireNonNull(engine, "engine");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(fuel, "fuel");
  }

  /**
   * This setup with another setting.
   *
   * @param other the setting
   * @return the changed setup
   */
  public Setup withSetting(Setting other) {
    return new Setup(engine, other, air, fuel);
  }

  /**
   * This setup with another engine.
   *
   * @param other the engine
   * @return the changed setup
   */
  public Setup withEngine(Engine other) {
    return new Setup(other, setting, air, fuel);
  }

  /**
   * This setup on another day.
   *
   * @param other the air
   * @return the changed setup
   */
  public Setup withAir(Air other) {
    return new Setup(engine, setting, other, fuel);
  }

  /**
   * This setup with another fuel.
   *
   * @param other the fuel
   * @return the changed setup
   */
  public Setup withFuel(Fuel other) {
    return new Setup(engine, setting, air, other);
  }
}
