package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class AirProperties {

  @Property
  void density_fallsWithHumidity(
      @ForAll @DoubleRange(min = 30_000, max = 130_000) double pascals,
      @ForAll @DoubleRange(min = -60, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 0.9) double drier,
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double more,
      @ForAll AirFormula formula) {
    Air dry = air(pascals, celsius, drier, formula);
    Air damp = air(pascals, celsius, drier + more, formula);

    assertThat(damp.density()).isLessThan(dry.density());
    assertThat(damp.dryAirMassFraction()).isLessThan(dry.dryAirMassFraction());
  }

  @Property
  void density_fallsWithTemperature(
      @ForAll @DoubleRange(min = 30_000, max = 130_000) double pascals,
      @ForAll @DoubleRange(min = -60, max = 59) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll AirFormula formula) {
    assertThat(air(pascals, celsius + 1, humidity, formula).density())
        .isLessThan(air(pascals, celsius, humidity, formula).density());
  }

  @Property
  void density_growsWithPressure(
      @ForAll @DoubleRange(min = 30_000, max = 129_000) double pascals,
      @ForAll @DoubleRange(min = -60, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll AirFormula formula) {
    assertThat(air(pascals + 100, celsius, humidity, formula).density())
        .isGreaterThan(air(pascals, celsius, humidity, formula).density());
  }

  @Property
  void density_ofBothFormulas_nearlyAgrees(
      @ForAll @DoubleRange(min = 30_000, max = 130_000) double pascals,
      @ForAll @DoubleRange(min = -60, max = 40) double celsius,
      @ForAll @DoubleRange(min = 0, max = 0.95) double humidity) {
    double cipm =
        air(pascals, celsius, humidity, AirFormula.CIPM_2007).density().kilogramsPerCubicMetre();
    double ideal =
        air(pascals, celsius, humidity, AirFormula.IDEAL_GAS).density().kilogramsPerCubicMetre();

    assertThat(ideal / cipm).isCloseTo(1, within(0.003));
  }

  private static Air air(double pascals, double celsius, double humidity, AirFormula formula) {
    return Air.of(
            Pressure.ofPascals(pascals),
            Temperature.ofCelsius(celsius),
            RelativeHumidity.ofShare(humidity))
        .withFormula(formula);
  }
}
