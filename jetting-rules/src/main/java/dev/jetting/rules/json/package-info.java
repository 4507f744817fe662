/**
 * Setup sheets and reports as JSON, strict in what is read.
 *
 * <pre>{@code
 * static String checked(String json) {
 *   try {
 *     return SheetJson.write(SheetJson.read(json));
 *   } catch (JsonInputException e) {
 *     return e.path() + " in line " + e.line() + ": " + e.getMessage();
 *   }
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link CatalogueJson}: catalogues as JSON
 *   <li>{@link JettingModule}: lets a Jackson mapper of the caller's own write and read setup
 *       sheets, reports and everything in them, in the form of {@link ReportJson}
 *   <li>{@link JsonInputException}: a JSON document that is no setup sheet or no report: what is
 *       wrong where, and what is allowed there
 *   <li>{@link JsonSchemas}: the published JSON Schemas (2020-12) of the documents of this package,
 *       for editors and for programs in other languages
 *   <li>{@link KitJson}: kits as JSON, one to a document or one to a line
 *   <li>{@link KitValidationJson}: what is said of kits as JSON, one to a document or one to a line
 *   <li>{@link KitWaiversJson}: waivers of kits as a JSON document, as a shop keeps them beside its
 *       kits
 *   <li>{@link LimitsJson}: reads and writes the limits of rules, as a shop replaces them: {@code
 *       rulebook.withLimits(LimitsJson.read(text))}
 *   <li>{@link ReportDifferenceJson}: what two reports differ in, as JSON
 *   <li>{@link ReportJson}: reports as JSON, for programs that show, keep or compare them
 *   <li>{@link RuleFile}: rules that somebody wrote without Java, as a JSON document
 *   <li>{@link RuleRemark}: what a review finds odd about a rule file that can be read
 *   <li>{@link SessionJson}: tuning sessions as JSON, so that one program can go on where another
 *       stopped
 *   <li>{@link ShortReportJson}: reports in short as JSON, for a page that shows one
 *   <li>{@link SheetEdits}: edits of a setup sheet by JSON Pointers (RFC 6901) into its document,
 *       as examples of rules have them: {@code "/setting/mainJet"} with {@code "1.45 mm"}
 *   <li>{@link SheetImpactJson}: what a change of the rules does to a sheet, as JSON
 *   <li>{@link SheetJson}: setup sheets as JSON
 *   <li>{@link WaiversJson}: waivers of findings as a JSON document, as a shop keeps them beside
 *       its sheets
 * </ul>
 */
package dev.jetting.rules.json;
