package dev.jetting.rules;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;
import java.util.Optional;

/**
 * What was seen of a proven setting at a throttle opening, at the speed that the engine has there
 * on the road.
 *
 * @param throttle throttle opening
 * @param evidence plug colour, measured λ, symptom or exhaust temperature; or that the engine ran
 *     well
 */
public record ProvenObservation(ThrottleOpening throttle, Evidence evidence) {

  /** Marks on a grip are no nearer (assumed). */
  private static final double APART = 0.125;

  /**
   * Checks for nulls.
   *
   * @param throttle throttle opening
   * @param evidence plug colour, measured λ, symptom or exhaust temperature; or that it ran well
   * @throws IllegalArgumentException if an idle was observed with the throttle open
   */
  public ProvenObservation {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(evidence, "evidence");
    if (!evidence.fits(throttle)) {
      throw InvalidValueException.of(
          Sentence.of("error.name.proven-idle"), throttle, Sentence.of("error.closed"));
    }
  }

  /** The reading that it amounts to; empty for what says nothing of the mixture. */
  Optional<Reading> reading(Setup then, Meanings meanings) {
    return evidence.reading(then, throttle, then.engine().loadLine().at(throttle), meanings);
  }

  /** Whether it is of the same kind so near by that it is the same judgement once more. */
  boolean repeats(ProvenObservation other) {
    return evidence.getClass().equals(other.evidence.getClass())
        && Math.abs(throttle.share() - other.throttle.share()) < APART - 1e-9;
  }
}
