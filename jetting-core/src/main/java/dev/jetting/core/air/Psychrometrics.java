package dev.jetting.core.air;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Ways to state how much water is in the air, turned into one another: relative humidity, dew
 * point, wet bulb, humidity ratio, specific volume. Formulas of ASHRAE Fundamentals 2017, chapter
 * 1, for ideal gases.
 *
 * <p>Saturation pressure here, and in {@link AirFormula#IDEAL_GAS}, is that of Hyland and Wexler
 * (ASHRAE equations 5 and 6). {@link AirFormula#CIPM_2007} has a formula of its own, which lies
 * within 0.02 % of it from 0 °C to 60 °C. Relative humidity and dew point count against liquid
 * water at every temperature; below 0 °C that continues the published formula to supercooled water,
 * at −40 °C about 1 % from newer measurements.
 *
 * <p>Not for the density that a mixture is worked out with: that is {@link Air#density()}.
 */
public final class Psychrometrics {

  /** Molar mass of water over that of dry air: ASHRAE equation 20. */
  static final double VAPOUR_TO_DRY_AIR = 0.621945;

  /** Gas constant of dry air, J/(kg K): ASHRAE equation 1. Slightly apart from ISO 2533. */
  private static final double GAS_CONSTANT_DRY_AIR = 287.042;

  private static final double LEAST_CELSIUS = -60;
  private static final double GREATEST_CELSIUS = 100;
  private static final double FREEZING_CELSIUS = 0;
  private static final double LEAST_KELVIN = 273.15 + LEAST_CELSIUS;
  private static final double LEAST_VAPOUR = SaturationPressure.overWater(LEAST_KELVIN);

  /** What saturated air may miss by when it is worked out. */
  private static final double ROUNDING = 1e-9;

  private Psychrometrics() {}

  /**
   * Saturation pressure over liquid water, ASHRAE equation 6.
   *
   * @param temperature −60 °C to 100 °C, below 0 °C for supercooled water; not null
   * @return the vapour pressure of saturated air
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public static Pressure saturationPressureOverWater(Temperature temperature) {
    return Pressure.ofPascals(overWater("temperature in °C", temperature));
  }

  /**
   * Saturation pressure over ice, ASHRAE equation 5.
   *
   * @param temperature −60 °C to 0.01 °C; not null
   * @return the vapour pressure of air saturated over ice
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public static Pressure saturationPressureOverIce(Temperature temperature) {
    Checks.within("temperature over ice in °C", temperature.celsius(), LEAST_CELSIUS, 0.01);
    return Pressure.ofPascals(SaturationPressure.overIce(temperature.kelvin()));
  }

  /**
   * The temperature to which air must cool for its water to start condensing, over liquid water.
   *
   * @param air temperature of the air, −60 °C to 100 °C; not null
   * @param humidity relative humidity, above 0; not null
   * @return the dew point
   * @throws IllegalArgumentException if the temperature is out of range or the dew point below −60
   *     °C, as for dry air, which has none
   */
  public static Temperature dewPoint(Temperature air, RelativeHumidity humidity) {
    double vapour = humidity.share() * overWater("air temperature in °C", air);
    Checks.that(
        vapour >= LEAST_VAPOUR * (1 - ROUNDING),
        () -> Sentence.of("error.name.relative-humidity"),
        humidity,
        () -> Sentence.of("error.dew-point"));
    return Temperature.ofKelvin(saturatedAt(vapour, air.kelvin()));
  }

  /**
   * The relative humidity of air with a known dew point: the inverse of {@link #dewPoint}.
   *
   * @param air temperature of the air, −60 °C to 100 °C; not null
   * @param dewPoint −60 °C to the temperature of the air; not null
   * @return the relative humidity
   * @throws IllegalArgumentException if a temperature is out of range
   */
  public static RelativeHumidity humidityFromDewPoint(Temperature air, Temperature dewPoint) {
    double saturated = overWater("air temperature in °C", air);
    Checks.within("dew point in °C", dewPoint.celsius(), LEAST_CELSIUS, air.celsius());
    return share(SaturationPressure.overWater(dewPoint.kelvin()) / saturated);
  }

  /**
   * The relative humidity of air from a wet-bulb thermometer; below 0 °C the bulb is taken as iced.
   *
   * @param air temperature of the air, −60 °C to 100 °C; not null
   * @param wetBulb wet-bulb temperature, at most that of the air; not null
   * @param pressure absolute pressure, above the saturation pressure at the wet bulb; not null
   * @return the relative humidity
   * @throws IllegalArgumentException if a temperature is out of range, or no air can be that dry or
   *     that damp
   */
  public static RelativeHumidity humidityFromWetBulb(
      Temperature air, Temperature wetBulb, Pressure pressure) {
    double ratio = humidityRatioFromWetBulb(air, wetBulb, pressure);
    double vapour = pressure.pascals() * ratio / (VAPOUR_TO_DRY_AIR + ratio);
    return share(vapour / overWater("air temperature in °C", air));
  }

  /**
   * The mass of water over the mass of dry air, from a wet-bulb thermometer: ASHRAE equations 33
   * (wet bulb at 0 °C or above) and 35 (below, iced bulb).
   *
   * @param air temperature of the air, −60 °C to 100 °C; not null
   * @param wetBulb wet-bulb temperature, at most that of the air; not null
   * @param pressure absolute pressure, above the saturation pressure at the wet bulb; not null
   * @return kg of water in a kg of dry air
   * @throws IllegalArgumentException if a temperature is out of range, or no air can be so dry
   */
  public static double humidityRatioFromWetBulb(
      Temperature air, Temperature wetBulb, Pressure pressure) {
    overWater("air temperature in °C", air);
    double t = air.celsius();
    double w = Checks.within("wet-bulb temperature in °C", wetBulb.celsius(), LEAST_CELSIUS, t);
    boolean iced = w < FREEZING_CELSIUS;
    double saturated =
        iced
            ? SaturationPressure.overIce(wetBulb.kelvin())
            : SaturationPressure.overWater(wetBulb.kelvin());
    double saturatedRatio = ratio(saturated, pressure);
    double ratio =
        iced
            ? ((2830 - 0.24 * w) * saturatedRatio - 1.006 * (t - w)) / (2830 + 1.86 * t - 2.1 * w)
            : ((2501 - 2.326 * w) * saturatedRatio - 1.006 * (t - w))
                / (2501 + 1.86 * t - 4.186 * w);
    Checks.that(ratio >= 0, "wet-bulb temperature in °C", w, "that of dry air or above");
    return ratio;
  }

  /**
   * The mass of water over the mass of dry air: ASHRAE equation 20.
   *
   * @param air temperature of the air, −60 °C to 100 °C; not null
   * @param humidity relative humidity; not null
   * @param pressure absolute pressure, above the vapour pressure; not null
   * @return kg of water in a kg of dry air
   * @throws IllegalArgumentException if the temperature is out of range or the water would boil
   */
  public static double humidityRatio(
      Temperature air, RelativeHumidity humidity, Pressure pressure) {
    return ratio(humidity.share() * overWater("air temperature in °C", air), pressure);
  }

  /**
   * The volume of moist air that holds a kilogram of dry air: ASHRAE equation 26.
   *
   * @param air temperature of the air; not null
   * @param humidityRatio kg of water in a kg of dry air, 0 to 10
   * @param pressure absolute pressure, above 0; not null
   * @return m³ for a kg of dry air
   * @throws IllegalArgumentException if humidity ratio or pressure is out of range
   */
  public static double specificVolume(Temperature air, double humidityRatio, Pressure pressure) {
    Checks.within("humidity ratio in kg/kg", humidityRatio, 0, 10);
    Checks.that(pressure.pascals() > 0, "pressure", pressure, "above 0 Pa");
    return GAS_CONSTANT_DRY_AIR
        * air.kelvin()
        * (1 + humidityRatio / VAPOUR_TO_DRY_AIR)
        / pressure.pascals();
  }

  private static double overWater(String quantity, Temperature temperature) {
    Checks.within(quantity, temperature.celsius(), LEAST_CELSIUS, GREATEST_CELSIUS);
    return SaturationPressure.overWater(temperature.kelvin());
  }

  private static double ratio(double vapour, Pressure pressure) {
    Checks.that(vapour < pressure.pascals(), "pressure", pressure, "above the vapour pressure");
    return VAPOUR_TO_DRY_AIR * vapour / (pressure.pascals() - vapour);
  }

  /** Rounding may carry saturated air a hair beyond 1. */
  private static RelativeHumidity share(double share) {
    Checks.that(share <= 1 + ROUNDING, "relative humidity as a share", share, "up to 1");
    return RelativeHumidity.ofShare(Math.min(share, 1));
  }

  /** The temperature, K, at which a vapour pressure saturates: the logarithm is almost straight. */
  private static double saturatedAt(double vapour, double greatestKelvin) {
    double target = StrictMath.log(vapour);
    if (vapour <= LEAST_VAPOUR) {
      return LEAST_KELVIN;
    }
    if (vapour >= SaturationPressure.overWater(greatestKelvin)) {
      return greatestKelvin;
    }
    return new BracketingNthOrderBrentSolver(1e-15, 1e-11, 1e-15, 5)
        .solve(
            100,
            kelvin -> StrictMath.log(SaturationPressure.overWater(kelvin)) - target,
            LEAST_KELVIN,
            greatestKelvin);
  }
}
