package dev.jetting.rules.json;

import com.google.common.collect.ImmutableSortedMap;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rule in JSON. */
record RuleForm(
    String id,
    Optional<List<String>> formerIds,
    String title,
    String rationale,
    Severity severity,
    Optional<List<String>> tags,
    Optional<String> link,
    Optional<ThrottleBand> band,
    Optional<ConditionForm> when,
    ConditionForm require,
    String message,
    String remedy,
    Optional<String> subject,
    Optional<List<ExampleForm>> examples,
    Optional<Map<String, RuleTextsForm>> texts) {

  RuleForm {
    texts = texts.map(ImmutableSortedMap::copyOf); // files that say the same are written alike
  }

  /** The same rule without examples and other languages, which say nothing about its outcomes. */
  RuleForm judging() {
    return new RuleForm(
        id,
        formerIds,
        title,
        rationale,
        severity,
        tags,
        link,
        band,
        when,
        require,
        message,
        remedy,
        subject,
        Optional.empty(),
        Optional.empty());
  }
}
