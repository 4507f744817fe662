/**
 * Exact search over the settings that parts allow, and how many engines the parts can serve.
 *
 * <pre>{@code
 * static Found fiveBest(SetupSheet sheet) {
 *   Choices parts = Choices.of(sheet);
 *   return SettingSearch.of(sheet, parts, RiskModel.assumed()).best(5, Run.on(1_000_000, Runnable::run));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link CallbackException}: a fault of the caller's own code that a {@link Run} called, not
 *       of the search
 *   <li>{@link Choice}: a part that can be chosen
 *   <li>{@link ChoiceIndices}: one part of each kind, as indices into the lists of the {@link
 *       Choices} that were searched, and of no others
 *   <li>{@link Choices}: the parts of one carburettor among which a setting can be chosen: every
 *       combination of one of each kind
 *   <li>{@link Cost}: what a front counts as the cost of a setting
 *   <li>{@link Coverage}: for how many engines of a kind the choices contain a setting that is
 *       right
 *   <li>{@link ExtraPart}: what one more part would bring, on its own or with those listed before
 *       it
 *   <li>{@link Found}: what a search has found
 *   <li>{@link FoundSetting}: a setting that a search has found
 *   <li>{@link NeedlePosition}: a needle and the grooves in which its clip may sit
 *   <li>{@link NewPart}: a part that a setting needs and that is not owned
 *   <li>{@link PartKind}: what a tuner chooses when he sets a carburettor
 *   <li>{@link PartUse}: how often a part stands in the best setting of an engine
 *   <li>{@link Progress}: a listener to the progress of a search
 *   <li>{@link Run}: how a search is run: on which threads, until when, and with which listener
 *   <li>{@link SearchEnding}: how a run ended
 *   <li>{@link SettingSearch}: a search over every combination of the choices for an engine and its
 *       riding: exact, not sampled
 *   <li>{@link Standing}: how a setting stands against the limits at every assessed throttle
 *       opening, as in the standard rulebook
 * </ul>
 */
package dev.jetting.rules.search;
