package dev.jetting.core.fuel;

import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.Temperature;

/** What a fuel is before oil goes in. */
sealed interface Liquid permits FuelBlend, StatedLiquid {

  Density density(Temperature temperature);

  DynamicViscosity dynamicViscosity(Temperature temperature);

  AirFuelRatio stoichiometricRatio();
}
