/**
 * What is screwed into a carburettor, and the carburettor itself: geometry and flow coefficients.
 *
 * <pre>{@code
 * static Setting grooveLower(Setting setting) {
 *   int groove = setting.clip().grooveFromTop() + 1; // a lower groove lifts the needle: richer
 *   return setting.withClip(ClipPosition.fromTop(groove, setting.needle().grooves()));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Carburettor}: a slide carburettor without the parts that a tuner changes; those are
 *       the {@link Setting}
 *   <li>{@link Coefficient}: a number of the model with its source
 *   <li>{@link FloatValve}: the valve that lets fuel into the float chamber, fed by gravity
 *   <li>{@link Floats}: how the floats of a carburettor are set, against how they are meant to be
 *   <li>{@link FlowCoefficients}: how the passages of a carburettor family flow: the numbers of the
 *       mixture model that no ruler gives
 *   <li>{@link Intake}: what stands before the carburettor: an open mouth, or a filter or box that
 *       the air has to pass
 *   <li>{@link Needle}: a needle: a cylinder, then one or more tapers, hung from a clip in one of
 *       its grooves
 *   <li>{@link NeedleJet}: a needle jet: the tube in which the needle hangs
 *   <li>{@link PilotCircuit}: the pilot circuit of a carburettor apart from the jet in it
 *   <li>{@link Screw}: how far the screw of the pilot circuit is out, and which kind of screw the
 *       advice was meant for
 *   <li>{@link Setting}: a carburettor setting: the carburettor with the parts that stand in it and
 *       what stands before it
 *   <li>{@link Taper}: a stretch of a needle that gets thinner towards its tip
 * </ul>
 */
package dev.jetting.core.parts;
