package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.JetCalibration.ConstantCoefficient;
import dev.jetting.units.JetCalibration.Liquid;
import dev.jetting.units.JetCalibration.ShortOrifice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JetCalibrationTest {
  /** An invented bench: head, coefficient and uncertainty are nobody's. */
  static final JetCalibration WATER =
      new JetCalibration(
          Length.ofMillimetres(500),
          new Liquid(
              "water",
              Density.ofKilogramsPerCubicMetre(998.2),
              DynamicViscosity.ofMillipascalSeconds(1.002)),
          new ConstantCoefficient(0.8),
          0.03);

  /**
   * 0.8 · π/4 · (1 mm)² · √(2 · 9.80665 · 0.5) m/s = 1.967615 cm³/s = 118.0569 cm³/min, by hand.
   */
  @Test
  void flowOf_followsTheHeadAndTheCoefficient() {
    Uncertain<JetFlow> flow = WATER.flowOf(JetBore.ofMillimetres(1));

    assertThat(flow.value().cubicCentimetresPerMinute()).isCloseTo(118.0569, within(1e-4));
    assertThat(flow.lower().cubicCentimetresPerMinute()).isCloseTo(114.5152, within(1e-4));
    assertThat(flow.upper().cubicCentimetresPerMinute()).isCloseTo(121.5986, within(1e-4));
  }

  /** The bore goes with the root of the flow: 1 mm / √1.03 and 1 mm / √0.97. */
  @Test
  void boreOf_carriesTheUncertaintyOfTheFlow() {
    Uncertain<JetBore> bore = WATER.boreOf(WATER.flowOf(JetBore.ofMillimetres(1)).value());

    assertThat(bore.value().millimetres()).isCloseTo(1, within(1e-12));
    assertThat(bore.lower().millimetres()).isCloseTo(0.985329, within(5e-7));
    assertThat(bore.upper().millimetres()).isCloseTo(1.015346, within(5e-7));
  }

  @Test
  void boreOf_refusesFlowsOfBoresThatAreNoJets() {
    assertThatThrownBy(() -> withHead(1).boreOf(JetFlow.ofCubicCentimetresPerMinute(10_000)))
        .isInstanceOf(QuantityException.class)
        .hasMessageStartingWith("jet calibration: flow 10000 cm³/min: allowed up to 5");
  }

  /**
   * Lichtarowicz, Duggins and Markland 1965, L/d 2, calculated independently from the published
   * formula.
   */
  @ParameterizedTest
  @CsvSource({"500, 0.68794", "1000, 0.74464", "2000, 0.77743", "5000, 0.80153", "10000, 0.80811"})
  void shortOrifice_followsThePublishedFormula(double reynolds, double expected) {
    assertThat(new ShortOrifice(2).coefficient(reynolds)).isCloseTo(expected, within(5e-6));
  }

  @Test
  void shortOrifice_flowIsProportionalToTheHeadWhereViscosityRules() {
    JetBore tiny = JetBore.ofMillimetres(0.001);
    double low = withHead(100).flowOf(tiny).value().cubicCentimetresPerMinute();
    double high = withHead(400).flowOf(tiny).value().cubicCentimetresPerMinute();

    assertThat(high / low).isCloseTo(4, within(0.1));
  }

  private static JetCalibration withHead(double millimetres) {
    return new JetCalibration(
        Length.ofMillimetres(millimetres), WATER.liquid(), new ShortOrifice(2), 0.03);
  }

  @Test
  void fromMeasurement_reproducesTheMeasurement() {
    JetBore bore = JetBore.ofHundredths(126);
    JetFlow flow = JetFlow.ofCubicCentimetresPerMinute(190);
    JetCalibration measured =
        JetCalibration.fromMeasurement(bore, flow, WATER.head(), WATER.liquid(), 0.02);

    assertThat(measured.flowOf(bore).value().cubicCentimetresPerMinute())
        .isCloseTo(190, within(1e-10));
    assertThat(measured.relativeUncertainty()).isEqualTo(0.02);
  }

  @Test
  void fromMeasurement_refusesMoreThanTheIdealFlow() {
    assertThatThrownBy(
            () ->
                JetCalibration.fromMeasurement(
                    JetBore.ofMillimetres(1),
                    JetFlow.ofCubicCentimetresPerMinute(200),
                    WATER.head(),
                    WATER.liquid(),
                    0.02))
        .isInstanceOf(QuantityException.class)
        .hasMessageStartingWith("jet calibration: discharge coefficient 1.3");
  }

  @Test
  void constructors_refuseWhatIsNoBench() {
    assertThatThrownBy(
            () -> new JetCalibration(Length.ofMillimetres(0), WATER.liquid(), WATER.law(), 0.03))
        .hasMessage("jet calibration: head in mm 0: allowed above 0 up to 100000");
    assertThatThrownBy(() -> new JetCalibration(WATER.head(), WATER.liquid(), WATER.law(), 0.6))
        .hasMessage("jet calibration: relative uncertainty 0.6: allowed from 0 to 0.5");
    assertThatThrownBy(() -> new ShortOrifice(1)).isInstanceOf(QuantityException.class);
    assertThatThrownBy(() -> new ConstantCoefficient(0)).isInstanceOf(QuantityException.class);
  }

  @Test
  void toString_statesHeadLiquidLawAndUncertainty() {
    assertThat(WATER)
        .hasToString(
            "head 500 mm of water (998.2 kg/m³, 0.001002 Pa·s), discharge coefficient 0.8,"
                + " standard uncertainty 3 % of the flow");
    assertThat(withHead(500))
        .hasToString(
            "head 500 mm of water (998.2 kg/m³, 0.001002 Pa·s), short orifice of length to"
                + " diameter 2, standard uncertainty 3 % of the flow");
  }

  @Test
  void uncertain_refusesBoundsOutOfOrder() {
    Lambda one = Lambda.of(1);
    Lambda two = Lambda.of(2);

    assertThat(new Uncertain<>(one, one, two)).hasToString("1 (1 to 2)");
    assertThatThrownBy(() -> new Uncertain<>(one, two, two))
        .hasMessage("uncertain value 1 between 2 and 2: allowed lower <= value <= upper");
    assertThatThrownBy(() -> new Uncertain<>(two, one, one))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
