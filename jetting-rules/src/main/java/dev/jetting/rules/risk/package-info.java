/**
 * From the mixture to the probability that it is too lean: limits, uncertainty, riding.
 *
 * <pre>{@code
 * static String forAChart(AssessedSetting setting) {
 *   MixtureNeed need = setting.setup().engine().need();
 *   return MixtureSeries.of(setting.profile(), need).csv();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link MixtureLimits}: how lean and how rich is too much: a policy that a caller may
 *       replace
 *   <li>{@link MixtureSeries}: the mixture over the throttle, or over speed and throttle, as rows
 *       of numbers, for a chart or a spreadsheet
 *   <li>{@link ModelUncertainty}: how far an engine that nobody has measured may differ from the
 *       model: standard deviations
 *   <li>{@link ProfileDifference}: what a change did to the mixture and to the lean risk, opening
 *       by opening
 *   <li>{@link RiddenSpeeds}: the engine speeds at which a throttle opening is ridden: from that of
 *       the level road, on the engine's load line, down to that of a climb
 *   <li>{@link Riding}: what the owner rides and what he accepts
 *   <li>{@link RidingProfile}: how much of the riding falls on which throttle opening: weights at
 *       points, straight between them, held at the ends
 *   <li>{@link RiskModel}: from a mixture to the probability that it is too lean
 *   <li>{@link RiskPoint}: the lean risk at one throttle opening, at the speed of the level road
 *       and on a climb
 *   <li>{@link RiskProfile}: the lean risk over the throttle range
 *   <li>{@link UphillRisk}: the lean risk at a throttle opening on a climb, at the lowest speed at
 *       which the opening is ridden
 *   <li>{@link WorstSpot}: where the lean risk is greatest, over all days and over the whole region
 *       of throttle and speed that is ridden
 * </ul>
 */
package dev.jetting.rules.risk;
