package dev.jetting.core.elementary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import org.junit.jupiter.api.Test;

class ElementaryCarburettorTest {

  /** Mathur & Sharma, Internal Combustion Engine, 8th ed. 2010, example 11.8 (companion). */
  private static final ElementaryCarburettor EXAMPLE_11_8 =
      ElementaryCarburettor.builder()
          .air(Passage.of(Diameter.ofMillimetres(20), 0.85, density(1.2)))
          .fuel(
              Passage.of(Diameter.ofMillimetres(1.25), 0.66, density(750))
                  .withHead(Length.ofMillimetres(5)))
          .build();

  private static final Pressure DEPRESSION = Pressure.ofHectopascals(70);

  @Test
  void airFuelRatio_withAndWithoutLip_matches() {
    assertThat(EXAMPLE_11_8.airFuelRatioWithoutLip().value()).isCloseTo(13.19, within(0.005));
    assertThat(EXAMPLE_11_8.airFuelRatio(DEPRESSION).value()).isCloseTo(13.223, within(5e-4));
  }

  @Test
  void startingAirVelocity_matches() {
    // Mathur & Sharma, 8th ed. 2010, example 11.8 (companion).
    assertThat(EXAMPLE_11_8.startingAirVelocity()).isCloseTo(7.83, within(0.005));
  }

  @Test
  void airFuelRatio_ofALargeVenturi_matches() {
    // Keswani, IC Engines, chapter 9, 9.2 (companion).
    ElementaryCarburettor carburettor =
        ElementaryCarburettor.builder()
            .air(Passage.of(Diameter.ofMillimetres(75), 0.93, density(1.29)))
            .fuel(Passage.of(Diameter.ofMillimetres(5), 0.68, density(720)))
            .build();

    assertThat(carburettor.airFuelRatioWithoutLip().value()).isCloseTo(13.0, within(0.05));
    assertThat(carburettor.airFuelRatio(Pressure.ofPascals(500)).value())
        .isCloseTo(carburettor.airFuelRatioWithoutLip().value(), within(1e-9));
  }

  @Test
  void throatToJet_matches() {
    // Keswani, IC Engines, chapter 9, 9.3 (companion).
    assertThat(
            ElementaryCarburettor.throatToJet(
                AirFuelRatio.of(15), 0.84, density(1.28), 0.7, density(753)))
        .isCloseTo(17.4, within(0.05));
  }

  @Test
  void inOtherAir_at5000Metres_matches() {
    // Mathur & Sharma, 8th ed. 2010, example 11.7 (companion): h = 19200 log10(1.013/p), −6.5 K/km.
    double pressureRatio = Math.pow(10, -5000 / 19_200.0);
    double temperatureRatio = (300 - 0.0065 * 5000) / 300;
    Density seaLevel = density(101_300 / (287 * 300.0));
    Density there = density(seaLevel.kilogramsPerCubicMetre() * pressureRatio / temperatureRatio);

    assertThat(ElementaryCarburettor.inOtherAir(AirFuelRatio.of(14), seaLevel, there).value())
        .isCloseTo(10.99, within(0.005));
  }

  @Test
  void inAir_agreesWithInOtherAir() {
    AirFuelRatio rescaled =
        ElementaryCarburettor.inOtherAir(
            EXAMPLE_11_8.airFuelRatioWithoutLip(), density(1.2), density(0.9));

    assertThat(EXAMPLE_11_8.inAir(density(0.9)).airFuelRatioWithoutLip().value())
        .isCloseTo(rescaled.value(), within(1e-9));
  }

  @Test
  void noFuelFlows_belowTheStartingDepression() {
    Pressure start = EXAMPLE_11_8.startingDepression();

    assertThat(EXAMPLE_11_8.fuelFlow(start).gramsPerSecond()).isZero();
    assertThat(EXAMPLE_11_8.airFlow(start).gramsPerSecond()).isPositive();
    assertThatThrownBy(() -> EXAMPLE_11_8.airFuelRatio(start))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above that at which flow starts");
    assertThatThrownBy(() -> EXAMPLE_11_8.withThroatFor(AirFuelRatio.of(13), start))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above that at which flow starts");
  }

  @Test
  void depressionFor_aRatioThatTheLipCannotMake_isRefused() {
    assertThatThrownBy(() -> EXAMPLE_11_8.depressionFor(AirFuelRatio.of(13)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("air-fuel ratio 13:1: allowed leaner than without the lip");
    ElementaryCarburettor noLip =
        ElementaryCarburettor.builder()
            .air(EXAMPLE_11_8.air())
            .fuel(EXAMPLE_11_8.fuel().withHead(Length.ofMillimetres(0)))
            .build();
    assertThatThrownBy(() -> noLip.depressionFor(AirFuelRatio.of(15)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("height of the lip 0 mm: allowed above 0 mm");
  }

  @Test
  void air_thatMustBeLifted_isRefused() {
    Passage lifted = EXAMPLE_11_8.air().withHead(Length.ofMillimetres(1));

    assertThatThrownBy(
            () -> ElementaryCarburettor.builder().air(lifted).fuel(EXAMPLE_11_8.fuel()).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("head of the air 1 mm: allowed 0 mm");
  }

  private static Density density(double kilogramsPerCubicMetre) {
    return Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre);
  }
}
