package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.quantity.Quantities.getQuantity;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.WATT;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Units against their definitions, worked out by a general-purpose units library from base units.
 * Sources: international yard and pound agreement of 1959 (foot 0.3048 m, mile 5280 ft, pound
 * 0.45359237 kg); standard gravity 9.80665 m/s² (CGPM 1901); imperial gallon 4.54609 L and US
 * gallon 231 cubic inches by law; conventional mercury 13595.1 kg/m³ (ISO 31-3, from memory).
 */
class ConversionTest {
  private static final Percentage ROUNDING = Percentage.withPercentage(1e-12);

  private static final Unit<?> FOOT = METRE.multiply(0.3048);
  private static final Unit<?> INCH = FOOT.divide(12);
  private static final Unit<?> MILE = FOOT.multiply(5280);
  private static final Unit<?> POUND = KILOGRAM.multiply(0.45359237);
  private static final Unit<?> GRAVITY = METRE_PER_SQUARE_SECOND.multiply(9.80665);
  private static final Unit<?> MERCURY = KILOGRAM.divide(CUBIC_METRE).multiply(13595.1);
  private static final Unit<?> HOUR = SECOND.multiply(3600);
  private static final Unit<?> MINUTE = SECOND.multiply(60);
  private static final Unit<?> CUBIC_CENTIMETRE = CUBIC_METRE.divide(1_000_000);

  @Test
  void pressure_unitsFollowTheirDefinitions() {
    assertThat(Pressure.ofInchesOfMercury(29.92).pascals())
        .isCloseTo(convert(29.92, MERCURY.multiply(GRAVITY).multiply(INCH), PASCAL), ROUNDING);
    assertThat(Pressure.ofMillimetresOfMercury(760).pascals())
        .isCloseTo(
            convert(760, MERCURY.multiply(GRAVITY).multiply(METRE.divide(1000)), PASCAL), ROUNDING);
    assertThat(Pressure.ofHectopascals(950).pascals())
        .isCloseTo(convert(950, MetricPrefix.HECTO(PASCAL), PASCAL), ROUNDING);
    assertThat(Pressure.ofPascals(101_325).inchesOfMercury())
        .isCloseTo(convert(101_325, PASCAL, MERCURY.multiply(GRAVITY).multiply(INCH)), ROUNDING);
  }

  @Test
  void temperature_unitsFollowTheirDefinitions() {
    Unit<?> fahrenheitDegree = KELVIN.multiply(5).divide(9);

    assertThat(Temperature.ofFahrenheit(100).kelvin())
        .isCloseTo(convert(100 + 459.67, fahrenheitDegree, KELVIN), ROUNDING);
    assertThat(Temperature.ofCelsius(35).kelvin())
        .isCloseTo(convert(35, tech.units.indriya.unit.Units.CELSIUS, KELVIN), ROUNDING);
    assertThat(TemperatureDifference.ofFahrenheitDegrees(27).kelvin())
        .isCloseTo(convert(27, fahrenheitDegree, KELVIN), ROUNDING);
  }

  @Test
  void altitude_footIsTheInternationalOne() {
    assertThat(Altitude.ofFeet(5280).metres()).isCloseTo(convert(1, MILE, METRE), ROUNDING);
    assertThat(Altitude.ofMetres(1000).feet()).isCloseTo(convert(1000, METRE, FOOT), ROUNDING);
  }

  @Test
  void flows_followTheirDefinitions() {
    assertThat(MassFlow.ofKilogramsPerHour(7.5).kilogramsPerSecond())
        .isCloseTo(convert(7.5, KILOGRAM.divide(HOUR), KILOGRAM.divide(SECOND)), ROUNDING);
    assertThat(VolumeFlow.ofLitresPerHour(8.2).cubicMetresPerSecond())
        .isCloseTo(convert(8.2, LITRE.divide(HOUR), CUBIC_METRE.divide(SECOND)), ROUNDING);
    assertThat(VolumeFlow.ofCubicCentimetresPerMinute(118).litresPerHour())
        .isCloseTo(convert(118, CUBIC_CENTIMETRE.divide(MINUTE), LITRE.divide(HOUR)), ROUNDING);
  }

