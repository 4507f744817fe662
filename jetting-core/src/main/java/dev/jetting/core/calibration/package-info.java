/**
 * What readings taken on an engine teach about how it differs from the model.
 *
 * <pre>{@code
 * static Lambda afterReadings(Spreads spreads, List<Reading> readings, MixtureModel model) {
 *   Calibration engine = Calibration.untried(spreads).with(readings);
 *   return engine.on(model).expected(ThrottleOpening.FULL);
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link AirCase}: one of nine quadrature nodes over the error of the engine's air
 *   <li>{@link CalibratedModel}: ln λ of an engine with a setup, by the model and by what readings
 *       have taught
 *   <li>{@link Calibration}: what readings have taught about an engine and its carburettor
 *   <li>{@link Disturbance}: what a fault does to the mixture over the throttle range, as a
 *       hypothesis: ln λ rises by a normal number times exp(−(t − at)²/(2 reach²))
 *   <li>{@link FuelErrors}: what is known of an engine at one throttle opening, its air being
 *       given: the three errors that act on the fuel and what is left, normal together
 *   <li>{@link Normal}: a normal distribution
 *   <li>{@link NormalCases}: a number that is normally distributed in each of a few cases: what
 *       statistics call a finite mixture of normal distributions, a word that means something else
 *       here
 *   <li>{@link Reading}: something read on an engine: between which mixtures it ran, at a throttle
 *       opening and speed, with whatever jets happened to be in and in the weather of that hour
 *   <li>{@link Spreads}: how far an engine that nobody has measured may differ from the model, as
 *       standard deviations
 * </ul>
 */
package dev.jetting.core.calibration;
