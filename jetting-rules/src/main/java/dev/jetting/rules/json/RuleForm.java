package dev.jetting.rules.json;

import com.google.common.collect.ImmutableSortedMap;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A rule in JSON.
 *
 * @param id name for programs, lower-case words joined by hyphens, the same for ever
 * @param formerIds earlier ids, by which waivers still find it
 * @param title what it forbids, one line for people
 * @param rationale why that matters, one line
 * @param severity how bad a finding is
 * @param tags words to choose rules by
 * @param link address of its page
 * @param band the throttle openings that it sees; all of them if left out
 * @param when where the rule applies; everywhere if left out
 * @param require what must hold there
 * @param message what is wrong, one line that may show {limit}, {measure}, {measured} and
 *     {throttle}
 * @param remedy what to do, one line with the same placeholders
 * @param subject what a finding is on; the measure that failed if left out
 * @param examples setup sheets with the outcome that is expected on each, at most 20
 * @param texts the texts in other languages, by language tag
 */
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
