/**
 * Catalogues of parts, kits sold for engines, and what is wrong with a kit before anyone buys it.
 *
 * <pre>{@code
 * static boolean mayBeSold(Catalogue catalogue, Kit kit) {
 *   return KitValidator.of(catalogue).validate(kit, KitDepth.SETTING).passes();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Catalogue}: what a seller lists: families of carburettors, the parts that they take,
 *       the machines that kits are sold for, and the markets
 *   <li>{@link CatalogueChoices}: the parts of a catalogue that fit a family, as choices for a
 *       search, and the way back from what was found to the parts
 *   <li>{@link CornerRisk}: the greatest lean risk on one day
 *   <li>{@link Family}: a family of carburettors: bodies that are alike to the mixture model and
 *       take the same parts
 *   <li>{@link Kit}: what a seller puts into one box, and the setting that he recommends for each
 *       machine
 *   <li>{@link KitCoverage}: for how many engines of one kind a kit has a setting that is right at
 *       every throttle opening on every day, and which parts would serve more
 *   <li>{@link KitDepth}: how far a kit is looked into, rising in what is asked and in what it
 *       takes
 *   <li>{@link KitRows}: kits as a table: from a row, its cells by the names of their columns, to a
 *       kit that is sold for one machine
 *   <li>{@link KitValidation}: what is to be said of a kit before anyone buys it
 *   <li>{@link KitValidator}: a validator of kits before they are sold
 *   <li>{@link KitWaiver}: a person's decision to sell a kit in spite of a finding on one machine,
 *       up to what the finding measured
 *   <li>{@link Machine}: a kind of machine that kits are sold for: an engine with its exhaust and
 *       load line, and what stands before its carburettor
 *   <li>{@link MachineResult}: what the rulebook says of the recommended setting on one machine
 *       with one fuel, and how many engines of its kind the kit serves
 *   <li>{@link Market}: where kits are sold: the air and the fuels that their buyers will meet, and
 *       the risk that they accept
 *   <li>{@link Part}: a part as a seller lists it
 *   <li>{@link PartRows}: parts lists as tables: from a row, its cells by the names of their
 *       columns, to a part
 *   <li>{@link PartSeries}: parts that are made to one pattern, thread and length, so that each of
 *       them fits wherever one of them does
 *   <li>{@link PartShape}: what the mixture model has to know of a part
 *   <li>{@link Recommendation}: how a seller says to set a kit on one machine: parts by their ids
 *       in the catalogue
 *   <li>{@link RowException}: a row of a list that is no part or no kit
 *   <li>{@link SeriesKind}: what the parts of a series are for
 *   <li>{@link UnusedKitWaiver}: a waiver of a kit that waived nothing, or that did not cover a
 *       finding with one of the fuels
 * </ul>
 */
package dev.jetting.rules.kit;
