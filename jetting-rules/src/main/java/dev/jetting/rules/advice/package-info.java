/**
 * From what a report finds to one way out: a remedy for each finding, and a plan.
 *
 * <p>It tries changes of parts on the model and holds the rulebook against each, so that plan and
 * report cannot disagree.
 *
 * <pre>{@code
 * static Optional<Plan> wayOut(SetupSheet sheet) {
 *   return Adviser.of(StandardRulebook.rulebook()).advise(AssessedSetting.of(sheet)).plan();
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Adviser}: works out what to do about a report: a plan, and for each finding the
 *       change that fits it
 * </ul>
 */
@NullMarked
package dev.jetting.rules.advice;

import org.jspecify.annotations.NullMarked;
