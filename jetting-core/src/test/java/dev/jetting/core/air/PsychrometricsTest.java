package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class PsychrometricsTest {

  private static final Pressure SEA_LEVEL = Pressure.ofPascals(101_325);

  @ParameterizedTest
  @CsvFileSource(resources = "saturation-over-water.csv", numLinesToSkip = 1)
  void saturationPressureOverWater_matches(double celsius, double pascals, String source) {
    double own =
        Psychrometrics.saturationPressureOverWater(Temperature.ofCelsius(celsius)).pascals();

    assertThat(own).as(source).isCloseTo(pascals, withinPercentage(0.03));
    assertThat(Cipm2007.saturationPressure(273.15 + celsius))
        .as(source)
        .isCloseTo(pascals, withinPercentage(0.03));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 20, 30, 40, 50, 60})
  void saturationPressure_ofBothFormulas_agreesAsDocumented(double celsius) {
    double kelvin = 273.15 + celsius;

    assertThat(Cipm2007.saturationPressure(kelvin))
        .isCloseTo(SaturationPressure.overWater(kelvin), withinPercentage(0.02));
  }

  @Test
  void saturationPressure_overWaterAndIce_meetAtTheTriplePoint() {
    Temperature triple = Temperature.ofCelsius(0.01);

    // 611.657 Pa: IAPWS, triple point of water.
    assertThat(Psychrometrics.saturationPressureOverWater(triple).pascals())
        .isCloseTo(611.657, within(0.01));
    assertThat(Psychrometrics.saturationPressureOverIce(triple).pascals())
        .isCloseTo(611.657, within(0.01));
  }

  @Test
  void saturationPressure_belowFreezing_isLowerOverIce() {
    Temperature frost = Temperature.ofCelsius(-10);

    assertThat(Psychrometrics.saturationPressureOverIce(frost))
        .isLessThan(Psychrometrics.saturationPressureOverWater(frost));
  }

  @Test
  void wetBulb_ofAshraeExample1_matchesTheReadingOfTheChart() {
    Temperature dryBulb = Temperature.ofCelsius(40);
    double ratio =
        Psychrometrics.humidityRatioFromWetBulb(dryBulb, Temperature.ofCelsius(20), SEA_LEVEL);

    // ASHRAE Fundamentals 2017, chapter 1, example 1. The handbook reads 0.0065 off its chart; its
    // own equation 33 gives (2454.48 · 0.014695 − 20.12)/2491.68 = 0.00640, by hand.
    assertThat(ratio).isCloseTo(0.0065, within(1e-4));
    assertThat(ratio).isCloseTo(0.00640, within(5e-6));
    assertThat(Psychrometrics.specificVolume(dryBulb, ratio, SEA_LEVEL))
        .isCloseTo(0.896, within(5e-4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-25, -5, 0, 15, 35})
  void wetBulb_asWarmAsTheAir_meansSaturation(double celsius) {
    Temperature air = Temperature.ofCelsius(celsius);
    double saturation =
        celsius < 0
            ? Psychrometrics.saturationPressureOverIce(air).pascals()
                / Psychrometrics.saturationPressureOverWater(air).pascals()
            : 1;

    assertThat(Psychrometrics.humidityFromWetBulb(air, air, SEA_LEVEL).share())
        .isCloseTo(saturation, within(1e-9));
  }

  @Test
  void humidityRatioFromWetBulb_nearFreezing_isNearlyTheSameIcedAndWet() {
    Temperature air = Temperature.ofCelsius(3);
    double wet = Psychrometrics.humidityRatioFromWetBulb(air, Temperature.ofCelsius(0), SEA_LEVEL);
    double iced =
        Psychrometrics.humidityRatioFromWetBulb(air, Temperature.ofCelsius(-1e-9), SEA_LEVEL);

    assertThat(iced).isCloseTo(wet, within(2e-4));
  }

  @Test
  void humidityRatioFromWetBulb_impossiblyCold_isRefused() {
    assertThatThrownBy(
            () ->
                Psychrometrics.humidityRatioFromWetBulb(
                    Temperature.ofCelsius(40), Temperature.ofCelsius(5), SEA_LEVEL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wet-bulb temperature")
        .hasMessageContaining("that of dry air or above");
    assertThatThrownBy(
            () ->
                Psychrometrics.humidityRatioFromWetBulb(
                    Temperature.ofCelsius(20), Temperature.ofCelsius(21), SEA_LEVEL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("wet-bulb temperature in °C 21: allowed -60 to 20");
  }

  @Test
  void humidityFromWetBulb_whereTheBulbWouldBoil_isRefused() {
    assertThatThrownBy(
            () ->
                Psychrometrics.humidityFromWetBulb(
                    Temperature.ofCelsius(95),
                    Temperature.ofCelsius(94),
                    Pressure.ofPascals(60_000)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pressure 60000 Pa: allowed above the vapour pressure");
  }

  @Test
  void dewPoint_ofDryAir_isRefused() {
    assertThatThrownBy(
            () -> Psychrometrics.dewPoint(Temperature.ofCelsius(20), RelativeHumidity.ofShare(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("relative humidity")
        .hasMessageContaining("allowed a dew point of −60 °C or above");
  }

  @Test
  void humidityFromDewPoint_aboveTheAir_isRefused() {
    assertThatThrownBy(
            () ->
                Psychrometrics.humidityFromDewPoint(
                    Temperature.ofCelsius(20), Temperature.ofCelsius(20.5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("dew point in °C 20.5: allowed -60 to 20");
  }

  @Test
  void specificVolume_ofImpossibleAir_isRefused() {
    assertThatThrownBy(
            () -> Psychrometrics.specificVolume(Temperature.ofCelsius(20), -0.001, SEA_LEVEL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("humidity ratio in kg/kg -0.001: allowed 0 to 10");
    assertThatThrownBy(
            () ->
                Psychrometrics.specificVolume(
                    Temperature.ofCelsius(20), 0.01, Pressure.ofPascals(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pressure 0 Pa: allowed above 0 Pa");
  }
}
