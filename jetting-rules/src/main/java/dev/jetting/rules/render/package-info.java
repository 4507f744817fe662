/**
 * Reports for people: as plain text and as Markdown, in the words of a language.
 *
 * <pre>{@code
 * static String germanPage(Report report) {
 *   return ReportText.of(report, Wording.of(Locale.GERMAN));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link ReportMarkdown}: a report as Markdown with tables (CommonMark 0.31 and the tables of
 *       GitHub Flavored Markdown 0.29), for a shop's pages and an issue tracker
 *   <li>{@link ReportText}: a report as plain text for people: no colour, lines that end in {@code
 *       \n}, the same bytes whatever the machine's locale
 * </ul>
 */
package dev.jetting.rules.render;
