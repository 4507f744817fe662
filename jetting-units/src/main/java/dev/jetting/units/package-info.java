/**
 * Immutable quantities, one type for each thing that is measured or set on a carburettor.
 *
 * <p>{@link dev.jetting.units.Quantity} says what all of them promise: how they are made, read from
 * text, printed, compared and refused. No parameter takes and no method returns {@code null}; a
 * {@code null} argument throws {@link NullPointerException} naming the parameter.
 *
 * <p>Nothing here depends on the default locale, the default time zone or the clock.
 *
 * <pre>{@code
 * static String onTheBench(String stamped) {
 *   JetBore main = RiderInput.mainJet(stamped); // such as "#118"
 *   return TradeStyle.main(main) + " measures " + main.millimetres() + " mm";
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link AirFuelRatio}: air to fuel in a mixture, by mass, written 14.7:1
 *   <li>{@link Altitude}: a geometric height above mean sea level; negative below it
 *   <li>{@link Area}: an area, such as the open cross-section of a jet or a port
 *   <li>{@link ClipPosition}: the groove of a jet needle in which its clip sits
 *   <li>{@link Cutaway}: how far the upstream edge of a throttle slide is cut away: 3.5 mm is a
 *       cutaway 35 in the trade's tenths
 *   <li>{@link Density}: a mass in a volume, of air or of a liquid
 *   <li>{@link Diameter}: a diameter: of a needle, a needle jet, a venturi or a cylinder, to the
 *       thousandth of a millimetre and beyond
 *   <li>{@link Displacement}: the volume that a piston sweeps in one stroke, or the sum of it over
 *       the cylinders
 *   <li>{@link DynamicViscosity}: how much a fluid resists shear
 *   <li>{@link EngineSpeed}: turns of the crankshaft a minute
 *   <li>{@link FloatLevel}: the height at which the floats are set, measured as the carburettor's
 *       trade measures it (commonly from the bowl joint to the float)
 *   <li>{@link FuelConsumption}: fuel used over a distance
 *   <li>{@link InvalidValueException}: a value that a part, a sheet or another compound thing
 *       cannot have
 *   <li>{@link JetBore}: the bore of a jet: the numbering in hundredths of a millimetre, where a
 *       main 118 measures 1.18 mm
 *   <li>{@link JetCalibration}: a conversion between the bore of a jet and its flow on a test bench
 *   <li>{@link JetFlow}: the flow of a jet on a test bench: the numbering in cubic centimetres a
 *       minute
 *   <li>{@link JetSeries}: the sizes that a part can be had in, such as mains from 100 to 150 by
 *       2.5 and on to 200 by 5, and so what the next size up or down is
 *   <li>{@link KinematicViscosity}: the dynamic viscosity of a fluid over its density
 *   <li>{@link Lambda}: air over the air that the fuel needs (λ): below 1 rich, above 1 lean
 *   <li>{@link Length}: a length, a height or a stroke; never negative
 *   <li>{@link MassFlow}: a mass of air or fuel in a time
 *   <li>{@link OneLine}: text from outside, made safe to show on one line of a terminal, a page or
 *       a message
 *   <li>{@link Power}: the power of an engine
 *   <li>{@link PremixRatio}: petrol to two-stroke oil in a premix, by volume: 50:1 is one part of
 *       oil on fifty of petrol
 *   <li>{@link Pressure}: an absolute pressure, or the size of a pressure drop
 *   <li>{@link Probability}: how likely something is, such as a lean mixture at a throttle opening
 *   <li>{@link Quantity}: what every quantity promises
 *   <li>{@link QuantityException}: a number or a text that is no value of the quantity asked for
 *   <li>{@link Refusal}: an error at invalid input that carries what it says as data
 *   <li>{@link RelativeHumidity}: the water vapour in the air as a share of what saturated air of
 *       the same temperature holds
 *   <li>{@link RiderInput}: reads quantities as riders write them: {@code #118}, {@code 3 from
 *       top}, {@code half}, {@code 1-1/2 out}, {@code 68F}, {@code 1:40}; and what {@link
 *       TradeStyle} prints
 *   <li>{@link ScrewKind}: which fluid an idle mixture screw meters, and so which way turning it
 *       out works
 *   <li>{@link ScrewTurns}: how far an idle mixture screw is turned out, counted from gently seated
 *   <li>{@link Sentence}: what an error says, as data: a key and typed values
 *   <li>{@link Temperature}: a temperature, of air, fuel or an engine; a dew point is one too
 *   <li>{@link TemperatureDifference}: how much warmer one temperature is than another; negative if
 *       it is colder
 *   <li>{@link ThrottleOpening}: how far the throttle is open, as a share of its full lift from the
 *       idle stop
 *   <li>{@link TradeStyle}: prints quantities as the trade writes them: main 118, cutaway 35, clip
 *       2 of 5 from top, 1½ turns
 *   <li>{@link Uncertain}: an estimated value with its uncertainty
 *   <li>{@link VolumeFlow}: a volume of fuel or air in a time, in an engine
 * </ul>
 */
@NullMarked
package dev.jetting.units;

import org.jspecify.annotations.NullMarked;
