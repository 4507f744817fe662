package dev.jetting.rules;

import dev.jetting.rules.tuning.Evidence;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * What was seen of a proven setting at a throttle opening, at the speed that the engine has there
 * on the road.
 *
 * @param throttle throttle opening
 * @param evidence plug colour, measured λ, symptom or exhaust temperature; or that the engine ran
 *     well
 */
public record ProvenObservation(ThrottleOpening throttle, Evidence evidence) {

  /**
   * Checks for nulls.
   *
   * @param throttle throttle opening
   * @param evidence plug colour, measured λ, symptom or exhaust temperature; or that it ran well
   */
  public ProvenObservation {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(evidence, "evidence");
  }

  /** Where it was seen, and what kind of thing it is. */
  Object place() {
    return List.of(throttle, evidence.getClass());
  }
}
