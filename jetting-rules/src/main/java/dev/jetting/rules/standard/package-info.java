/**
 * The standard rulebook: what a careful tuner looks at before anyone rides.
 *
 * <pre>{@code
 * static String titles() {
 *   return StandardRulebook.rulebook().rules().stream()
 *       .map(Rule::title)
 *       .collect(Collectors.joining("\n"));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link RulePages}: a page for people on each rule of the standard rulebook, in Markdown
 *   <li>{@link StandardRulebook}: the rules that come with the library
 * </ul>
 */
package dev.jetting.rules.standard;
