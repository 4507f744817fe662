package dev.jetting.rules.json;

import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Optional;

/** A condition in JSON: of other conditions, or on a measure. */
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
