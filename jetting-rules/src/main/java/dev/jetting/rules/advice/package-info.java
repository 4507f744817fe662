/**
 * From what a report finds to one way out: a remedy for each finding, and a plan.
 *
 * <p>It tries changes of parts on the model and holds the rulebook against each, so that plan and
 * report cannot disagree.
 */
@NullMarked
package dev.jetting.rules.advice;

import org.jspecify.annotations.NullMarked;
