package dev.jetting.core.elementary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Area;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import org.junit.jupiter.api.Test;

class PassageTest {

  private static final Passage JET =
      Passage.of(Diameter.ofMillimetres(1.25), 0.66, Density.ofKilogramsPerCubicMetre(750))
          .withHead(Length.ofMillimetres(5));

  @Test
  void drop_inTheThroatOfAFourCylinderEngine_matches() {
    // Mathur & Sharma, Internal Combustion Engine, 8th ed. 2010, example 11.3 (companion).
    Density air = Density.ofKilogramsPerCubicMetre(1.2);
    MassFlow flow =
        AirDemand.fourStroke(
            Displacement.ofCubicCentimetres(4 * Math.PI / 4 * 10 * 10 * 12),
            EngineSpeed.ofRpm(2000),
            0.7,
            air);

    assertThat(Passage.of(Diameter.ofMillimetres(30), 0.8, air).drop(flow).pascals())
        .isCloseTo(3629.6, within(0.05));
  }

  @Test
  void twoStroke_drawsTwiceAsOften() {
    Displacement displacement = Displacement.ofCubicCentimetres(200);
    EngineSpeed speed = EngineSpeed.ofRpm(6000);
    Density air = Density.ofKilogramsPerCubicMetre(1.2);

    // 0.2 l · 0.7 · 100/s · 1.2 g/l, by hand.
    assertThat(AirDemand.twoStroke(displacement, speed, 0.7, air).gramsPerSecond())
        .isCloseTo(16.8, within(1e-9));
    assertThat(AirDemand.fourStroke(displacement, speed, 0.7, air).gramsPerSecond())
        .isCloseTo(8.4, within(1e-9));
    assertThatThrownBy(() -> AirDemand.twoStroke(displacement, speed, 2.5, air))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("filling 2.5: allowed 0 to 2");
  }

  @Test
  void sizedFor_aJetUnderAVenturi_matches() {
    // Mathur & Sharma, 8th ed. 2010, example 11.4 (companion): 1.013 bar, R 287 J/(kg K).
    MassFlow fuel = MassFlow.ofKilogramsPerHour(7.5);
    Passage throat =
        Passage.of(
            Diameter.ofMillimetres(22),
            0.82,
            Density.ofKilogramsPerCubicMetre(101_300 / (287 * 298.0)));
    Pressure drop = throat.drop(MassFlow.ofKilogramsPerHour(7.5 * 15));
    Passage jet =
        Passage.builder()
            .area(Area.ofSquareMillimetres(1))
            .coefficient(0.7)
            .fluid(Density.ofKilogramsPerCubicMetre(750))
            .head(Length.ofMillimetres(4))
            .build()
            .sizedFor(fuel, drop);

    assertThat(drop.pascals()).isCloseTo(4242.9, within(0.05));
    assertThat(jet.diameter().millimetres()).isCloseTo(1.228, within(5e-4));
    assertThat(jet.massFlow(drop).gramsPerSecond()).isCloseTo(fuel.gramsPerSecond(), within(1e-12));
  }

  @Test
  void massFlow_ofANozzleAtAnAirVelocity_matches() {
    // Keswani, IC Engines, chapter 9, 9.10 (companion).
    Passage throat =
        Passage.of(Diameter.ofMillimetres(20), 0.84, Density.ofKilogramsPerCubicMetre(1.28));
    Passage nozzle =
        Passage.builder()
            .area(Area.ofSquareMillimetres(1.8))
            .coefficient(0.6)
            .fluid(Density.ofKilogramsPerCubicMetre(750))
            .head(Length.ofMillimetres(2.8))
            .build();

    assertThat(nozzle.massFlow(throat.dropAtVelocity(58)).gramsPerSecond())
        .isCloseTo(2.30, within(0.005));
  }

  @Test
  void belowTheStartingDrop_nothingFlows() {
    // ρ g h = 750 · 9.80665 · 0.005.
    assertThat(JET.startingDrop().pascals()).isCloseTo(36.775, within(0.001));
    assertThat(JET.massFlow(JET.startingDrop()).gramsPerSecond()).isZero();
    assertThat(JET.velocity(Pressure.ofPascals(10))).isZero();
    assertThat(JET.massFlow(Pressure.ofPascals(40)).gramsPerSecond()).isPositive();
  }

  @Test
  void sizedFor_aDropAtWhichNothingFlows_isRefused() {
    assertThatThrownBy(() -> JET.sizedFor(MassFlow.ofGramsPerSecond(1), Pressure.ofPascals(30)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pressure drop 30 Pa: allowed above that at which flow starts");
  }

  @Test
  void impossibleNumbers_areRefused() {
    Density fuel = Density.ofKilogramsPerCubicMetre(750);
    Diameter one = Diameter.ofMillimetres(1);

    assertThatThrownBy(() -> Passage.of(one, 0, fuel))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("coefficient 0: allowed above 0 up to 1");
    assertThatThrownBy(() -> Passage.of(one, Double.NaN, fuel))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("coefficient NaN: allowed above 0 up to 1");
    assertThatThrownBy(
            () ->
                Passage.builder()
                    .area(Area.ofSquareMillimetres(0))
                    .coefficient(0.7)
                    .fluid(fuel)
                    .head(Length.ofMillimetres(0))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("area of a passage 0 mm²: allowed above 0 mm²");
    assertThatThrownBy(() -> JET.dropAtVelocity(-1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("velocity in m/s -1: allowed 0 to 400");
  }

  @Test
  void toString_namesEverything() {
    assertThat(JET.toString()).contains("coefficient 0.66", "750 kg/m³", "5 mm");
  }
}
