package dev.jetting.core.fuel;

import static java.util.Objects.requireNonNull;

import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.Temperature;

/** A liquid of stated properties, the same at every temperature. */
record StatedLiquid(
    Density density, DynamicViscosity dynamicViscosity, AirFuelRatio stoichiometricRatio)
    implements Liquid {

  StatedLiquid {
    requireNonNull(density, "density");
    requireNonNull(dynamicViscosity, "dynamicViscosity");
    requireNonNull(stoichiometricRatio, "stoichiometricRatio");
  }

  @Override
  public String toString() {
    return "fuel of "
        + density
        + ", "
        + dynamicViscosity
        + ", stoichiometric "
        + stoichiometricRatio;
  }

  @Override
  public Density density(Temperature temperature) {
    return density;
  }

  @Override
  public DynamicViscosity dynamicViscosity(Temperature temperature) {
    return dynamicViscosity;
  }
}
