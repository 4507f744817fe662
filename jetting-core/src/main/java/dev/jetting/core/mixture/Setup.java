package dev.jetting.core.mixture;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Density;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Everything that decides the mixture: an engine, the setting of its carburettor, the air of the
 * day, the fuel in the tank and how warm it is in the float chamber.
 *
 * @param engine the engine
 * @param setting the setting of its carburettor
 * @param air the air of the day
 * @param fuel the fuel in the tank
 * @param fuelWarmerBy how much warmer than the air the fuel in the float chamber is, −20 to 80 K;
 *     see {@link #ASSUMED_FUEL_WARMER_BY}
 */
public record Setup(
    Engine engine, Setting setting, Air air, Fuel fuel, TemperatureDifference fuelWarmerBy) {

  /**
   * The fuel in the float chamber is as warm as the air (assumed). An engine warms its float
   * chamber, and warm fuel is thinner. The true mixture is then richer at small and middle
   * openings, by several per cent. At full throttle it is leaner, by less than one. So the
   * assumption errs on the safe side, and it is true of the first minutes of a ride.
   */
  public static final TemperatureDifference ASSUMED_FUEL_WARMER_BY =
      TemperatureDifference.ofKelvin(0);

  private static final double LEAST = -20;
  private static final double MOST = 80;

  /**
   * Checks for nulls, and how warm the fuel is.
   *
   * @param engine the engine
   * @param setting the setting of its carburettor
   * @param air the air of the day
   * @param fuel the fuel in the tank
   * @param fuelWarmerBy how much warmer than the air the fuel in the float chamber is
   * @throws IllegalArgumentException if the fuel is more than 20 K colder or 80 K warmer than the
   *     air
   */
  public Setup {
    Objects.requireNonNull(engine, "engine");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(fuel, "fuel");
    Checks.that(
        fuelWarmerBy.kelvin() >= LEAST && fuelWarmerBy.kelvin() <= MOST,
        () -> Sentence.of("error.name.fuel-warmer"),
        fuelWarmerBy,
        () ->
            Sentence.of("error.to")
                .with("low", new Sentence.Amount(-20, "K"))
                .with("high", new Sentence.Amount(80, "K")));
  }

  /** {@return the temperature of the fuel in the float chamber} */
  public Temperature fuelTemperature() {
    return air.temperature().plus(fuelWarmerBy);
  }

  /**
   * {@return the density of the fuel in the float chamber, oil included}
   *
   * @throws IllegalArgumentException if the fuel is a blend and colder than −40 °C or warmer than
   *     80 °C there
   */
  public Density fuelDensity() {
    return fuel.density(fuelTemperature());
  }

  /**
   * This setup with another setting.
   *
   * @param other the setting
   * @return the changed setup
   */
  public Setup withSetting(Setting other) {
    return new Setup(engine, other, air, fuel, fuelWarmerBy);
  }

  /**
   * This setup with another engine.
   *
   * @param other the engine
   * @return the changed setup
   */
  public Setup withEngine(Engine other) {
    return new Setup(other, setting, air, fuel, fuelWarmerBy);
  }

  /**
   * This setup on another day.
   *
   * @param other the air
   * @return the changed setup, the fuel warmer than that air by as much as before
   */
  public Setup withAir(Air other) {
    return new Setup(engine, setting, other, fuel, fuelWarmerBy);
  }

  /**
   * This setup with another fuel.
   *
   * @param other the fuel
   * @return the changed setup
   */
  public Setup withFuel(Fuel other) {
    return new Setup(engine, setting, air, other, fuelWarmerBy);
  }

  /**
   * This setup with the fuel in the float chamber otherwise warmed.
   *
   * @param other how much warmer than the air it is, −20 to 80 K
   * @return the changed setup
   * @throws IllegalArgumentException if it is more than 20 K colder or 80 K warmer than the air
   */
  public Setup withFuelWarmerBy(TemperatureDifference other) {
    return new Setup(engine, setting, air, fuel, other);
  }

  /** {@return a builder of a setup, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this setup set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.engine = engine;
    builder.setting = setting;
    builder.air = air;
    builder.fuel = fuel;
    builder.fuelWarmerBy = fuelWarmerBy;
    return builder;
  }

  /** Names each component of a setup, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Engine engine;
    private @Nullable Setting setting;
    private @Nullable Air air;
    private @Nullable Fuel fuel;
    private TemperatureDifference fuelWarmerBy = ASSUMED_FUEL_WARMER_BY;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the engine
     * @return this builder
     */
    public Builder engine(Engine value) {
      engine = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the setting of its carburettor
     * @return this builder
     */
    public Builder setting(Setting value) {
      setting = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the air of the day
     * @return this builder
     */
    public Builder air(Air value) {
      air = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the fuel in the tank
     * @return this builder
     */
    public Builder fuel(Fuel value) {
      fuel = value;
      return this;
    }

    /**
     * Sets one component; {@code ASSUMED_FUEL_WARMER_BY} unless set.
     *
     * @param value how much warmer than the air the fuel in the float chamber is, −20 to 80 K; see
     *     {@link #ASSUMED_FUEL_WARMER_BY}
     * @return this builder
     */
    public Builder fuelWarmerBy(TemperatureDifference value) {
      fuelWarmerBy = value;
      return this;
    }

    /**
     * Builds the setup.
     *
     * @return the setup
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Setup build() {
      return new Setup(
          Checks.present("setup", "engine", engine),
          Checks.present("setup", "setting", setting),
          Checks.present("setup", "air", air),
          Checks.present("setup", "fuel", fuel),
          fuelWarmerBy);
    }
  }
}
