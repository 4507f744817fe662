/**
 * Leading a rider through plug chops: what was read, what to test and what to change next.
 *
 * <pre>{@code
 * static String next(TuningSession session) {
 *   Tuner tuner = Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL));
 *   return SessionText.of(session, tuner);
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link CarburettorComparison}: carburettors compared for one engine, a power target and a
 *       use
 *   <li>{@link CarburettorRating}: what a carburettor does for an engine: power lost by its
 *       restriction, signal where the engine turns slowly, and consumption when cruising
 *   <li>{@link Check}: what a tuner looks at before he jets anything, and again after a sign that
 *       does not fit
 *   <li>{@link Correction}: by how much an engine differs from the model in one respect, by its
 *       readings: "the main jet passes about 8 % less fuel than expected, give or take 4 %"
 *   <li>{@link Evidence}: what was seen on a run, before it is given a meaning
 *   <li>{@link Fault}: a fault that no part of the setting is to blame for, as a hypothesis: what
 *       it looks like over the throttle range, and which check settles it
 *   <li>{@link IdleAnswer}: what an idle answers to the screw, or that it races or the engine runs
 *       on
 *   <li>{@link Instrument}: what a rider reads an engine with
 *   <li>{@link Meaning}: what a colour or a symptom says of the mixture: a band of λ by the λ that
 *       the engine needs at that opening, and how far to trust it
 *   <li>{@link Meanings}: what each plug colour and each symptom says of the mixture, and how exact
 *       the sensors are
 *   <li>{@link MovedSetting}: a finished setting moved to another day, another place or another
 *       fuel
 *   <li>{@link NextChange}: one part to change, out of those at hand, and what that does
 *   <li>{@link NextStep}: what to do next in a session: plain data
 *   <li>{@link NextTest}: a test to ride: which throttle opening, how, and with what
 *   <li>{@link Observation}: something seen at a throttle opening and engine speed
 *   <li>{@link PlugColour}: the colour of the plug's insulator after a proper plug chop, from
 *       leanest to richest
 *   <li>{@link RiskLeft}: the lean risk that is left at the end of a session: the highest at any
 *       opening, on any day of the sheet, with faults that are not ruled out
 *   <li>{@link RunDown}: how an engine behaves on the overrun, with the throttle shut after a long
 *       pull
 *   <li>{@link SessionText}: a tuning session as plain text for people: where it stands, what the
 *       readings say of the engine, what to be wary of, and what to do next
 *   <li>{@link Sign}: something observed that asks for a change where it was observed, whatever the
 *       model says
 *   <li>{@link StartingSetting}: a setting to start with on an engine that nobody has measured, out
 *       of the parts at hand
 *   <li>{@link Symptom}: what a rider feels or hears
 *   <li>{@link Tuner}: leads tuning sessions: which test to ride, which part to change, and when to
 *       end
 *   <li>{@link TuningSession}: tuning one engine: the sheet it began with and every step since
 *   <li>{@link TuningStep}: a setup that was tried, with what was observed on it
 * </ul>
 */
package dev.jetting.rules.tuning;
