package dev.jetting.rules.laws;

import static java.util.stream.Collectors.joining;

import com.google.common.collect.ImmutableSortedMap;
import dev.jetting.rules.Outcome.Status;
import java.util.Map;
import java.util.Objects;

/**
 * The outcomes that a rule had on the trials, before and after their changes. A rule that never
 * passed, or never failed, was not tested.
 *
 * @param ruleId id of the rule
 * @param counts on how many settings it came out how; without those that it never had
 */
public record SeenOutcomes(String ruleId, Map<Status, Integer> counts) {

  /**
   * Copies the counts.
   *
   * @param ruleId id of the rule
   * @param counts on how many settings it came out how
   */
  public SeenOutcomes {
    Objects.requireNonNull(ruleId, "ruleId");
    counts = ImmutableSortedMap.copyOf(counts);
  }

  /** {@return whether it passed and failed at least once} */
  public boolean isTested() {
    return counts.containsKey(Status.PASSED) && counts.containsKey(Status.FAILED);
  }

  /** {@return a line} */
  @Override
  public String toString() {
    String all =
        counts.entrySet().stream()
            .map(each -> each.getKey() + " " + each.getValue())
            .collect(joining(", "));
    return "rule " + ruleId + ": " + all + (isTested() ? "" : " (not tested)") + "\n";
  }
}
