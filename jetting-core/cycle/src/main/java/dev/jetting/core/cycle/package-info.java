/**
 * A reference for the mixture model: the crankcase of a two-stroke over the crank angle. The model
 * follows it by closed forms.
 *
 * <ul>
 *   <li>{@link dev.jetting.core.cycle.Crankcase}: what a caller states about the engine's inside.
 *   <li>{@link dev.jetting.core.cycle.Inlet}, {@link dev.jetting.core.cycle.Transfer}, {@link
 *       dev.jetting.core.cycle.IntakeTract}: its parts.
 *   <li>{@link dev.jetting.core.cycle.CycleCoefficients}: what the equations assume, each with its
 *       origin.
 *   <li>{@link dev.jetting.core.cycle.CrankcaseCycle}: the simulation of a setup.
 *   <li>{@link dev.jetting.core.cycle.CyclePoint}: its result at one throttle opening and speed.
 * </ul>
 *
 * <p>Use it to check the mixture model on an engine whose ports are known, not in its place. A
 * point takes tenths of a second, and no engine was measured to confirm it.
 */
package dev.jetting.core.cycle;
