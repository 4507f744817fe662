package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.units.Power;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;

class PowerCorrectionTest {

  private static final Air HOT_AND_LOW =
      Air.dry(Pressure.ofMillibars(950), Temperature.ofCelsius(35));

  @Test
  void saeJ1349_matches() {
    // SAE J1349, formula read in public code: 1.18 (990/p) √(T/298.15) − 0.18. The last digit of
    // the value there belongs to 308 K and 298 K; with 308.15 K and 298.15 K it is 1.07014.
    assertThat(PowerCorrection.saeJ1349(HOT_AND_LOW).factor())
        .isCloseTo(1.07015, withinPercentage(0.01));
  }

  @Test
  void iso1585_matches() {
    // ISO 1585, formula from memory: (99/ps)^1.2 (T/298)^0.6.
    assertThat(PowerCorrection.iso1585(HOT_AND_LOW).factor()).isCloseTo(1.07207, within(5e-6));
  }

  @Test
  void factor_inTheStandardAirOfTheCode_isOne() {
    Pressure standard = Pressure.ofHectopascals(990);

    assertThat(PowerCorrection.saeJ1349(Air.dry(standard, Temperature.ofKelvin(298.15))).factor())
        .isCloseTo(1, within(1e-12));
    assertThat(PowerCorrection.iso1585(Air.dry(standard, Temperature.ofKelvin(298))).factor())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void factor_countsOnlyTheDryPressure() {
    Air damp =
        Air.of(Pressure.ofMillibars(950), Temperature.ofCelsius(35), RelativeHumidity.ofShare(1));
    double dryPascals = damp.pressure().pascals() - damp.vapourPressure().pascals();
    Air dry = Air.dry(Pressure.ofPascals(dryPascals), damp.temperature());

    assertThat(PowerCorrection.iso1585(damp).factor())
        .isCloseTo(PowerCorrection.iso1585(dry).factor(), within(1e-12));
    assertThat(PowerCorrection.saeJ1349(damp).factor())
        .isCloseTo(PowerCorrection.saeJ1349(dry).factor(), within(1e-12));
  }

  @Test
  void withinCode_flagsATestThatDoesNotCount() {
    assertThat(PowerCorrection.saeJ1349(HOT_AND_LOW).withinCode()).isTrue();
    assertThat(PowerCorrection.iso1585(HOT_AND_LOW).withinCode()).isFalse();
    Air mountain = Air.dry(Pressure.ofMillibars(800), Temperature.ofCelsius(20));
    assertThat(PowerCorrection.saeJ1349(mountain).withinCode()).isFalse();
  }

  @Test
  void apply_multipliesThePower() {
    PowerCorrection correction = PowerCorrection.saeJ1349(HOT_AND_LOW);

    assertThat(correction.apply(Power.ofKilowatts(10)).kilowatts())
        .isCloseTo(10.7015, withinPercentage(0.01));
  }

  @Test
  void equals_looksAtCodeAndFactor() {
    PowerCorrection correction = PowerCorrection.saeJ1349(HOT_AND_LOW);

    assertThat(PowerCorrection.saeJ1349(HOT_AND_LOW))
        .isEqualTo(correction)
        .hasSameHashCodeAs(correction);
    assertThat(PowerCorrection.iso1585(HOT_AND_LOW)).isNotEqualTo(correction);
    assertThat(correction.code()).isEqualTo(PowerCorrection.Code.SAE_J1349);
    assertThat(correction).hasToString("SAE_J1349 1.0701");
    assertThat(PowerCorrection.iso1585(HOT_AND_LOW))
        .hasToString("ISO_1585 1.0721 (outside the code)");
  }
}
