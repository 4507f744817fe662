package dev.jetting.rules.json;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Temperature;
import java.util.Optional;

/**
 * A fuel in JSON: a blend with its premix and oil, or the properties of what flows.
 *
 * @param blend what the fuel is mixed of, without oil; or the three properties
 * @param premix petrol to oil
 * @param oil the oil; one assumed for two-strokes unless told
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
    boolean blended = blend.isPresent() && premix.isPresent();
    boolean stated =
        density.isPresent() && dynamicViscosity.isPresent() && stoichiometricRatio.isPresent();
    boolean anyOfBlend = blend.isPresent() || premix.isPresent() || oil.isPresent();
    boolean anyStated =
        density.isPresent() || dynamicViscosity.isPresent() || stoichiometricRatio.isPresent();
    if (!(blended && !anyStated) && !(stated && !anyOfBlend)) {
      throw new IllegalArgumentException(
          "fuel told by halves: allowed blend and premix, and oil of its own, or density,"
              + " dynamicViscosity and stoichiometricRatio");
    }
    if (oil.isPresent() && !premix.orElseThrow().hasOil()) {
      throw new IllegalArgumentException("oil in a fuel without premix: allowed none");
    }
  }

  static FuelForm of(Fuel fuel) {
    if (fuel.blend().isPresent()) {
      return new FuelForm(
          fuel.blend(),
          Optional.of(fuel.premix()),
          fuel.oil(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
    Temperature any = Temperature.ofCelsius(15);
    return new FuelForm(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(fuel.density(any)),
        Optional.of(fuel.dynamicViscosity(any)),
        Optional.of(fuel.stoichiometricRatio()));
  }

  Fuel fuel() {
    return blend
        .map(
            b ->
                Fuel.of(b)
                    .withPremix(premix.orElseThrow(), oil.orElse(FuelComponent.TWO_STROKE_OIL)))
        .orElseGet(
            () ->
                Fuel.ofProperties(
                    density.orElseThrow(),
                    dynamicViscosity.orElseThrow(),
                    stoichiometricRatio.orElseThrow()));
  }
}
