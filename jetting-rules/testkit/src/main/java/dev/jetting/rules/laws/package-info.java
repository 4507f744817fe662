/**
 * The laws that any rule or rulebook can be held against by its author's tests, with any test
 * framework. Choose laws in a {@link dev.jetting.rules.laws.LawKit}, declare what a rule promises
 * in a {@link dev.jetting.rules.laws.Candidate}, and bring trials of any source.
 *
 * <pre>{@code
 * static boolean keepsTheLaws(Rule rule, SetupSheet sheet) {
 *   Candidate candidate = Candidate.of(rule).declaring(rule.id(), Monotone.leanSide(0));
 *   return LawKit.allLaws()
 *       .hold(candidate, Trial.eachPart(sheet, CustomarySteps.assumed()))
 *       .holds();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Candidate}: what is held against the laws: a rulebook, the way its settings are
 *       assessed, and what is declared of its rules
 *   <li>{@link Counterexample}: a trial on which a law is violated, made as plain as it could be
 *   <li>{@link Experiment}: a candidate on a trial: what the check of a law looks at
 *   <li>{@link Law}: something that has to hold of a candidate on every trial
 *   <li>{@link LawKit}: holds candidates against laws, whatever the test framework
 *   <li>{@link LawReport}: the result of checking a candidate against laws
 *   <li>{@link LawResult}: the result of trying a law
 *   <li>{@link LawVerdict}: the result of trying a law once
 *   <li>{@link Laws}: the library's laws
 *   <li>{@link Monotone}: what a rule's author declares of it: that it answers one way to every
 *       part that is made richer or leaner
 *   <li>{@link PartChange}: one part changed by one step towards rich or lean
 *   <li>{@link RuleCheck}: checks a rule on examples, whatever the test framework: a check that
 *       does not hold throws an {@code AssertionError}
 *   <li>{@link SeenOutcomes}: the outcomes that a rule had on the trials, before and after their
 *       changes
 *   <li>{@link Trial}: a setup sheet on which laws are tried, and a change of a part to try on it
 * </ul>
 */
package dev.jetting.rules.laws;
