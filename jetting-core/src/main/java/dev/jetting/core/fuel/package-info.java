/**
 * Fuel: composition, blends, premix oil, and the density, viscosity and air need that follow from
 * them.
 *
 * <pre>{@code
 * static AirFuelRatio stoichiometric() {
 *   return Fuel.E5.withPremix(RiderInput.premix("50:1")).stoichiometricRatio();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link ElementalComposition}: what a fuel is made of, as numbers of atoms
 *   <li>{@link Fuel}: what flows through the jets: a blend, with premix oil or without, or a liquid
 *       whose properties are stated outright
 *   <li>{@link FuelBlend}: components in stated shares, by volume at 15 °C (as fuel is sold: E10 is
 *       10 % of the volume) or by mass
 *   <li>{@link FuelComponent}: one liquid in a fuel: petrol, ethanol, oil
 *   <li>{@link FuelInput}: reads fuels as riders write them: {@code E5}, {@code E10 1:40}, {@code
 *       petrol, premix 50}
 *   <li>{@link FuelShare}: how much of a blend one component is
 *   <li>{@link ViscosityPoint}: the kinematic viscosity of a liquid at one temperature
 * </ul>
 */
package dev.jetting.core.fuel;
