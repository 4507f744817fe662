package dev.jetting.rules.json;

import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Optional;

/** A rule in JSON. */
record RuleForm(
    String id,
    Optional<List<String>> formerIds,
    String title,
    String rationale,
    Severity severity,
    Optional<ThrottleBand> band,
    Optional<ConditionForm> when,
    ConditionForm require,
    String message,
    String remedy,
    Optional<String> subject,
    Optional<List<ExampleForm>> examples) {

  /** The same rule without what says nothing about its outcomes. */
  RuleForm withoutExamples() {
    return new RuleForm(
        id,
        formerIds,
        title,
        rationale,
        severity,
        band,
        when,
        require,
        message,
        remedy,
        subject,
        Optional.empty());
  }
}
