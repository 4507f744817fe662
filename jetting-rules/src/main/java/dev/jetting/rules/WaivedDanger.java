package dev.jetting.rules;

import java.util.Objects;

/**
 * A danger that does not speak against a ride because a person accepted it.
 *
 * @param ruleId id of the rule
 * @param subject path of the part or circuit
 * @param measured what was measured
 * @param band where in the throttle range
 * @param waiver who accepted it, why and up to what
 */
public record WaivedDanger(
    String ruleId, String subject, Measure measured, ThrottleBand band, Waiver waiver) {

  /**
   * Checks for nulls.
   *
   * @param ruleId id of the rule
   * @param subject path of the part or circuit
   * @param measured what was measured
   * @param band where in the throttle range
   * @param waiver who accepted it, why and up to what
   */
  public WaivedDanger {
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(waiver, "waiver");
  }
}
