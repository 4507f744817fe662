package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Altitude;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {

  @ParameterizedTest
  @CsvFileSource(resources = "standard-atmosphere-geometric.csv", numLinesToSkip = 1)
  void stateAtGeometricAltitude_matches(
      double metres, double kelvin, double pascals, double density, String source) {
    Altitude altitude = Altitude.ofMetres(metres);

    assertThat(StandardAtmosphere.temperature(altitude).kelvin())
        .as(source)
        .isCloseTo(kelvin, within(5e-4));
    assertThat(StandardAtmosphere.pressure(altitude).pascals())
        .as(source)
        .isCloseTo(pascals, within(0.05));
    assertThat(StandardAtmosphere.density(altitude).kilogramsPerCubicMetre())
        .as(source)
        .isCloseTo(density, within(5e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "standard-atmosphere-geopotential.csv", numLinesToSkip = 1)
  void pressureAtGeopotentialHeight_matches(double metres, double pascals, String source) {
    assertThat(
            StandardAtmosphere.pressure(StandardAtmosphere.ofGeopotentialMetres(metres)).pascals())
        .as(source)
        .isCloseTo(pascals, within(1.0));
  }

  @Test
  void densityAltitude_ofStandardAir_isItsHeight() {
    Altitude height = Altitude.ofMetres(1500);
    Air standard =
        Air.dry(StandardAtmosphere.pressure(height), StandardAtmosphere.temperature(height))
            .withFormula(AirFormula.IDEAL_GAS);

    assertThat(StandardAtmosphere.densityAltitude(standard).metres()).isCloseTo(1500, within(1e-6));
  }

  @Test
  void densityAltitude_ofHotAir_isHigher() {
    Air hot =
        Air.dry(Pressure.ofPascals(101_325), Temperature.ofCelsius(35))
            .withFormula(AirFormula.IDEAL_GAS);

    // By hand: (1 − 0.0065 H/288.15)^4.25588 = 288.15/308.15 gives H = 693.51 m geopotential.
    assertThat(StandardAtmosphere.densityAltitude(hot).metres()).isCloseTo(693.6, within(0.1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-4_999, -2_000, 0, 10_999})
  void ofGeopotentialMetres_isTheInverse(double metres) {
    Altitude altitude = StandardAtmosphere.ofGeopotentialMetres(metres);

    assertThat(StandardAtmosphere.geopotentialMetres(altitude)).isCloseTo(metres, within(1e-6));
  }

  @Test
  void outsideTheLayer_saysWhatIsAllowed() {
    assertThatThrownBy(() -> StandardAtmosphere.pressure(Altitude.ofMetres(12_000)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("altitude as geopotential height in m 11977.38")
        .hasMessageEndingWith(": allowed -5000 to 11000");
    assertThatThrownBy(() -> StandardAtmosphere.pressureAltitude(Pressure.ofHectopascals(200)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pressure altitude");
    assertThatThrownBy(() -> StandardAtmosphere.ofGeopotentialMetres(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("geopotential height in m NaN: allowed -5000 to 11000");
  }
}
