/**
 * A reference for the mixture model: the crankcase of a two-stroke over the crank angle, with the
 * pulsating flow past the slide that the model describes by mean values.
 *
 * <ul>
 *   <li>{@link dev.jetting.core.cycle.Crankcase}: what a caller states about the engine's inside.
 *   <li>{@link dev.jetting.core.cycle.Inlet}, {@link dev.jetting.core.cycle.Transfer}, {@link
 *       dev.jetting.core.cycle.IntakeTract}: its parts.
 *   <li>{@link dev.jetting.core.cycle.CycleCoefficients}: what the equations assume, each with its
 *       origin.
 *   <li>{@link dev.jetting.core.cycle.CrankcaseCycle}: the simulation of a setup.
 *   <li>{@link dev.jetting.core.cycle.CyclePoint}: its result at one throttle opening and speed.
 *   <li>{@link dev.jetting.core.cycle.FastCycle}: closed forms that follow the simulation, with
 *       {@link dev.jetting.core.cycle.FastPoint} as their result.
 * </ul>
 *
 * <p>Use it to check the fast model on an engine whose ports are known, not in its place: a point
 * takes tenths of a second, and no engine was measured to confirm it.
 */
package dev.jetting.core.cycle;
