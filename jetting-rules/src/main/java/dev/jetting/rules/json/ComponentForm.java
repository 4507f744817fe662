package dev.jetting.rules.json;

import dev.jetting.core.fuel.ElementalComposition;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.fuel.ViscosityPoint;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Optional;

/**
 * A component of a fuel in JSON: its air-fuel ratio follows from the atoms, or is stated.
 *
 * @param id plain name
 * @param composition its atoms, from which the air that it needs follows; or the ratio
 * @param stoichiometricRatio air to fuel by mass; instead of the atoms
 * @param density density at 15 °C, kg/m³
 * @param thermalExpansion thermal expansion, 1/K
 * @param viscosity kinematic viscosity at some temperatures
 */
record ComponentForm(
    String id,
    Optional<Composition> composition,
    Optional<Coefficient> stoichiometricRatio,
    Coefficient density,
    Coefficient thermalExpansion,
    List<ViscosityPoint> viscosity) {

  /**
   * Atoms, and where that comes from.
   *
   * @param carbon atoms of carbon
   * @param hydrogen atoms of hydrogen
   * @param oxygen atoms of oxygen
   * @param source where that comes from
   */
  record Composition(double carbon, double hydrogen, double oxygen, String source) {

    ElementalComposition elements() {
      return new ElementalComposition(carbon, hydrogen, oxygen);
    }
  }

  ComponentForm {
    if (composition.isPresent() == stoichiometricRatio.isPresent()) {
      throw InvalidValueException.worded(
          Sentence.of(composition.isPresent() ? "error.component.both" : "error.component.none")
              .with("id", id),
          Sentence.of("error.one-of-two")
              .with("one", "composition")
              .with("other", "stoichiometricRatio"));
    }
  }

  static ComponentForm of(FuelComponent component) {
    Optional<Composition> composition =
        component.composition().map(elements -> composition(component, elements));
    return new ComponentForm(
        component.id(),
        composition,
        composition.isPresent() ? Optional.empty() : Optional.of(component.stoichiometricRatio()),
        component.density(),
        component.thermalExpansion(),
        component.viscosityPoints());
  }

  /** The note of a ratio worked out from atoms names them and then, after "; ", their source. */
  private static Composition composition(FuelComponent component, ElementalComposition elements) {
    String beforeSource = "; ";
    String note = component.stoichiometricRatio().note();
    return new Composition(
        elements.carbon(),
        elements.hydrogen(),
        elements.oxygen(),
        note.substring(note.indexOf(beforeSource) + beforeSource.length()));
  }

  FuelComponent component() {
    FuelComponent.Builder builder =
        FuelComponent.builder(id).density(density).thermalExpansion(thermalExpansion);
    composition.ifPresent(c -> builder.composition(c.elements(), c.source()));
    stoichiometricRatio.ifPresent(builder::stoichiometricRatio);
    viscosity.forEach(point -> builder.viscosity(point.temperature(), point.viscosity()));
    return builder.build();
  }
}
