/**
 * The rules API: sheets, assessed settings, rules, rulebooks, findings and reports.
 *
 * <pre>{@code
 * static boolean mayBeRidden(SetupSheet sheet, Rulebook rulebook) {
 *   Report report = rulebook.evaluate(AssessedSetting.of(sheet));
 *   report.findings().forEach(found -> System.out.println(found.finding().text()));
 *   return report.passes(); // never a promise of safety
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link AssessedSetting}: a setup sheet with everything that rules look at: the lean risk
 *       over the throttle range today and on the two extreme days, and the overrun
 *   <li>{@link Ceiling}: what a waiver accepts at most: the measured value and the throttle band of
 *       the finding that it was made from, on the engine and the carburettor that had it
 *   <li>{@link Finding}: what a failed rule found
 *   <li>{@link FindingChange}: a finding in which two reports differ
 *   <li>{@link MachineDescription}: a machine described by what its rider knows, with typical
 *       values for the rest
 *   <li>{@link Margin}: what a rule measured against which limit, and how much is left to it
 *   <li>{@link Measure}: a number with its unit, as a finding shows it
 *   <li>{@link NeedleWear}: how worn needle jet and needle were when a setting was proven, beyond
 *       the sizes that the setting says
 *   <li>{@link Outcome}: the result of holding a rule against a setting
 *   <li>{@link PartsAtHand}: the parts that the rider owns or can buy for this carburettor
 *   <li>{@link Plan}: one way out of what a report found: single changes in the order in which they
 *       are made, towards rich first
 *   <li>{@link ProofUse}: what a proven setup did to an assessment, over the assessed throttle
 *       openings in the air of the day
 *   <li>{@link ProvenCylinder}: the cylinder that a setting was proven on, as its carburettor saw
 *       it
 *   <li>{@link ProvenObservation}: what was seen of a proven setting at a throttle opening, at the
 *       speed that the engine has there on the road
 *   <li>{@link Provenance}: where a setting comes from: the setup in which it was proven, what was
 *       seen there, and what the numbers on its jets mean
 *   <li>{@link RankedFinding}: a finding with the rule that made it, in the order of danger:
 *       severity first, then how far beyond its limit, then rule id, subject, throttle and text
 *   <li>{@link Remedy}: what to do about a finding
 *   <li>{@link Report}: what a rulebook says of a setting
 *   <li>{@link ReportDifference}: what two reports differ in: which side changed, and which
 *       findings are new, worse, better or gone
 *   <li>{@link Rule}: something that a careful tuner looks at: an immutable value that judges an
 *       assessed setting
 *   <li>{@link RuleMargin}: a rule of a report with its margin, the nearest to failing first: by
 *       the share of the limit that is left, then by rule id
 *   <li>{@link RulePack}: rules that somebody publishes as a module of their own, found through
 *       {@link java.util.ServiceLoader}
 *   <li>{@link RuleResult}: a rule of a rulebook with its outcome
 *   <li>{@link Rulebook}: a named, versioned set of rules
 *   <li>{@link RulebookChange}: a rule in which a rulebook differs from the original of its name
 *       and version
 *   <li>{@link RulebookEdition}: which rules a report rests on: the name and version of a rulebook,
 *       in which rules it was changed, and a digest of what it holds
 *   <li>{@link RulebookImpact}: what a new rulebook, version or limit does to the sheets of a shop,
 *       before it is put to work
 *   <li>{@link SettingDifference}: what two assessed settings differ in: the parts, and the mixture
 *       over the throttle in the air of the day
 *   <li>{@link SetupSheet}: what a tuner writes down about one machine: the setup, how it is
 *       ridden, and the parts there are
 *   <li>{@link Severity}: how much a finding matters, rising
 *   <li>{@link SheetImpact}: what a change of the rules does to one sheet of a stream
 *   <li>{@link ThrottleBand}: a part of the throttle range, both ends included
 *   <li>{@link TypicalParts}: what shops usually sell around a setting, for a rider who has not
 *       said what he owns
 *   <li>{@link UnusedWaiver}: a waiver that waived nothing
 *   <li>{@link Verdict}: whether anything in a report speaks against a careful first ride, and what
 *       the answer rests on
 *   <li>{@link WaivedDanger}: a danger that does not speak against a ride because a person accepted
 *       it
 *   <li>{@link Waiver}: a person's decision to live with a finding
 * </ul>
 */
package dev.jetting.rules;
