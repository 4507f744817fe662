package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class PsychrometricsProperties {

  @Property
  void dewPoint_roundTrips(
      @ForAll @DoubleRange(min = -60, max = 100) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double along) {
    Temperature air = Temperature.ofCelsius(celsius);
    Temperature dewPoint = Temperature.ofKelvin(213.15 + along * (air.kelvin() - 213.15));
    RelativeHumidity humidity = Psychrometrics.humidityFromDewPoint(air, dewPoint);

    assertThat(Psychrometrics.dewPoint(air, humidity).kelvin())
        .isCloseTo(dewPoint.kelvin(), within(1e-9));
  }

  @Property
  void dewPoint_isBelowTheAirAndRisesWithHumidity(
      @ForAll @DoubleRange(min = -20, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double share) {
    Temperature air = Temperature.ofCelsius(celsius);
    Temperature dewPoint = Psychrometrics.dewPoint(air, RelativeHumidity.ofShare(share));

    assertThat(dewPoint).isLessThan(air);
    assertThat(Psychrometrics.dewPoint(air, RelativeHumidity.ofShare(share + 0.05)))
        .isGreaterThan(dewPoint);
  }

  @Property
  void wetBulb_coolerByMore_meansDrierAir(
      @ForAll @DoubleRange(min = 10, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 3) double cooler) {
    Temperature air = Temperature.ofCelsius(celsius);
    Pressure pressure = Pressure.ofPascals(95_000);
    RelativeHumidity damp =
        Psychrometrics.humidityFromWetBulb(air, Temperature.ofCelsius(celsius - cooler), pressure);
    RelativeHumidity dry =
        Psychrometrics.humidityFromWetBulb(
            air, Temperature.ofCelsius(celsius - cooler - 0.5), pressure);

    assertThat(dry).isLessThan(damp);
  }

  @Property
  void specificVolume_agreesWithTheDensityOfIdealGas(
      @ForAll @DoubleRange(min = 50_000, max = 110_000) double pascals,
      @ForAll @DoubleRange(min = -20, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Temperature temperature = Temperature.ofCelsius(celsius);
    Pressure pressure = Pressure.ofPascals(pascals);
    RelativeHumidity humidity = RelativeHumidity.ofShare(share);
    double ratio = Psychrometrics.humidityRatio(temperature, humidity, pressure);
    double volume = Psychrometrics.specificVolume(temperature, ratio, pressure);
    double density =
        Air.of(pressure, temperature, humidity)
            .withFormula(AirFormula.IDEAL_GAS)
            .density()
            .kilogramsPerCubicMetre();

    // The two standards' gas constants of dry air part by 4 in 100 000.
    assertThat((1 + ratio) / volume / density).isCloseTo(287.05287 / 287.042, within(1e-9));
  }
}
