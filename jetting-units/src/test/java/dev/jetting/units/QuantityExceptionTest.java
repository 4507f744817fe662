package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class QuantityExceptionTest {

  @Test
  void message_namesQuantityValueUnitAndRange_inTheUnitGiven() {
    assertThatThrownBy(() -> Pressure.ofPascals(-5))
        .hasMessage("pressure -5 Pa: allowed from 0 to 100000000 Pa");
    assertThatThrownBy(() -> Pressure.ofHectopascals(-5))
        .hasMessage("pressure -5 hPa: allowed from 0 to 1000000 hPa");
    assertThatThrownBy(() -> JetBore.ofHundredths(0))
        .hasMessage("jet bore 0 hundredths: allowed above 0 up to 1000 hundredths");
    assertThatThrownBy(() -> Temperature.ofFahrenheit(-459.67))
        .hasMessage("temperature -459.67 °F: allowed above -459.67 up to 8540.33 °F");
    assertThatThrownBy(() -> PremixRatio.ofOilPercent(200))
        .hasMessage("premix ratio 200 %: allowed from 0.01 to 100 %");
    assertThatThrownBy(() -> ThrottleOpening.ofEighths(9))
        .hasMessage("throttle opening 9 eighths: allowed from 0 to 8 eighths");
    assertThatThrownBy(() -> ScrewTurns.ofQuarters(-1))
        .hasMessage("screw turns -1 quarter turns: allowed from 0 to 200 quarter turns");
    assertThatThrownBy(() -> Lambda.of(Double.NaN))
        .hasMessage("lambda NaN: allowed above 0 up to 1000000");
    assertThatThrownBy(() -> AirFuelRatio.of(0))
        .hasMessage("air-fuel ratio 0:1: allowed above 0 up to 100000000:1");
  }

  @Test
  void accessors_givePiecesToPrograms() {
    assertThatThrownBy(() -> Pressure.parse("-5 hPa"))
        .isInstanceOfSatisfying(
            QuantityException.class,
            e -> {
              assertThat(e.quantity()).isEqualTo("pressure");
              assertThat(e.value()).isEqualTo("-5");
              assertThat(e.unit()).isEqualTo("hPa");
              assertThat(e.allowed()).isEqualTo("from 0 to 1000000 hPa");
            });
  }

  @Test
  void otherUnits_refuseWhatIsNotFinite() {
    assertThatThrownBy(() -> Temperature.ofCelsius(Double.NaN))
        .hasMessageStartingWith("temperature NaN °C: allowed");
    assertThatThrownBy(() -> FuelConsumption.ofMilesPerUsGallon(Double.POSITIVE_INFINITY))
        .hasMessageStartingWith("fuel consumption Infinity mpg (US): allowed");
    assertThatThrownBy(() -> FuelConsumption.ofMilesPerUsGallon(-0.0))
        .isInstanceOf(QuantityException.class);
    assertThatThrownBy(() -> PremixRatio.ofPetrolToOil(Double.POSITIVE_INFINITY))
        .isInstanceOf(QuantityException.class);
    assertThatThrownBy(() -> PremixRatio.ofOilPercent(Double.NaN))
        .isInstanceOf(QuantityException.class);
  }
}
