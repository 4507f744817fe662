/**
 * Air: its density and humidity, the standard atmosphere, and the correction of measured power to
 * standard air.
 *
 * <pre>{@code
 * static Density onThePass(Air valley) {
 *   return Air.at(Altitude.ofMetres(2000), Temperature.ofCelsius(0), valley.humidity()).density();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Air}: the air an engine breathes: pressure, temperature and relative humidity, and
 *       what follows from them
 *   <li>{@link AirFormula}: the formulas for the density of moist air
 *   <li>{@link PowerCorrection}: the factor that carries power measured in some air to the standard
 *       air of a test code, for a spark-ignition engine without a supercharger at full throttle
 *   <li>{@link Psychrometrics}: ways to state how much water is in the air, turned into one
 *       another: relative humidity, dew point, wet bulb, humidity ratio, specific volume
 *   <li>{@link StandardAtmosphere}: the standard atmosphere of ISO 2533:1975, from −5000 m
 *       (addendum 2) to 11 000 m geopotential
 * </ul>
 */
package dev.jetting.core.air;
