package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.units.Altitude;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {

  private static final Pressure SEA_LEVEL = Pressure.ofPascals(101_325);
  private static final Air MILD_DAY =
      Air.of(SEA_LEVEL, Temperature.ofCelsius(20), RelativeHumidity.ofPercent(50));

  @ParameterizedTest
  @CsvFileSource(resources = "cipm-2007.csv", numLinesToSkip = 1)
  void density_matchesCipm2007(
      double celsius, double pascals, double humidity, double expected, String source) {
    Air air =
        Air.of(
            Pressure.ofPascals(pascals),
            Temperature.ofCelsius(celsius),
            RelativeHumidity.ofShare(humidity));

    assertThat(air.density().kilogramsPerCubicMetre()).as(source).isCloseTo(expected, within(5e-6));
  }

  @Test
  void density_byIdealGas_matchesAnotherLibrary() {
    Air ideal = MILD_DAY.withFormula(AirFormula.IDEAL_GAS);

    // Printed by psychrolib, which takes 287.042 J/(kg K) for dry air where ISO 2533 has 287.05287.
    assertThat(ideal.density().kilogramsPerCubicMetre())
        .isCloseTo(1.198898, withinPercentage(0.01));
    double lighter =
        1 - ideal.density().kilogramsPerCubicMetre() / MILD_DAY.density().kilogramsPerCubicMetre();
    assertThat(lighter).isCloseTo(3.5e-4, within(5e-5));
  }

  @Test
  void density_byIdealGasOfDryAir_isThatOfTheStandardAtmosphere() {
    Air dry = Air.dry(SEA_LEVEL, Temperature.ofCelsius(15)).withFormula(AirFormula.IDEAL_GAS);

    // ISO 2533: 1.225 kg/m³ at sea level.
    assertThat(dry.density().kilogramsPerCubicMetre()).isCloseTo(1.225, within(5e-6));
    assertThat(dry.specificGasConstant()).isCloseTo(287.05287, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"CIPM_2007", "IDEAL_GAS"})
  void dryAirMassFraction_agreesWithTheHumidityRatio(AirFormula formula) {
    double ratio =
        Psychrometrics.humidityRatio(
            MILD_DAY.temperature(), MILD_DAY.humidity(), MILD_DAY.pressure());

    // Dry air is 1 part in 1 + W; the enhancement factor of CIPM-2007 adds 0.4 % of water.
    assertThat(MILD_DAY.withFormula(formula).dryAirMassFraction())
        .isCloseTo(1 / (1 + ratio), within(5e-5));
  }

  @Test
  void dryAirMassFraction_withoutVapour_isOne() {
    assertThat(Air.dry(SEA_LEVEL, Temperature.ofCelsius(30)).dryAirMassFraction()).isEqualTo(1);
  }

  @Test
  void specificGasConstant_givesTheDensityBack() {
    double density =
        MILD_DAY.pressure().pascals()
            / (MILD_DAY.specificGasConstant() * MILD_DAY.temperature().kelvin());

    assertThat(density).isCloseTo(MILD_DAY.density().kilogramsPerCubicMetre(), within(1e-12));
  }

  @Test
  void vapourPressure_isTheShareOfThePressure() {
    // Half of 2339 Pa, saturation at 20 °C by ASHRAE Fundamentals 2017, times the factor 1.004.
    assertThat(MILD_DAY.vapourPressure().pascals()).isCloseTo(1174.2, within(1.0));
  }

  @Test
  void at_takesThePressureOfTheStandardAtmosphere() {
    Air pass =
        Air.at(Altitude.ofMetres(2000), Temperature.ofCelsius(-5), RelativeHumidity.ofPercent(80));

    assertThat(pass.pressure().pascals()).isCloseTo(79_501.4, within(0.05));
    assertThat(pass.temperature()).isEqualTo(Temperature.ofCelsius(-5));
  }

  @Test
  void withinRecommendedRange_flagsAnExtrapolation() {
    assertThat(MILD_DAY.withinRecommendedRange()).isTrue();
    Air frost = Air.dry(SEA_LEVEL, Temperature.ofCelsius(-5));
    assertThat(frost.withinRecommendedRange()).isFalse();
    assertThat(frost.withFormula(AirFormula.IDEAL_GAS).withinRecommendedRange()).isTrue();
    Air high = Air.dry(Pressure.ofHectopascals(590), Temperature.ofCelsius(20));
    assertThat(high.withinRecommendedRange()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"-60, 30000", "-60, 130000", "60, 30000", "60, 130000"})
  void of_atTheEndsOfTheRange_works(double celsius, double pascals) {
    Air air =
        Air.of(
            Pressure.ofPascals(pascals),
            Temperature.ofCelsius(celsius),
            RelativeHumidity.ofShare(1));

    assertThat(air.dryAirMassFraction()).isGreaterThan(0).isLessThan(1);
    assertThat(air.density().kilogramsPerCubicMetre()).isGreaterThan(0.2).isLessThan(2.2);
  }

  @Test
  void of_outsideTheRange_saysWhatIsAllowed() {
    assertThatThrownBy(() -> Air.dry(Pressure.ofHectopascals(299), Temperature.ofCelsius(20)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("air pressure in Pa 29900: allowed 30000 to 130000");
    assertThatThrownBy(() -> Air.dry(SEA_LEVEL, Temperature.ofCelsius(61)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("air temperature in °C 61: allowed -60 to 60");
  }

  @Test
  @SuppressWarnings("NullAway")
  void of_null_namesTheArgument() {
    assertThatNullPointerException()
        .isThrownBy(() -> Air.dry(SEA_LEVEL, null))
        .withMessage("temperature");
    assertThatNullPointerException()
        .isThrownBy(() -> MILD_DAY.withFormula(null))
        .withMessage("formula");
  }

  @Test
  void equals_looksAtStateAndFormula() {
    Air same = Air.of(SEA_LEVEL, Temperature.ofCelsius(20), RelativeHumidity.ofShare(0.5));

    assertThat(same)
        .isEqualTo(MILD_DAY)
        .hasSameHashCodeAs(MILD_DAY)
        .hasToString(MILD_DAY.toString());
    assertThat(MILD_DAY.withFormula(AirFormula.IDEAL_GAS)).isNotEqualTo(MILD_DAY);
    assertThat(Air.dry(SEA_LEVEL, Temperature.ofCelsius(20))).isNotEqualTo(MILD_DAY);
    assertThat(Air.of(SEA_LEVEL, Temperature.ofCelsius(21), MILD_DAY.humidity()))
        .isNotEqualTo(MILD_DAY);
    assertThat(Air.of(Pressure.ofPascals(101_000), MILD_DAY.temperature(), MILD_DAY.humidity()))
        .isNotEqualTo(MILD_DAY);
  }
}
