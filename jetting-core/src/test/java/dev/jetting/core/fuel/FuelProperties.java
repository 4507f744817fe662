package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.PremixRatio;
import dev.jetting.units.Temperature;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class FuelProperties {

  @Property
  void stoichiometricRatio_ofABlend_liesBetweenItsParts(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share, @ForAll boolean byMass) {
    List<FuelShare> shares =
        List.of(
            new FuelShare(FuelComponent.PETROL, 1 - share),
            new FuelShare(FuelComponent.METHANOL, share));
    FuelBlend blend = byMass ? FuelBlend.byMass(shares) : FuelBlend.byVolume(shares);

    assertThat(blend.stoichiometricRatio().value())
        .isGreaterThan(FuelComponent.METHANOL.stoichiometricRatio().value())
        .isLessThan(FuelComponent.PETROL.stoichiometricRatio().value());
  }

  @Property
  void densityAndViscosity_fallWithTemperature(
      @ForAll("fuels") Fuel fuel, @ForAll @DoubleRange(min = -40, max = 79) double celsius) {
    Temperature cool = Temperature.ofCelsius(celsius);
    Temperature warm = Temperature.ofCelsius(celsius + 1);

    assertThat(fuel.density(warm)).isLessThan(fuel.density(cool));
    assertThat(fuel.dynamicViscosity(warm)).isLessThan(fuel.dynamicViscosity(cool));
  }

  @Property
  void everything_growsWithOil(
      @ForAll("fuels") Fuel fuel,
      @ForAll @DoubleRange(min = 10, max = 200) double lessOil,
      @ForAll @DoubleRange(min = -40, max = 80) double celsius) {
    Fuel lean = fuel.withPremix(PremixRatio.ofPetrolToOil(lessOil));
    Fuel oily = fuel.withPremix(PremixRatio.ofPetrolToOil(lessOil * 0.9));
    Temperature temperature = Temperature.ofCelsius(celsius);

    assertThat(oily.oilMassFraction()).isGreaterThan(lean.oilMassFraction()).isLessThan(1);
    assertThat(oily.density(temperature)).isGreaterThan(lean.density(temperature));
    assertThat(oily.dynamicViscosity(temperature))
        .isGreaterThan(lean.dynamicViscosity(temperature));
  }

  @Property
  void mass_isKeptWhenTheFuelWarms(
      @ForAll("fuels") Fuel fuel, @ForAll @DoubleRange(min = -40, max = 80) double celsius) {
    FuelBlend blend = fuel.blend().orElseThrow();
    Temperature temperature = Temperature.ofCelsius(celsius);
    double volume = 0;
    for (FuelShare share : blend.shares()) {
      double grown =
          share.component().density().value()
              / share.component().density(temperature).kilogramsPerCubicMetre();
      volume += share.share() * grown;
    }
    double at15 = blend.density(Temperature.ofCelsius(15)).kilogramsPerCubicMetre();

    assertThat(blend.density(temperature).kilogramsPerCubicMetre() * volume)
        .isCloseTo(at15, within(1e-9));
  }

  @Property
  void composition_scalesWithoutChange(
      @ForAll @DoubleRange(min = 0.5, max = 10) double scale,
      @ForAll @DoubleRange(min = 0, max = 4) double hydrogen,
      @ForAll @DoubleRange(min = 0, max = 1) double oxygen) {
    ElementalComposition one = new ElementalComposition(1, hydrogen, oxygen);
    ElementalComposition more = new ElementalComposition(scale, scale * hydrogen, scale * oxygen);

    assertThat(more.stoichiometricRatio().value())
        .isCloseTo(one.stoichiometricRatio().value(), within(1e-9));
  }

  @Property
  void oxygenInTheFuel_lowersItsAirNeed(
      @ForAll @DoubleRange(min = 0, max = 4) double hydrogen,
      @ForAll @DoubleRange(min = 0.01, max = 1) double oxygen) {
    assertThat(new ElementalComposition(1, hydrogen, oxygen).stoichiometricRatio())
        .isLessThan(ElementalComposition.hydrocarbon(hydrogen).stoichiometricRatio());
  }

  /** Petrol and ethanol in any shares, with oil or without. */
  @Provide
  Arbitrary<Fuel> fuels() {
    Arbitrary<Double> ethanol = Arbitraries.doubles().between(0.01, 0.99);
    Arbitrary<PremixRatio> premix =
        Arbitraries.doubles().between(10, 200).map(PremixRatio::ofPetrolToOil);
    return Combinators.combine(
            ethanol, Arbitraries.oneOf(Arbitraries.just(PremixRatio.NO_OIL), premix))
        .as(
            (share, oil) ->
                Fuel.of(
                        FuelBlend.byVolume(
                            List.of(
                                new FuelShare(FuelComponent.PETROL, 1 - share),
                                new FuelShare(FuelComponent.ETHANOL, share))))
                    .withPremix(oil));
  }
}
