package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ElementalCompositionTest {

  @ParameterizedTest
  @CsvFileSource(resources = "stoichiometric-ratio.csv", numLinesToSkip = 1)
  void stoichiometricRatio_matches(
      double carbon, double hydrogen, double oxygen, double expected, String source) {
    assertThat(new ElementalComposition(carbon, hydrogen, oxygen).stoichiometricRatio().value())
        .as(source)
        .isCloseTo(expected, withinPercentage(0.01));
  }

  @Test
  void stoichiometricRatio_ofEthanol_isThePublishedOne() {
    // US DOE Alternative Fuels Data Center: 9.0.
    assertThat(FuelComponent.ETHANOL.stoichiometricRatio().value()).isCloseTo(9.0, within(0.05));
  }

  @Test
  void ofMasses_ofAnAnalysis_agreesWithTheAtoms() {
    // Ethanol: 52.14 % carbon, 13.13 % hydrogen, 34.73 % oxygen by mass, from its formula.
    ElementalComposition ethanol = ElementalComposition.ofMasses(52.14, 13.13, 34.73);

    assertThat(ethanol.hydrogen() / ethanol.carbon()).isCloseTo(3, within(0.002));
    assertThat(ethanol.oxygen() / ethanol.carbon()).isCloseTo(0.5, within(0.0005));
    assertThat(ethanol.stoichiometricRatio().value()).isCloseTo(9.003, within(0.002));
  }

  @Test
  void molarMass_ofEthanol_isThatOfItsAtoms() {
    ElementalComposition ethanol = new ElementalComposition(2, 6, 1);

    // 46.069 g/mol and C2H6O + 3 O2 -> 2 CO2 + 3 H2O: any chemistry textbook.
    assertThat(ethanol.molarMass()).isCloseTo(46.069, within(5e-4));
    assertThat(ethanol.oxygenMolecules()).isEqualTo(3);
    assertThat(ethanol).hasToString("C2 H6 O1");
    assertThat(ElementalComposition.hydrocarbon(1.87)).hasToString("C1 H1.87");
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 2, 0, atoms of carbon in a fuel -1: allowed 0 to 1000",
    "1, NaN, 0, atoms of hydrogen in a fuel NaN: allowed 0 to 1000",
    "1, 2, Infinity, atoms of oxygen in a fuel Infinity: allowed 0 to 1000",
    "1, 0, 2, oxygen need of the fuel in molecules 0: allowed above 0",
    "0, 0, 0, oxygen need of the fuel in molecules 0: allowed above 0"
  })
  void impossibleComposition_isRefused(
      double carbon, double hydrogen, double oxygen, String message) {
    assertThatThrownBy(() -> new ElementalComposition(carbon, hydrogen, oxygen))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }
}
