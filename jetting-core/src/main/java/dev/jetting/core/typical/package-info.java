/**
 * Typical engines and carburettors: what a rider who has measured little may assume, by scaling
 * rules that MODEL.md states, and how much a wrong guess matters.
 *
 * <pre>{@code
 * static Engine typical() {
 *   return TypicalEngine.builder()
 *       .displacement(Displacement.ofCubicCentimetres(123))
 *       .tune(StateOfTune.STANDARD)
 *       .cooling(Cooling.AIR)
 *       .induction(InductionKind.PISTON_PORT)
 *       .build()
 *       .engine();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Cooling}: what carries the heat of an engine away: the hotter it runs, the richer it
 *       must be
 *   <li>{@link MachineValue}: a value of a machine that few riders know, so a typical machine
 *       assumes it
 *   <li>{@link StateOfTune}: how much an engine was built for power: it decides peak speed,
 *       delivery, timing of the inlet and the mixture needed together, so that the four fit each
 *       other
 *   <li>{@link TypicalCarburettor}: a slide carburettor as it usually is, by its bore and the kind
 *       of its screw
 *   <li>{@link TypicalEngine}: an engine as it usually is, by what every owner knows of it
 *   <li>{@link WrongGuess}: how much a wrong guess of one value matters on one machine: by how much
 *       ln λ changes over the throttle range if the value is larger by its plausible error
 * </ul>
 */
package dev.jetting.core.typical;
