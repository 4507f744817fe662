package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FuelComponentTest {

  @Test
  void petrol_liesWithinThePublishedRanges() {
    // EN 228:2012: 720 to 775 kg/m³ at 15 °C.
    assertThat(FuelComponent.PETROL.density().value()).isBetween(720.0, 775.0);
    // Kinematic viscosity 0.5 to 0.6 mm²/s at 20 °C, 0.8 to 1.0 at −20 °C: common tables, no
    // source.
    assertThat(viscosity(FuelComponent.PETROL, 20)).isBetween(0.5, 0.6);
    assertThat(viscosity(FuelComponent.PETROL, -20)).isBetween(0.8, 1.0);
    // Thermal expansion 9.5e-4 to 9.6e-4 1/K: common tables, no source.
    assertThat(FuelComponent.PETROL.thermalExpansion().value()).isBetween(9.5e-4, 9.6e-4);
  }

  @Test
  void ethanol_hasThePublishedSpecificGravity() {
    // US DOE Alternative Fuels Data Center: 0.796 at 60 °F, where water has 999.0 kg/m³.
    double density =
        FuelComponent.ETHANOL.density(Temperature.ofFahrenheit(60)).kilogramsPerCubicMetre();

    assertThat(density / 999.0).isCloseTo(0.796, within(5e-4 + 1e-4));
  }

  @ParameterizedTest
  @CsvSource({"20, 1.50", "-20, 3.435"})
  void ethanolViscosity_matches(double celsius, double expected) {
    // Kinematic viscosity in mm²/s: common tables, no source.
    assertThat(viscosity(FuelComponent.ETHANOL, celsius)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void ethanolViscosity_betweenThePoints_isNearAnotherHandbookValue() {
    // 1.074 mPa·s at 25 °C, from memory of a chemistry handbook; its density there 785 kg/m³.
    assertThat(viscosity(FuelComponent.ETHANOL, 25)).isCloseTo(1.074 / 0.785, within(0.03));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, 20})
  void oilViscosity_followsTheLawItNames(double celsius) {
    // ASTM D341: log log (ν + 0.7) is linear in log T, here through 60 at 40 °C and 9 at 100 °C.
    double cold = Math.log10(Math.log10(60.7));
    double slope = (cold - Math.log10(Math.log10(9.7))) / (Math.log10(373.15) - Math.log10(313.15));
    double expected =
        Math.pow(
                10,
                Math.pow(10, cold + slope * (Math.log10(313.15) - Math.log10(273.15 + celsius))))
            - 0.7;

    assertThat(viscosity(FuelComponent.TWO_STROKE_OIL, celsius) / expected)
        .isCloseTo(1, within(0.01));
  }

  @Test
  void density_isThatOfThe15DegreesAndFallsByTheExpansion() {
    assertThat(density(FuelComponent.PETROL, 15)).isEqualTo(745);
    // 745/(1 + 9.5e-4 · 20), by hand.
    assertThat(density(FuelComponent.PETROL, 35)).isCloseTo(731.11, within(0.005));
  }

  @Test
  void viscosity_betweenAndBeyondSeveralPoints_bendsAtEachPoint() {
    FuelComponent oil = FuelComponent.TWO_STROKE_OIL;

    assertThat(viscosity(oil, 40)).isCloseTo(60, within(1e-9));
    assertThat(viscosity(oil, 30)).isBetween(60.0, 169.0);
    assertThat(viscosity(oil, 80)).isBetween(9.0, 60.0);
    assertThat(viscosity(oil, -40)).isGreaterThan(4540);
  }

  @Test
  void coefficients_sayWhereEachNumberComesFrom() {
    assertThat(FuelComponent.PETROL.coefficients())
        .containsOnlyKeys(
            "petrol.stoichiometric-ratio",
            "petrol.density(15 °C)",
            "petrol.thermal-expansion",
            "petrol.kinematic-viscosity(-20 °C)",
            "petrol.kinematic-viscosity(20 °C)")
        .hasEntrySatisfying(
            "petrol.density(15 °C)",
            c -> assertThat(c.origin()).isEqualTo(Coefficient.Origin.ASSUMED))
        .hasEntrySatisfying(
            "petrol.stoichiometric-ratio",
            c -> assertThat(c.origin()).isEqualTo(Coefficient.Origin.CALCULATED));
  }

  @Test
  void toBuilder_changesOneNumberAndKeepsTheRest() {
    Coefficient measured = Coefficient.sourced(752, "kg/m³", "hydrometer");
    FuelComponent winter =
        FuelComponent.PETROL.toBuilder().id("petrol-b").density(measured).build();

    assertThat(winter.density()).isEqualTo(measured);
    assertThat(winter.viscosityPoints()).isEqualTo(FuelComponent.PETROL.viscosityPoints());
    assertThat(winter.composition()).isEqualTo(FuelComponent.PETROL.composition());
    assertThat(winter).isNotEqualTo(FuelComponent.PETROL).hasToString("petrol-b");
    assertThat(FuelComponent.PETROL.toBuilder().build())
        .isEqualTo(FuelComponent.PETROL)
        .hasSameHashCodeAs(FuelComponent.PETROL);
  }

  @Test
  void stoichiometricRatio_statedOutright_replacesTheComposition() {
    FuelComponent stated =
        FuelComponent.PETROL.toBuilder()
            .stoichiometricRatio(Coefficient.sourced(14.7, "1", "data sheet"))
            .build();

    assertThat(stated.composition()).isEmpty();
    assertThat(stated.stoichiometricRatio().value()).isEqualTo(14.7);
  }

  @Test
  void builder_withoutDensity_saysSo() {
    FuelComponent.Builder builder =
        FuelComponent.builder("plain").composition(ElementalComposition.hydrocarbon(2), "test");

    assertThatThrownBy(builder::build)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("fuel component plain: density not stated");
  }

  @Test
  void builder_refusesWhatIsNotAllowed() {
    FuelComponent.Builder builder = FuelComponent.PETROL.toBuilder();

    assertThatThrownBy(() -> FuelComponent.builder("Super Petrol"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"Super Petrol\"")
        .hasMessageContaining("lower-case");
    assertThatThrownBy(() -> builder.density(Coefficient.assumed(0.745, "g/cm³", "test")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("density at 15 °C 0.745 g/cm³ (assumed: test): allowed a value in kg/m³");
    assertThatThrownBy(() -> builder.density(Coefficient.assumed(74.5, "kg/m³", "test")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("density at 15 °C in kg/m³ 74.5: allowed 500 to 1500");
    assertThatThrownBy(() -> builder.thermalExpansion(Coefficient.assumed(-1e-3, "1/K", "test")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("thermal expansion in 1/K -0.001: allowed 0 to 0.003");
    assertThatThrownBy(
            () ->
                builder.viscosity(
                    Temperature.ofCelsius(0), Coefficient.assumed(0, "mm²/s", "test")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("kinematic viscosity in mm²/s 0: allowed 0.1 to 1000000");
  }

  @Test
  void viscosityPoints_mustBeTwoAndThinWithWarmth() {
    FuelComponent.Builder one =
        FuelComponent.PETROL.toBuilder()
            .clearViscosity()
            .viscosity(Temperature.ofCelsius(20), Coefficient.assumed(0.6, "mm²/s", "test"));
    FuelComponent.Builder thickening =
        FuelComponent.PETROL.toBuilder()
            .viscosity(Temperature.ofCelsius(40), Coefficient.assumed(0.7, "mm²/s", "test"));

    assertThatThrownBy(one::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number of viscosity points 1: allowed 2 or more");
    assertThatThrownBy(thickening::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.7: allowed less than at the next colder temperature");
  }

  @Test
  void temperatureOutOfRange_saysWhatIsAllowed() {
    assertThatThrownBy(() -> density(FuelComponent.PETROL, 81))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("fuel temperature in °C 81: allowed -40 to 80");
    assertThat(density(FuelComponent.PETROL, -40)).isGreaterThan(density(FuelComponent.PETROL, 80));
  }

  private static double density(FuelComponent component, double celsius) {
    return component.density(Temperature.ofCelsius(celsius)).kilogramsPerCubicMetre();
  }

  private static double viscosity(FuelComponent component, double celsius) {
    return component
        .kinematicViscosity(Temperature.ofCelsius(celsius))
        .squareMillimetresPerSecond();
  }
}
