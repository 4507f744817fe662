package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ArithmeticTest {

  @Test
  void sums_stayDecimal() {
    assertThat(Length.ofMillimetres(0.1).plus(Length.ofMillimetres(0.2)))
        .isEqualTo(Length.ofMillimetres(0.3));
    assertThat(Length.ofMillimetres(0.3).minus(Length.ofMillimetres(0.1)))
        .isEqualTo(Length.ofMillimetres(0.2));
    assertThat(Area.ofSquareMillimetres(0.1).plus(Area.ofSquareMillimetres(0.2)))
        .isEqualTo(Area.ofSquareMillimetres(0.3));
    assertThat(Area.ofSquareMillimetres(0.3).minus(Area.ofSquareMillimetres(0.1)))
        .isEqualTo(Area.ofSquareMillimetres(0.2));
    assertThat(ScrewTurns.of(1.1).plus(ScrewTurns.of(0.2))).isEqualTo(ScrewTurns.of(1.3));
    assertThat(ScrewTurns.of(1.3).minus(ScrewTurns.of(0.2))).isEqualTo(ScrewTurns.of(1.1));
    assertThat(MassFlow.ofGramsPerSecond(0.1).plus(MassFlow.ofGramsPerSecond(0.2)))
        .isEqualTo(MassFlow.ofGramsPerSecond(0.3));
    assertThat(VolumeFlow.ofLitresPerHour(0.1).plus(VolumeFlow.ofLitresPerHour(0.2)))
        .isEqualTo(VolumeFlow.ofLitresPerHour(0.3));
    assertThat(Probability.of(0.1).complement()).isEqualTo(Probability.of(0.9));
  }

  @Test
  void sums_ofLongNumbersAreDoubleSums() {
    double third = 1.0 / 3;

    assertThat(Length.ofMillimetres(third).plus(Length.ofMillimetres(0.1)).millimetres())
        .isEqualTo(third + 0.1);
    assertThat(Length.ofMillimetres(1).minus(Length.ofMillimetres(third)).millimetres())
        .isEqualTo(1 - third);
  }

  @Test
  void differences_belowZeroAreRefused() {
    assertThatThrownBy(() -> Length.ofMillimetres(1).minus(Length.ofMillimetres(2)))
        .hasMessage("length -1 mm: allowed from 0 to 100000 mm");
    assertThatThrownBy(() -> ScrewTurns.of(1).minus(ScrewTurns.of(1.5)))
        .hasMessage("screw turns -0.5 turns: allowed from 0 to 50 turns");
  }

  @Test
  void temperatures_differByDifferences() {
    Temperature cold = Temperature.ofCelsius(5.1);
    Temperature warm = Temperature.ofCelsius(20.3);
    TemperatureDifference between = TemperatureDifference.ofKelvin(15.2);

    assertThat(warm.minus(cold)).isEqualTo(between);
    assertThat(cold.minus(warm)).isEqualTo(between.negated());
    assertThat(cold.plus(between)).isEqualTo(warm);
    assertThat(warm.minus(between)).isEqualTo(cold);
    assertThat(between.plus(between)).isEqualTo(TemperatureDifference.ofKelvin(30.4));
    assertThat(TemperatureDifference.ofKelvin(0).negated()).hasToString("0 K");
    assertThatThrownBy(() -> cold.minus(TemperatureDifference.ofKelvin(300)))
        .isInstanceOf(QuantityException.class);
  }

  @Test
  void lambda_andAirFuelRatio_areTiedByTheFuel() {
    AirFuelRatio petrol = AirFuelRatio.of(14.7);

    assertThat(AirFuelRatio.of(12).lambda(petrol).value()).isEqualTo(12 / 14.7);
    assertThat(petrol.lambda(petrol)).isEqualTo(Lambda.of(1));
    assertThat(AirFuelRatio.from(Lambda.of(0.5), AirFuelRatio.of(9)))
        .isEqualTo(AirFuelRatio.of(4.5));
    assertThat(MassFlow.ofGramsPerSecond(24).airToFuel(MassFlow.ofKilogramsPerHour(7.2)))
        .isEqualTo(AirFuelRatio.of(12));
    assertThatThrownBy(() -> MassFlow.ofGramsPerSecond(1).airToFuel(MassFlow.ofGramsPerSecond(0)))
        .hasMessageStartingWith("air-fuel ratio Infinity:1: allowed");
  }

  /** π/4 · 2.66² = 5.557163 and π/4 · (2.66² − 2.50²) = 0.648425, by hand. */
  @Test
  void areas_ofCircleAndRing() {
    Diameter jet = Diameter.ofMillimetres(2.66);
    Diameter needle = Diameter.ofMillimetres(2.5);

    assertThat(Area.ofCircle(jet).squareMillimetres()).isCloseTo(5.557163, within(1e-6));
    assertThat(Area.ofRing(jet, needle).squareMillimetres()).isCloseTo(0.648425, within(1e-6));
    assertThat(Area.ofRing(jet, jet)).isEqualTo(Area.ofSquareMillimetres(0));
    assertThatThrownBy(() -> Area.ofRing(needle, jet)).isInstanceOf(QuantityException.class);
    assertThat(JetBore.ofHundredths(126).toDiameter()).isEqualTo(Diameter.ofMillimetres(1.26));
  }

  /** π/4 · 54² · 54 = 123672 mm³, by hand. */
  @Test
  void displacement_ofCylinder() {
    assertThat(
            Displacement.ofCylinder(Diameter.ofMillimetres(54), Length.ofMillimetres(54))
                .cubicCentimetres())
        .isCloseTo(123.672, within(5e-4));
  }

  @Test
  void flows_convertWithADensity() {
    Density petrol = Density.ofKilogramsPerCubicMetre(750);
    VolumeFlow volume = VolumeFlow.ofLitresPerHour(9.6);
    MassFlow mass = MassFlow.ofKilogramsPerHour(7.2);

    assertThat(MassFlow.from(volume, petrol)).isEqualTo(mass);
    assertThat(VolumeFlow.from(mass, petrol)).isEqualTo(volume);
    assertThat(
            KinematicViscosity.from(DynamicViscosity.ofMillipascalSeconds(0.45), petrol)
                .squareMillimetresPerSecond())
        .isCloseTo(0.6, within(1e-15));
  }

  @Test
  void premixRatio_knowsOil() {
    PremixRatio premix = PremixRatio.ofPetrolToOil(25);

    assertThat(premix.hasOil()).isTrue();
    assertThat(premix.petrolToOil()).isEqualTo(25);
    assertThat(premix.oilShareOfPetrol()).isEqualTo(0.04);
    assertThat(premix.isMoreThan(PremixRatio.ofPetrolToOil(50))).isTrue();
    assertThat(PremixRatio.NO_OIL.isLessThan(PremixRatio.ofPetrolToOil(10_000))).isTrue();
    assertThat(PremixRatio.NO_OIL.hasOil()).isFalse();
    assertThat(PremixRatio.NO_OIL.oilShareOfPetrol()).isZero();
    assertThat(PremixRatio.NO_OIL.oilPercent()).isZero();
    assertThat(PremixRatio.ofOilPercent(0)).isSameAs(PremixRatio.NO_OIL);
    assertThatIllegalStateException()
        .isThrownBy(PremixRatio.NO_OIL::petrolToOil)
        .withMessageContaining("no oil");
  }

  @Test
  void screwKind_knowsWhichWayIsRicher() {
    assertThat(ScrewKind.MIXTURE.outIsRicher()).isTrue();
    assertThat(ScrewKind.AIR.outIsRicher()).isFalse();
  }
}
