package dev.jetting.core.elementary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CompressibleThroatTest {

  private static final Pressure OUTSIDE = Pressure.ofPascals(101_300);
  private static final Temperature WARM = Temperature.ofKelvin(300);
  private static final Diameter ANY = Diameter.ofMillimetres(1);

  @Test
  void diameter_forFiveKilogramsPerMinute_matches() {
    // Mathur & Sharma, Internal Combustion Engine, 8th ed. 2010, example 11.1 (companion).
    CompressibleThroat throat = new CompressibleThroat(OUTSIDE, WARM, 90, 0.8);

    assertThat(throat.diameter(perMinute(5)).millimetres()).isCloseTo(32.5, within(0.05));
  }

  @Test
  void diameterOfThroatAndJet_forSixKilogramsPerMinute_match() {
    // Mathur & Sharma, 8th ed. 2010, example 11.2 (companion).
    CompressibleThroat throat = new CompressibleThroat(OUTSIDE, WARM, 92, 0.8);

    assertThat(throat.diameter(perMinute(6)).millimetres()).isCloseTo(35.26, within(0.005));
    assertThat(jet(throat, 0.75, 0.45, 740).millimetres()).isCloseTo(2.34, within(0.005));
  }

  @Test
  void diameterOfJet_underThreeQuartersOfTheDepression_matches() {
    // Gupta, Fundamentals of IC Engines, PHI 2006, chapter 9 (inputs companion, calculated).
    CompressibleThroat throat = new CompressibleThroat(OUTSIDE, WARM, 90, 0.8);

    assertThat(jet(throat, 0.75, 0.4, 780).millimetres()).isCloseTo(2.204, within(5e-4));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "compressible-to-incompressible.csv", numLinesToSkip = 1)
  void compressibleToIncompressible_matches(double drop, double expected, String source) {
    assertThat(
            CompressibleThroat.compressibleToIncompressible(
                Pressure.ofPascals(101_325), Pressure.ofPascals(drop)))
        .as(source)
        .isCloseTo(expected, withinPercentage(0.01));
  }

  @Test
  void massFlow_overTheIncompressibleFlow_isTheRatio() {
    Pressure drop = Pressure.ofPascals(10_000);
    Pressure outside = Pressure.ofPascals(101_325);
    Diameter diameter = Diameter.ofMillimetres(28);
    double density = 101_325 / (287 * 300.0);
    double incompressible =
        Passage.of(diameter, 1, Density.ofKilogramsPerCubicMetre(density))
            .massFlow(drop)
            .gramsPerSecond();
    double compressible =
        CompressibleThroat.atDepression(outside, WARM, drop, 1).massFlow(diameter).gramsPerSecond();

    // Isentropic flow, γ 1.4, calculated; the textbooks' c_p of 1005 is 0.05 % above 3.5 · 287.
    assertThat(compressible / incompressible).isCloseTo(0.94567, withinPercentage(0.03));
  }

  @Test
  void massFlow_choked_isThatOfTheSpeedOfSound() {
    // Critical pressure ratio 0.5282818 at γ 1.4: any textbook of gas dynamics, calculated.
    double greatest = CompressibleThroat.greatestVelocity(WARM, 0.8);
    CompressibleThroat choked = new CompressibleThroat(OUTSIDE, WARM, greatest, 0.8);

    assertThat(choked.pressureRatio()).isCloseTo(0.5282818, within(5e-8));
    assertThat(
            CompressibleThroat.atDepression(
                    OUTSIDE, WARM, Pressure.ofPascals(101_300 * 0.4717), 0.8)
                .velocity())
        .isCloseTo(greatest, within(0.02));
  }

  @Test
  void atFlow_andAtDepression_areInverses() {
    Diameter diameter = Diameter.ofMillimetres(28);
    CompressibleThroat throat =
        CompressibleThroat.atFlow(OUTSIDE, WARM, diameter, MassFlow.ofGramsPerSecond(60), 0.85);

    assertThat(throat.massFlow(diameter).gramsPerSecond()).isCloseTo(60, within(1e-9));
    CompressibleThroat again =
        CompressibleThroat.atDepression(OUTSIDE, WARM, throat.depression(), 0.85);
    assertThat(again.velocity()).isCloseTo(throat.velocity(), within(1e-8));
    assertThat(again.density().kilogramsPerCubicMetre())
        .isCloseTo(throat.density().kilogramsPerCubicMetre(), within(1e-9));
  }

  @Test
  void atFlow_theChokedFlowItself_isTheSpeedOfSound() {
    double greatest = CompressibleThroat.greatestVelocity(WARM, 0.85);
    Diameter diameter = Diameter.ofMillimetres(28);
    MassFlow choked = new CompressibleThroat(OUTSIDE, WARM, greatest, 0.85).massFlow(diameter);

    assertThat(CompressibleThroat.atFlow(OUTSIDE, WARM, diameter, choked, 0.85).velocity())
        .isEqualTo(greatest);
    MassFlow more = MassFlow.ofGramsPerSecond(choked.gramsPerSecond() * 1.001);
    assertThatThrownBy(() -> CompressibleThroat.atFlow(OUTSIDE, WARM, diameter, more, 0.85))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("up to the choked flow");
  }

  @Test
  void impossibleNumbers_areRefused() {
    assertThatThrownBy(() -> new CompressibleThroat(OUTSIDE, WARM, 0, 0.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("velocity in the throat in m/s 0: allowed above 0");
    assertThatThrownBy(() -> new CompressibleThroat(Pressure.ofPascals(0), WARM, 90, 0.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pressure of the air at rest 0 Pa: allowed above 0 Pa");
    assertThatThrownBy(() -> new CompressibleThroat(OUTSIDE, WARM, 260, 0.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed above 0 up to the choked one");
    assertThatThrownBy(() -> new CompressibleThroat(OUTSIDE, WARM, 90, 1.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("velocity coefficient 1.1: allowed above 0 up to 1");
    assertThatThrownBy(
            () -> CompressibleThroat.atDepression(OUTSIDE, WARM, Pressure.ofPascals(60_000), 0.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("depression 60000 Pa: allowed above 0 up to 0.4717");
    assertThat(new CompressibleThroat(OUTSIDE, WARM, 90, 0.8).toString())
        .contains("90 m/s", "velocity coefficient 0.8");
  }

  private static Diameter jet(
      CompressibleThroat throat, double share, double fuelPerMinute, double density) {
    Pressure drop = Pressure.ofPascals(share * throat.depression().pascals());
    return Passage.of(ANY, 0.60, Density.ofKilogramsPerCubicMetre(density))
        .sizedFor(perMinute(fuelPerMinute), drop)
        .diameter();
  }

  private static MassFlow perMinute(double kilograms) {
    return MassFlow.ofKilogramsPerHour(kilograms * 60);
  }
}
