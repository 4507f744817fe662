package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FuelBlendTest {

  private static final String DOE = "US DOE Alternative Fuels Data Center";
  private static final FuelComponent BASE =
      FuelComponent.PETROL.toBuilder()
          .stoichiometricRatio(Coefficient.sourced(14.7, "1", DOE))
          .build();
  private static final FuelComponent ETHANOL =
      FuelComponent.ETHANOL.toBuilder()
          .stoichiometricRatio(Coefficient.sourced(9.0, "1", DOE))
          .density(Coefficient.assumed(789, "kg/m³", "the figure of the check, for 20 °C"))
          .build();

  @ParameterizedTest
  @CsvFileSource(resources = "blends.csv", numLinesToSkip = 1)
  void stoichiometricRatio_ofBlends_matches(double ethanol, double expected, String source) {
    FuelBlend blend =
        FuelBlend.byVolume(
            List.of(new FuelShare(BASE, 1 - ethanol), new FuelShare(ETHANOL, ethanol)));

    assertThat(blend.stoichiometricRatio().value())
        .as(source)
        .isCloseTo(expected, withinPercentage(0.01));
  }

  @Test
  void byMassAndByVolume_ofTheSameBlend_agree() {
    double mass = 0.1 * 789 / (0.1 * 789 + 0.9 * 745);
    FuelBlend byVolume =
        FuelBlend.byVolume(List.of(new FuelShare(BASE, 0.9), new FuelShare(ETHANOL, 0.1)));
    FuelBlend byMass =
        FuelBlend.byMass(List.of(new FuelShare(BASE, 1 - mass), new FuelShare(ETHANOL, mass)));
    Temperature warm = Temperature.ofCelsius(30);

    assertThat(byMass.density(warm).kilogramsPerCubicMetre())
        .isCloseTo(byVolume.density(warm).kilogramsPerCubicMetre(), within(1e-9));
    assertThat(byMass.stoichiometricRatio().value())
        .isCloseTo(byVolume.stoichiometricRatio().value(), within(1e-12));
    assertThat(byMass.dynamicViscosity(warm).pascalSeconds())
        .isCloseTo(byVolume.dynamicViscosity(warm).pascalSeconds(), within(1e-15));
    assertThat(byMass).isNotEqualTo(byVolume);
  }

  @Test
  void density_at15Degrees_isTheMeanByVolume() {
    FuelBlend blend =
        FuelBlend.byVolume(List.of(new FuelShare(BASE, 0.5), new FuelShare(ETHANOL, 0.5)));

    assertThat(blend.density(Temperature.ofCelsius(15)).kilogramsPerCubicMetre())
        .isCloseTo(767, within(1e-9));
  }

  @Test
  void kinematicViscosity_ofEqualVolumes_isTheGeometricMean() {
    FuelBlend blend =
        FuelBlend.byVolume(List.of(new FuelShare(BASE, 0.5), new FuelShare(ETHANOL, 0.5)));

    assertThat(blend.kinematicViscosity(Temperature.ofCelsius(20)).squareMillimetresPerSecond())
        .isCloseTo(Math.sqrt(0.55 * 1.5), within(1e-9));
  }

  @Test
  void order_doesNotMatter() {
    FuelBlend blend =
        FuelBlend.byVolume(List.of(new FuelShare(BASE, 0.9), new FuelShare(ETHANOL, 0.1)));
    FuelBlend turned =
        FuelBlend.byVolume(List.of(new FuelShare(ETHANOL, 0.1), new FuelShare(BASE, 0.9)));

    assertThat(turned).isEqualTo(blend).hasSameHashCodeAs(blend);
    assertThat(turned)
        .hasToString("0.1 ethanol + 0.9 petrol by volume"); // another petrol than E10's;
    assertThat(turned.shares()).isEqualTo(blend.shares());
  }

  @Test
  void shares_thatAreNoBlend_areRefused() {
    FuelShare half = new FuelShare(BASE, 0.5);

    assertThatThrownBy(() -> FuelBlend.byMass(List.of(half)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sum of the shares of a fuel 0.5: allowed 1");
    assertThatThrownBy(() -> FuelBlend.byVolume(List.of(half, half)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("second share of petrol: allowed each component once");
    assertThatThrownBy(() -> FuelBlend.byVolume(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed 1 or more");
    assertThatThrownBy(() -> new FuelShare(BASE, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("share of petrol NaN: allowed above 0 up to 1");
    assertThatThrownBy(() -> new FuelShare(BASE, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("share of petrol 0: allowed above 0 up to 1");
  }
}
