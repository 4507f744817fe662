package dev.jetting.core.air;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Altitude;
import dev.jetting.units.Density;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Objects;

/**
 * The air an engine breathes: pressure, temperature and relative humidity, and what follows from
 * them. Immutable.
 *
 * <p>Relative humidity counts against saturation over liquid water at every temperature, below
 * freezing too, as weather services do. The pressure is the absolute pressure at the place, not the
 * pressure reduced to sea level that a forecast shows.
 *
 * <p>Not for air with fog, rain or fuel in it, nor for exhaust gas. Accepted are 30 kPa to 130 kPa
 * and −60 °C to 60 °C, which holds every place a person rides; the published accuracy of the
 * default formula belongs to a narrower range, see {@link #withinRecommendedRange()}.
 */
public final class Air {

  private static final double LEAST_PRESSURE = 30_000;
  private static final double GREATEST_PRESSURE = 130_000;
  private static final double LEAST_CELSIUS = -60;
  private static final double GREATEST_CELSIUS = 60;

  private final Pressure pressure;
  private final Temperature temperature;
  private final RelativeHumidity humidity;
  private final AirFormula formula;
  private final double vapourMoleFraction;
  private final double density;

  private Air(
      Pressure pressure, Temperature temperature, RelativeHumidity humidity, AirFormula formula) {
    this.pressure = requireNonNull(pressure, "pressure");
    this.temperature = requireNonNull(temperature, "temperature");
    this.humidity = requireNonNull(humidity, "humidity");
    this.formula = requireNonNull(formula, "formula");
    double p =
        Checks.within(
            () -> Sentence.of("error.name.air-pressure"),
            pressure.pascals(),
            LEAST_PRESSURE,
            GREATEST_PRESSURE);
    Checks.within(
        () -> Sentence.of("error.name.air-temperature"),
        temperature.celsius(),
        LEAST_CELSIUS,
        GREATEST_CELSIUS);
    this.vapourMoleFraction = formula.vapourMoleFraction(p, temperature.kelvin(), humidity.share());
    this.density = formula.density(p, temperature.kelvin(), vapourMoleFraction);
  }

  /**
   * Air of a stated state, by the formula {@link AirFormula#CIPM_2007}.
   *
   * @param pressure absolute pressure at the place, 30 kPa to 130 kPa; not null
   * @param temperature −60 °C to 60 °C; not null
   * @param humidity relative humidity over water; not null
   * @return the air
   * @throws IllegalArgumentException if pressure or temperature is out of range
   */
  public static Air of(Pressure pressure, Temperature temperature, RelativeHumidity humidity) {
    return new Air(pressure, temperature, humidity, AirFormula.CIPM_2007);
  }

  /**
   * Air without water vapour, by the formula {@link AirFormula#CIPM_2007}.
   *
   * @param pressure absolute pressure at the place, 30 kPa to 130 kPa; not null
   * @param temperature −60 °C to 60 °C; not null
   * @return the air
   * @throws IllegalArgumentException if pressure or temperature is out of range
   */
  public static Air dry(Pressure pressure, Temperature temperature) {
    return of(pressure, temperature, RelativeHumidity.ofShare(0));
  }

  /**
   * Air at a height, with the pressure that the standard atmosphere has there; a barometer at the
   * place is better, since weather moves the pressure by a few per cent.
   *
   * @param altitude height above mean sea level, up to about 9100 m; not null
   * @param temperature the temperature at the place, not that of the standard atmosphere; −60 °C to
   *     60 °C; not null
   * @param humidity relative humidity over water; not null
   * @return the air
   * @throws IllegalArgumentException if altitude or temperature is out of range
   */
  public static Air at(Altitude altitude, Temperature temperature, RelativeHumidity humidity) {
    return of(StandardAtmosphere.pressure(altitude), temperature, humidity);
  }

  /**
   * The same air by another formula.
   *
   * @param formula how density is worked out; not null
   * @return the air
   */
  public Air withFormula(AirFormula formula) {
    return new Air(pressure, temperature, humidity, formula);
  }

  /** {@return the absolute pressure} */
  public Pressure pressure() {
    return pressure;
  }

  /** {@return the temperature} */
  public Temperature temperature() {
    return temperature;
  }

  /** {@return the relative humidity over water} */
  public RelativeHumidity humidity() {
    return humidity;
  }

  /** {@return how density and vapour are worked out} */
  public AirFormula formula() {
    return formula;
  }

  /** {@return the density of the moist air} */
  public Density density() {
    return Density.ofKilogramsPerCubicMetre(density);
  }

  /** {@return the mass of dry air in a unit mass of this air, above 0 and at most 1} */
  public double dryAirMassFraction() {
    return formula.dryAirMassFraction(vapourMoleFraction);
  }

  /** {@return the share of all molecules that are water, from 0 to below 1} */
  public double vapourMoleFraction() {
    return vapourMoleFraction;
  }

  /** {@return the part of the pressure that the water vapour has} */
  public Pressure vapourPressure() {
    return Pressure.ofPascals(vapourMoleFraction * pressure.pascals());
  }

  /** {@return p/(ρT) of the moist air, J/(kg K)} */
  public double specificGasConstant() {
    return pressure.pascals() / (density * temperature.kelvin());
  }

  /**
   * Whether pressure and temperature lie where the formula is published to hold: for {@link
   * AirFormula#CIPM_2007} 600 hPa to 1100 hPa and 15 °C to 27 °C; the ideal-gas mixture states no
   * such range and always answers true. Outside, the CIPM value is an extrapolation; the ideal-gas
   * mixture stays within 0.3 % of it over all that {@code Air} accepts below 95 % humidity and 40
   * °C.
   *
   * @return whether the published uncertainty applies
   */
  public boolean withinRecommendedRange() {
    double p = pressure.pascals();
    double t = temperature.celsius();
    return formula == AirFormula.IDEAL_GAS
        || (p >= Cipm2007.LEAST_PRESSURE
            && p <= Cipm2007.GREATEST_PRESSURE
            && t >= Cipm2007.LEAST_CELSIUS
            && t <= Cipm2007.GREATEST_CELSIUS);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Air that
        && pressure.equals(that.pressure)
        && temperature.equals(that.temperature)
        && humidity.equals(that.humidity)
        && formula == that.formula;
  }

  @Override
  public int hashCode() {
    // The name of an enum constant hashes alike in every run; the constant itself does not.
    return Objects.hash(pressure, temperature, humidity, formula.name());
  }

  /** {@return pressure, temperature, humidity and formula, for people} */
  @Override
  public String toString() {
    return pressure + ", " + temperature + ", " + humidity + " relative humidity, " + formula;
  }
}
