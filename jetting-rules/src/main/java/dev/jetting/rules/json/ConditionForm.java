package dev.jetting.rules.json;

import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Optional;

/**
 * A condition in JSON: of other conditions, or on a measure.
 *
 * @param all the conditions that must hold together
 * @param any conditions: one of them must hold
 * @param not the condition that must not hold
 * @param measure name of what is measured
 * @param take what to take of a measure that has a number at each opening
 * @param within the openings at which to take it; all that the rule sees if left out
 * @param atMost the most that is allowed, included
 * @param atLeast the least that is allowed, included
 * @param is the text that it must be
 * @param oneOf the texts that it may be, 1 to 50
 */
record ConditionForm(
    Optional<List<ConditionForm>> all,
    Optional<List<ConditionForm>> any,
    Optional<ConditionForm> not,
    Optional<String> measure,
    Optional<Take> take,
    Optional<ThrottleBand> within,
    Optional<Threshold> atMost,
    Optional<Threshold> atLeast,
    Optional<String> is,
    Optional<List<String>> oneOf) {}
