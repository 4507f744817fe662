/**
 * The mixture model itself: operating points, sweeps, maps, shares and step effects.
 *
 * <pre>{@code
 * static Lambda withBiggerMain(Setup setup) {
 *   Setting bigger = setup.setting().withMainJet(RiderInput.mainJet("#118"));
 *   return MixtureModel.of(setup.withSetting(bigger)).at(ThrottleOpening.FULL).lambda();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Circuit}: the four fields of the throttle range that a tuner distinguishes
 *   <li>{@link CustomarySteps}: the step in which a tuner changes each part: what makes the parts
 *       comparable
 *   <li>{@link ErrorSource}: where a real engine and carburettor may differ from the model
 *   <li>{@link FuelSensitivities}: ln λ at an operating point, and how it answers to the three
 *       sources that act on the fuel alone and to the sizes of the parts
 *   <li>{@link FullThrottleDraw}: the fuel that full throttle draws at the speed of the load line's
 *       peak, which a float valve has to let in
 *   <li>{@link MeteringPart}: a part, or an adjustment of one, with which a tuner changes the
 *       mixture
 *   <li>{@link MixtureModel}: the mixture that a setup gives, at any throttle opening and engine
 *       speed
 *   <li>{@link MixturePoint}: the mixture at one throttle opening and engine speed, with what leads
 *       to it
 *   <li>{@link MixtureResponse}: the mixture at an operating point with all that it answers to
 *   <li>{@link Overrun}: the closed throttle after a long open run: engine speed still high, the
 *       engine at its hottest, and only the pilot circuit to bring fuel, and oil with it
 *   <li>{@link PartEffect}: what a part does to the mixture at one operating point
 *   <li>{@link Sensitivities}: how ln λ answers to the ways in which a real engine may differ from
 *       the model: ∂ ln λ/∂ z, z the natural logarithm of true by modelled flow
 *   <li>{@link Setup}: everything that decides the mixture: an engine, the setting of its
 *       carburettor, the air of the day, the fuel in the tank and how warm it is in the float
 *       chamber
 *   <li>{@link SizeSensitivities}: how ln λ at an operating point answers to the sizes of the parts
 *       as made: ∂ ln λ/∂ size, 1/mm
 * </ul>
 */
package dev.jetting.core.mixture;
