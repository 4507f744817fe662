/**
 * What an engine draws through its carburettor, and the mixture it needs.
 *
 * <pre>{@code
 * static EngineSpeed onTheRoad(Engine engine) {
 *   return engine.loadLine().at(ThrottleOpening.ofEighths(3));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Engine}: a crankcase-scavenged two-stroke engine as its carburettor sees it: one
 *       cylinder, one carburettor
 *   <li>{@link Exhaust}: what an exhaust does to the air that the engine draws, against the exhaust
 *       with which the engine's delivery ratio is given
 *   <li>{@link Induction}: how the inlet of a crankcase-scavenged engine breathes: what opens it,
 *       and when
 *   <li>{@link InductionKind}: what opens and closes the inlet of the crankcase
 *   <li>{@link LoadLine}: which engine speed goes with a throttle opening on the road: N = N_idle +
 *       (N_peak − N_idle) √θ
 *   <li>{@link MixtureNeed}: the mixture that an engine should get over the throttle range: λ at
 *       points, straight between them, held at the ends
 *   <li>{@link RpmCurve}: a plain number over engine speed: given at points, straight between them,
 *       held at the ends
 * </ul>
 */
package dev.jetting.core.engine;
