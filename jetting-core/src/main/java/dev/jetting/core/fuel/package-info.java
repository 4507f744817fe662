/**
 * Fuel: composition, blends, premix oil, and the density, viscosity and air need that follow from
 * them.
 */
package dev.jetting.core.fuel;