  @Test
  void fuelConsumption_gallonsFollowTheirDefinitions() {
    Unit<?> litresPer100Kilometres = LITRE.divide(METRE.multiply(100_000));
    Unit<?> imperialGallon = LITRE.multiply(4.54609);
    Unit<?> usGallon = INCH.pow(3).multiply(231);

    assertThat(FuelConsumption.ofMilesPerImperialGallon(54.3).litresPer100Kilometres())
        .isCloseTo(
            convert(1 / 54.3, imperialGallon.divide(MILE), litresPer100Kilometres), ROUNDING);
    assertThat(FuelConsumption.ofMilesPerUsGallon(45.2).litresPer100Kilometres())
        .isCloseTo(convert(1 / 45.2, usGallon.divide(MILE), litresPer100Kilometres), ROUNDING);
    assertThat(FuelConsumption.ofLitresPer100Kilometres(5).milesPerUsGallon())
        .isCloseTo(
            convert(1 / 5.0, litresPer100Kilometres.inverse(), MILE.divide(usGallon)), ROUNDING);
  }

  @Test
  void power_horsepowersFollowTheirDefinitions() {
    Unit<?> metric = KILOGRAM.multiply(75).multiply(GRAVITY).multiply(METRE).divide(SECOND);
    Unit<?> mechanical = POUND.multiply(550).multiply(GRAVITY).multiply(FOOT).divide(SECOND);

    assertThat(Power.ofMetricHorsepower(17).kilowatts())
        .isCloseTo(convert(17, metric, MetricPrefix.KILO(WATT)), ROUNDING);
    assertThat(Power.ofMechanicalHorsepower(16.8).kilowatts())
        .isCloseTo(convert(16.8, mechanical, MetricPrefix.KILO(WATT)), ROUNDING);
    assertThat(Power.ofKilowatts(12.5).mechanicalHorsepower())
        .isCloseTo(convert(12.5, MetricPrefix.KILO(WATT), mechanical), ROUNDING);
  }

  @Test
  void viscosities_followTheirDefinitions() {
    Unit<?> pascalSecond = PASCAL.multiply(SECOND);
    Unit<?> squareMillimetrePerSecond = SQUARE_METRE.divide(1_000_000).divide(SECOND);

    assertThat(DynamicViscosity.ofMillipascalSeconds(0.55).pascalSeconds())
        .isCloseTo(
            convert(0.55, MetricPrefix.MILLI(PASCAL).multiply(SECOND), pascalSecond), ROUNDING);
    assertThat(
            DynamicViscosity.from(
                    KinematicViscosity.ofSquareMillimetresPerSecond(0.55),
                    Density.ofKilogramsPerCubicMetre(745))
                .pascalSeconds())
        .isCloseTo(
            convert(
                0.55 * 745,
                squareMillimetrePerSecond.multiply(KILOGRAM).divide(CUBIC_METRE),
                pascalSecond),
            ROUNDING);
  }

  /** Exact by definition, so without a tolerance. */
  @Test
  void decimals_meetExactly() {
    assertThat(JetBore.ofHundredths(127.5)).isEqualTo(JetBore.ofMillimetres(1.275));
    assertThat(Pressure.ofHectopascals(1013.25)).isEqualTo(Pressure.ofPascals(101_325));
    assertThat(Temperature.ofFahrenheit(68)).isEqualTo(Temperature.ofCelsius(20));
    assertThat(Temperature.ofCelsius(20.1).celsius()).isEqualTo(20.1);
    assertThat(Temperature.ofFahrenheit(-40).celsius()).isEqualTo(-40);
    assertThat(Temperature.ofCelsius(37).fahrenheit()).isEqualTo(98.6);
    assertThat(VolumeFlow.ofCubicMetresPerSecond(0.001))
        .isEqualTo(VolumeFlow.ofLitresPerHour(3600));
    assertThat(Altitude.ofFeet(12_345.678)).isEqualTo(Altitude.ofMetres(3762.9626544));
    assertThat(VolumeFlow.ofCubicCentimetresPerMinute(118).litresPerHour()).isEqualTo(7.08);
    assertThat(MassFlow.ofKilogramsPerHour(5.94)).isEqualTo(MassFlow.ofGramsPerSecond(1.65));
    assertThat(PremixRatio.ofOilPercent(2)).isEqualTo(PremixRatio.ofPetrolToOil(50));
    assertThat(PremixRatio.ofPetrolToOil(40).oilPercent()).isEqualTo(2.5);
  }

  @Test
  void numbersTooLongForADecimal_convertInDoubleArithmetic() {
    double third = 1.0 / 3;

    assertThat(Pressure.ofHectopascals(third).pascals()).isCloseTo(100 * third, within(1e-14));
    assertThat(Temperature.ofKelvin(300 + third).celsius()).isCloseTo(26.85 + third, within(1e-12));
    assertThat(FuelConsumption.ofMilesPerUsGallon(third).milesPerUsGallon())
        .isCloseTo(third, within(1e-15));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double convert(double value, Unit from, Unit to) {
    return getQuantity(value, from).to(to).getValue().doubleValue();
  }
}
