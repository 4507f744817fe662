/**
 * A reference for the mixture model: the crankcase of a two-stroke over the crank angle. The model
 * follows it by closed forms.
 *
 * <p>Use it to check the mixture model on an engine whose ports are known, not in its place. A
 * point takes tenths of a second, and no engine was measured to confirm it.
 *
 * <pre>{@code
 * static Lambda reference(Setup setup, Crankcase inside) {
 *   EngineSpeed speed = setup.engine().loadLine().at(ThrottleOpening.FULL);
 *   return CrankcaseCycle.of(setup, inside).at(ThrottleOpening.FULL, speed).lambda();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Crankcase}: the inside of a crankcase-scavenged engine, as the reference simulation
 *       needs it
 *   <li>{@link CrankcaseCycle}: the mixture of a setup by the cycle of its crankcase: a reference
 *       for {@link dev.jetting.core.mixture.MixtureModel}
 *   <li>{@link CycleCoefficients}: what the equations of the cycle assume beyond the coefficients
 *       of the carburettor
 *   <li>{@link CyclePoint}: what the cycle comes to at one throttle opening and speed, as means
 *       over a turn
 *   <li>{@link Inlet}: how the crankcase is opened to the carburettor: by the piston's skirt, by a
 *       rotary valve or by a reed
 *   <li>{@link IntakeTract}: the way from the slide to the inlet
 *   <li>{@link Transfer}: the transfer ports, which the piston uncovers about bottom dead centre,
 *       and what stands behind them
 * </ul>
 */
package dev.jetting.core.cycle;
