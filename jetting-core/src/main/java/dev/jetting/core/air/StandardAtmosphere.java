package dev.jetting.core.air;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Altitude;
import dev.jetting.units.Density;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;

/**
 * The standard atmosphere of ISO 2533:1975, from −5000 m (addendum 2) to 11 000 m geopotential. In
 * this layer it is the US Standard Atmosphere 1976 too. It has 288.15 K and 101 325 Pa at sea
 * level, 6.5 K less per geopotential kilometre, and dry air of 287.05287 J/(kg K).
 *
 * <p>{@link Altitude} is the geometric height; geopotential height H = r h/(r + h) with r = 6 356
 * 766 m is what the table of the standard runs on, and has its own methods here. Not a weather
 * forecast: the air of a real day is an {@link Air}.
 */
public final class StandardAtmosphere {

  static final double GAS_CONSTANT = 287.05287;

  private static final double SEA_LEVEL_PASCALS = 101_325;
  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double KELVIN_PER_METRE = -0.0065;
  private static final double GRAVITY = 9.80665;
  private static final double EARTH_RADIUS = 6_356_766;
  private static final double LEAST_HEIGHT = -5_000;
  private static final double GREATEST_HEIGHT = 11_000;
  private static final double PRESSURE_EXPONENT = -GRAVITY / (GAS_CONSTANT * KELVIN_PER_METRE);
  private static final double SEA_LEVEL_DENSITY =
      SEA_LEVEL_PASCALS / (GAS_CONSTANT * SEA_LEVEL_KELVIN);

  private StandardAtmosphere() {}

  /**
   * The pressure at a height.
   *
   * @param altitude −4996 m to 11 019 m; not null
   * @return the standard pressure
   * @throws IllegalArgumentException if the altitude is out of range
   */
  public static Pressure pressure(Altitude altitude) {
    return Pressure.ofPascals(
        SEA_LEVEL_PASCALS * StrictMath.pow(temperatureRatio(altitude), PRESSURE_EXPONENT));
  }

  /**
   * The temperature at a height.
   *
   * @param altitude −4996 m to 11 019 m; not null
   * @return the standard temperature
   * @throws IllegalArgumentException if the altitude is out of range
   */
  public static Temperature temperature(Altitude altitude) {
    return Temperature.ofKelvin(SEA_LEVEL_KELVIN * temperatureRatio(altitude));
  }

  /**
   * The density at a height.
   *
   * @param altitude −4996 m to 11 019 m; not null
   * @return the standard density
   * @throws IllegalArgumentException if the altitude is out of range
   */
  public static Density density(Altitude altitude) {
    return Density.ofKilogramsPerCubicMetre(
        SEA_LEVEL_DENSITY * StrictMath.pow(temperatureRatio(altitude), PRESSURE_EXPONENT - 1));
  }

  /**
   * The height at which the standard atmosphere has a pressure: the inverse of {@link #pressure}.
   *
   * @param pressure about 22.63 kPa to 177.7 kPa; not null
   * @return the pressure altitude
   * @throws IllegalArgumentException if the height is out of range
   */
  public static Altitude pressureAltitude(Pressure pressure) {
    return ofRatio(
        pressure.pascals() / SEA_LEVEL_PASCALS, PRESSURE_EXPONENT, "pressure altitude in m");
  }

  /**
   * The height at which the standard atmosphere is as dense as some air: one number for how thin
   * the air of a day is.
   *
   * @param air the air of the day; not null
   * @return the density altitude
   * @throws IllegalArgumentException if the air is denser or thinner than the standard atmosphere
   *     gets between −5000 m and 11 000 m
   */
  public static Altitude densityAltitude(Air air) {
    return ofRatio(
        air.density().kilogramsPerCubicMetre() / SEA_LEVEL_DENSITY,
        PRESSURE_EXPONENT - 1,
        "density altitude in m");
  }

  /**
   * The geopotential height of a geometric height.
   *
   * @param altitude geometric height above mean sea level, −4996 m to 11 019 m; not null
   * @return geopotential height, m
   * @throws IllegalArgumentException if the altitude is out of range
   */
  public static double geopotentialMetres(Altitude altitude) {
    double h = altitude.metres();
    double geopotential = EARTH_RADIUS * h / (EARTH_RADIUS + h);
    return checkHeight("altitude as geopotential height in m", geopotential);
  }

  /**
   * The geometric height of a geopotential height: the inverse of {@link #geopotentialMetres}.
   *
   * @param metres geopotential height, −5000 m to 11 000 m
   * @return the geometric height above mean sea level
   * @throws IllegalArgumentException if the height is out of range or not a number
   */
  public static Altitude ofGeopotentialMetres(double metres) {
    checkHeight("geopotential height in m", metres);
    return Altitude.ofMetres(EARTH_RADIUS * metres / (EARTH_RADIUS - metres));
  }

  private static double checkHeight(String quantity, double metres) {
    return Checks.within(quantity, metres, LEAST_HEIGHT, GREATEST_HEIGHT);
  }

  private static double temperatureRatio(Altitude altitude) {
    return 1 + KELVIN_PER_METRE * geopotentialMetres(altitude) / SEA_LEVEL_KELVIN;
  }

  private static Altitude ofRatio(double ratio, double exponent, String quantity) {
    double temperatureRatio = StrictMath.pow(ratio, 1 / exponent);
    double metres = (temperatureRatio - 1) * SEA_LEVEL_KELVIN / KELVIN_PER_METRE;
    checkHeight(quantity, metres);
    return ofGeopotentialMetres(metres);
  }
}
