package dev.jetting.core.elementary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class ElementaryCarburettorProperties {

  @Property
  void airFuelRatio_fallsWithDepressionTowardsThatWithoutLip(
      @ForAll("carburettors") ElementaryCarburettor carburettor,
      @ForAll @DoubleRange(min = 1.1, max = 100) double overStart) {
    double start = carburettor.startingDepression().pascals();
    AirFuelRatio low = carburettor.airFuelRatio(Pressure.ofPascals(start * overStart));
    AirFuelRatio high = carburettor.airFuelRatio(Pressure.ofPascals(start * overStart * 1.1));

    assertThat(high).isLessThan(low);
    assertThat(high).isGreaterThan(carburettor.airFuelRatioWithoutLip());
  }

  @Property
  void eachSolver_isTheInverseOfTheAirFuelRatio(
      @ForAll("carburettors") ElementaryCarburettor carburettor,
      @ForAll @DoubleRange(min = 1.5, max = 100) double overStart,
      @ForAll @DoubleRange(min = 8, max = 20) double wanted) {
    Pressure depression =
        Pressure.ofPascals(carburettor.startingDepression().pascals() * overStart);
    AirFuelRatio ratio = AirFuelRatio.of(wanted);

    assertThat(carburettor.withJetFor(ratio, depression).airFuelRatio(depression).value())
        .isCloseTo(wanted, within(1e-9));
    assertThat(carburettor.withThroatFor(ratio, depression).airFuelRatio(depression).value())
        .isCloseTo(wanted, within(1e-9));
    Pressure found = carburettor.depressionFor(carburettor.airFuelRatio(depression));
    assertThat(found.pascals() / depression.pascals()).isCloseTo(1, within(1e-9));
  }

  @Property
  void thinnerAir_isRicher(
      @ForAll("carburettors") ElementaryCarburettor carburettor,
      @ForAll @DoubleRange(min = 0.5, max = 0.99) double thinner) {
    Density thin =
        Density.ofKilogramsPerCubicMetre(
            carburettor.air().fluid().kilogramsPerCubicMetre() * thinner);

    assertThat(carburettor.inAir(thin).airFuelRatioWithoutLip())
        .isLessThan(carburettor.airFuelRatioWithoutLip());
  }

  @Property
  void passage_dropAndFlowAreInverses(
      @ForAll("carburettors") ElementaryCarburettor carburettor,
      @ForAll @DoubleRange(min = 0.01, max = 20) double gramsPerSecond) {
    MassFlow flow = MassFlow.ofGramsPerSecond(gramsPerSecond);
    Passage jet = carburettor.fuel();

    assertThat(jet.massFlow(jet.drop(flow)).gramsPerSecond() / gramsPerSecond)
        .isCloseTo(1, within(1e-6));
    assertThat(carburettor.air().massFlow(carburettor.air().drop(flow)).gramsPerSecond())
        .isCloseTo(gramsPerSecond, within(1e-9));
  }

  @Property
  void compressibleThroat_atFlow_givesTheFlowBack(
      @ForAll @DoubleRange(min = 15, max = 45) double millimetres,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double ofChoked,
      @ForAll @DoubleRange(min = 0.5, max = 1) double coefficient) {
    Pressure pressure = Pressure.ofPascals(95_000);
    Temperature temperature = Temperature.ofCelsius(25);
    Diameter diameter = Diameter.ofMillimetres(millimetres);
    double greatest = CompressibleThroat.greatestVelocity(temperature, coefficient);
    double choked =
        new CompressibleThroat(pressure, temperature, greatest, coefficient)
            .massFlow(diameter)
            .gramsPerSecond();
    MassFlow flow = MassFlow.ofGramsPerSecond(choked * ofChoked);
    CompressibleThroat throat =
        CompressibleThroat.atFlow(pressure, temperature, diameter, flow, coefficient);

    assertThat(throat.massFlow(diameter).gramsPerSecond() / flow.gramsPerSecond())
        .isCloseTo(1, within(1e-9));
    assertThat(throat.velocity()).isLessThan(greatest);
    assertThat(throat.diameter(flow).millimetres()).isCloseTo(millimetres, within(1e-6));
  }

  @Property
  void compressibility_takesMoreOffTheFlowAtAStrongerDepression(
      @ForAll @DoubleRange(min = 100, max = 40_000) double pascals) {
    Pressure outside = Pressure.ofPascals(101_325);
    double weak =
        CompressibleThroat.compressibleToIncompressible(outside, Pressure.ofPascals(pascals));
    double strong =
        CompressibleThroat.compressibleToIncompressible(
            outside, Pressure.ofPascals(pascals * 1.05));

    assertThat(strong).isLessThan(weak);
    assertThat(weak).isLessThan(1);
  }

  /** Venturi carburettors with a nozzle lip. */
  @Provide
  Arbitrary<ElementaryCarburettor> carburettors() {
    return Combinators.combine(
            Arbitraries.doubles().between(15, 45),
            Arbitraries.doubles().between(0.8, 3),
            Arbitraries.doubles().between(0.5, 1),
            Arbitraries.doubles().between(0.5, 1),
            Arbitraries.doubles().between(1, 10))
        .as(
            (throat, jet, airCoefficient, fuelCoefficient, lip) ->
                ElementaryCarburettor.builder()
                    .air(
                        Passage.of(
                            Diameter.ofMillimetres(throat),
                            airCoefficient,
                            Density.ofKilogramsPerCubicMetre(1.2)))
                    .fuel(
                        Passage.of(
                                Diameter.ofMillimetres(jet),
                                fuelCoefficient,
                                Density.ofKilogramsPerCubicMetre(745))
                            .withHead(Length.ofMillimetres(lip)))
                    .build());
  }
}
