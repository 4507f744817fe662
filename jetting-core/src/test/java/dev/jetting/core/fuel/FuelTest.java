package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FuelTest {

  private static final Temperature COOL = Temperature.ofCelsius(15);
  private static final Fuel STATED =
      Fuel.ofProperties(
          Density.ofKilogramsPerCubicMetre(740),
          DynamicViscosity.ofPascalSeconds(5.0e-4),
          AirFuelRatio.of(14.5));

  @ParameterizedTest
  @CsvSource({"50, 1.02", "25, 1.04"})
  void premix_atEqualTotalFlow_raisesAirToPetrolByItsShare(double ratio, double expected) {
    Fuel mixed = Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(ratio));
    double petrolInALitre =
        mixed.density(COOL).kilogramsPerCubicMetre() * (1 - mixed.oilMassFraction());

    // Calculated: oil takes 1/(n + 1) of the volume, so air to petrol is up by 1/n.
    assertThat(Fuel.PETROL.density(COOL).kilogramsPerCubicMetre() / petrolInALitre)
        .isCloseTo(expected, within(1e-12));
  }

  @Test
  void oilMassFraction_countsTheDensities() {
    Fuel mixed = Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(50));

    // By hand: 880/(50 · 745 + 880).
    assertThat(mixed.oilMassFraction()).isCloseTo(0.0230790, within(1e-7));
    assertThat(Fuel.PETROL.oilMassFraction()).isZero();
  }

  @Test
  void premix_isDenserAndThicker() {
    Fuel mixed = Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(33));
    Temperature warm = Temperature.ofCelsius(25);

    assertThat(mixed.density(warm)).isGreaterThan(Fuel.E10.density(warm));
    assertThat(mixed.dynamicViscosity(warm)).isGreaterThan(Fuel.E10.dynamicViscosity(warm));
    assertThat(mixed.stoichiometricRatio()).isEqualTo(Fuel.E10.stoichiometricRatio());
  }

  @Test
  void premixViscosity_followsTheRuleOfBlends() {
    Fuel mixed = Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(50));
    Fuel blended =
        Fuel.of(
            FuelBlend.byVolume(
                List.of(
                    new FuelShare(FuelComponent.PETROL, 50 / 51.0),
                    new FuelShare(FuelComponent.TWO_STROKE_OIL, 1 / 51.0))));
    Temperature warm = Temperature.ofCelsius(40);

    assertThat(mixed.dynamicViscosity(warm).pascalSeconds())
        .isCloseTo(blended.dynamicViscosity(warm).pascalSeconds(), within(1e-15));
    assertThat(mixed.density(warm).kilogramsPerCubicMetre())
        .isCloseTo(blended.density(warm).kilogramsPerCubicMetre(), within(1e-9));
  }

  @Test
  void ofProperties_givesThemBackAtEveryTemperature() {
    for (double celsius : new double[] {-100, 15, 200}) {
      Temperature temperature = Temperature.ofCelsius(celsius);
      assertThat(STATED.density(temperature)).isEqualTo(Density.ofKilogramsPerCubicMetre(740));
      assertThat(STATED.dynamicViscosity(temperature))
          .isEqualTo(DynamicViscosity.ofPascalSeconds(5.0e-4));
    }
    assertThat(STATED.stoichiometricRatio()).isEqualTo(AirFuelRatio.of(14.5));
    assertThat(STATED.blend()).isEmpty();
    assertThat(STATED.coefficients()).isEmpty();
    assertThat(STATED.oilMassFraction()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {50, 33, 20})
  void ofProperties_ofABlendWithItsPremix_burnsAsMuchPetrolAsTheBlend(double ratio) {
    Fuel mixed = Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(ratio));
    Fuel stated =
        Fuel.ofProperties(
                mixed.density(COOL), mixed.dynamicViscosity(COOL), mixed.stoichiometricRatio())
            .withPremix(mixed.premix());

    // From first principles: of n + 1 litres n are petrol, whichever way the fuel was described.
    double petrolMass = ratio * Fuel.E10.density(COOL).kilogramsPerCubicMetre();
    double mass = (ratio + 1) * mixed.density(COOL).kilogramsPerCubicMetre();
    assertThat(1 - mixed.oilMassFraction()).isCloseTo(petrolMass / mass, within(1e-12));
    assertThat(1 - stated.oilMassFraction()).isCloseTo(petrolMass / mass, within(1e-12));
  }

  @Test
  void ofProperties_withPremix_keepsWhatWasStatedOfWhatFlows() {
    Fuel oiled = STATED.withPremix(PremixRatio.ofPetrolToOil(20));
    Temperature hot = Temperature.ofCelsius(200);

    assertThat(oiled.density(hot)).isEqualTo(STATED.density(hot));
    assertThat(oiled.dynamicViscosity(hot)).isEqualTo(STATED.dynamicViscosity(hot));
    assertThat(oiled.isKnownAt(hot)).isTrue();
    assertThat(oiled.toString()).contains("740", "14.5", "20:1 two-stroke-oil");
    assertThat(oiled.coefficients()).containsKey("two-stroke-oil.density(15 °C)");
    assertThat(STATED.withPremix(PremixRatio.NO_OIL)).isEqualTo(STATED);
  }

  @Test
  void ofProperties_lighterThanItsOil_isRefused() {
    Fuel light =
        Fuel.ofProperties(
            Density.ofKilogramsPerCubicMetre(400),
            DynamicViscosity.ofPascalSeconds(5.0e-4),
            AirFuelRatio.of(14.5));

    assertThatThrownBy(() -> light.withPremix(PremixRatio.ofPetrolToOil(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("density of what flows 400 kg/m³")
        .hasMessageContaining("allowed more than the oil");
  }

  @Test
  void accessors_areEnoughToBuildTheFuelAgain() {
    Fuel mixed = Fuel.E10.withPremix(PremixRatio.ofOilPercent(4));
    Fuel again =
        Fuel.of(mixed.blend().orElseThrow()).withPremix(mixed.premix(), mixed.oil().orElseThrow());

    assertThat(again).isEqualTo(mixed).hasSameHashCodeAs(mixed);
  }

  @Test
  void equals_tellsFuelsApart() {
    Fuel mixed = Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50));
    FuelComponent otherOil = FuelComponent.TWO_STROKE_OIL.toBuilder().id("castor-oil").build();

    assertThat(Fuel.E5).isNotEqualTo(Fuel.E10).isNotEqualTo(mixed);
    assertThat(mixed).isNotEqualTo(Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50), otherOil));
    assertThat(mixed.withPremix(PremixRatio.NO_OIL)).isEqualTo(Fuel.E5);
    assertThat(mixed.withPremix(PremixRatio.NO_OIL).oil()).isEmpty();
    assertThat(STATED).isNotEqualTo(Fuel.E5);
  }

  @Test
  void toString_namesEverything() {
    assertThat(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50)).toString())
        .startsWith("E10 with ")
        .endsWith(" two-stroke-oil");
    assertThat(Fuel.PETROL).hasToString("petrol");
    assertThat(Fuel.E5).hasToString("E5");
    assertThat(STATED.toString()).contains("740", "14.5");
  }

  @Test
  void coefficients_listComponentsAndOil() {
    Fuel mixed = Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50));

    assertThat(mixed.coefficients())
        .containsKeys(
            "petrol.density(15 °C)", "ethanol.density(15 °C)", "two-stroke-oil.density(15 °C)");
    assertThat(Fuel.E10.coefficients()).doesNotContainKey("two-stroke-oil.density(15 °C)");
  }

  @Test
  void oil_withTheIdOfAComponent_isRefused() {
    PremixRatio premix = PremixRatio.ofPetrolToOil(50);

    assertThatThrownBy(() -> Fuel.PETROL.withPremix(premix, FuelComponent.PETROL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("id of the oil petrol");
  }
}
