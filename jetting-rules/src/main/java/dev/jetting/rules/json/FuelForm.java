package dev.jetting.rules.json;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Optional;

/**
 * A fuel in JSON: a blend or the properties of what flows, and the premix.
 *
 * @param blend what the fuel is mixed of, without oil; or the three properties
 * @param premix petrol to oil, or {@code no oil}; with stated properties, how much of what flows is
 *     oil
 * @param oil the oil; by default one assumed for two-strokes
 * @param density density of what flows, oil included, at its temperature in use; instead of a blend
 * @param dynamicViscosity its dynamic viscosity there
 * @param stoichiometricRatio air to fuel by mass, the oil counted to neither
 */
record FuelForm(
    Optional<FuelBlend> blend,
    Optional<PremixRatio> premix,
    Optional<FuelComponent> oil,
    Optional<Density> density,
    Optional<DynamicViscosity> dynamicViscosity,
    Optional<AirFuelRatio> stoichiometricRatio) {

  FuelForm {
    boolean stated =
        density.isPresent() && dynamicViscosity.isPresent() && stoichiometricRatio.isPresent();
    boolean anyStated =
        density.isPresent() || dynamicViscosity.isPresent() || stoichiometricRatio.isPresent();
    if (premix.isEmpty() || (blend.isPresent() ? anyStated : !stated)) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.fuel.incomplete"), Sentence.of("error.fuel-fields"));
    }
    if (oil.isPresent() && !premix.orElseThrow().hasOil()) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.fuel.oil"), Sentence.of("error.none"));
    }
  }

  static FuelForm of(Fuel fuel) {
    Temperature any = Temperature.ofCelsius(15);
    Optional<Fuel> stated = Optional.of(fuel).filter(f -> f.blend().isEmpty());
    return new FuelForm(
        fuel.blend(),
        Optional.of(fuel.premix()),
        fuel.oil(),
        stated.map(f -> f.density(any)),
        stated.map(f -> f.dynamicViscosity(any)),
        stated.map(Fuel::stoichiometricRatio));
  }

  Fuel fuel() {
    return blend
        .map(Fuel::of)
        .orElseGet(
            () ->
                Fuel.ofProperties(
                    density.orElseThrow(),
                    dynamicViscosity.orElseThrow(),
                    stoichiometricRatio.orElseThrow()))
        .withPremix(premix.orElseThrow(), oil.orElse(FuelComponent.TWO_STROKE_OIL));
  }
}
