package dev.jetting.rules;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Somebody's decision to live with a finding. The finding stays in the report, with the reason.
 *
 * @param ruleId id of the rule, or one that it had before
 * @param subject path of the part or circuit, exactly as the finding names it
 * @param reason why, in a sentence; not blank
 * @param expires the last day on which it holds, by the day that the caller passes; empty for one
 *     that does not expire
 */
public record Waiver(String ruleId, String subject, String reason, Optional<LocalDate> expires) {

  /**
   * Checks the reason.
   *
   * @param ruleId id of the rule, or one that it had before
   * @param subject path of the part or circuit, exactly as the finding names it
   * @param reason why, in a sentence; not blank
   * @param expires the last day on which it holds, by the day that the caller passes; empty for one
   *     that does not expire
   * @throws IllegalArgumentException if the reason is blank
   */
  public Waiver {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(expires, "expires");
    if (reason.isBlank()) {
      throw new IllegalArgumentException(
          "reason for waiving " + ruleId + " on " + subject + " is blank: allowed a sentence");
    }
  }

  /**
   * Whether the waiver holds on a day.
   *
   * @param day the day
   * @return true up to and on the last day
   */
  public boolean holdsOn(LocalDate day) {
    return expires.isEmpty() || !day.isAfter(expires.get());
  }
}
