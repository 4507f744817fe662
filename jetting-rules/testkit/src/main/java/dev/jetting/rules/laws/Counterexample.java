package dev.jetting.rules.laws;

import java.util.List;
import java.util.Objects;

/**
 * A trial on which a law is violated, made as plain as it could be.
 *
 * @param ruleId id of the rule that violates it; empty if it is no single rule
 * @param explanation how it is violated
 * @param trial the shrunken trial
 * @param differences what of its sheet differs from the kit's plain sheet, in the trade's words;
 *     empty if it is the plain sheet
 * @param change the change of a part, in the trade's words; empty if the law is violated without
 * @param found the trial on which the violation was found, before shrinking
 */
public record Counterexample(
    String ruleId,
    String explanation,
    Trial trial,
    List<String> differences,
    String change,
    Trial found) {

  /**
   * Copies the differences.
   *
   * @param ruleId id of the rule that violates it; empty if it is no single rule
   * @param explanation how it is violated
   * @param trial the shrunken trial
   * @param differences what of its sheet differs from the kit's plain sheet
   * @param change the change of a part; empty if the law is violated without
   * @param found the trial on which the violation was found
   */
  public Counterexample {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(explanation, "explanation");
    Objects.requireNonNull(trial, "trial");
    differences = List.copyOf(differences);
    Objects.requireNonNull(change, "change");
    Objects.requireNonNull(found, "found");
  }

  /** {@return the setting, the change and how the law is violated, on a line each} */
  @Override
  public String toString() {
    return "  setting: "
        + (differences.isEmpty() ? "the plain one" : "the plain one except for " + join())
        + "\n"
        + (change.isEmpty() ? "" : "  change: " + change + "\n")
        + "  "
        + (ruleId.isEmpty() ? "" : "rule " + ruleId + ": ")
        + explanation
        + "\n";
  }

  private String join() {
    return String.join("; ", differences);
  }
}
