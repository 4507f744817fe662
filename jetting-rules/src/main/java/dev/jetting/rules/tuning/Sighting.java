package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import java.util.Optional;

/**
 * Something that was observed, and what it asks for.
 *
 * @param order how many were observed before it in the session
 * @param step the index of the step on which it was observed
 * @param setup the setup of that step
 * @param observation what was observed
 * @param sign what it asks for; empty where it asks for nothing
 */
record Sighting(int order, int step, Setup setup, Observation observation, Optional<Sign> sign) {

  boolean isOverrun() {
    return observation.isOverrun();
  }

  /** Its place in the order of the trade: idle and full throttle first, the overrun last. */
  int place() {
    return observation.place();
  }

  boolean is(Sign.Kind kind) {
    return sign.filter(asks -> asks.kind() == kind).isPresent();
  }

  boolean isLean() {
    return sign.filter(Sign::isLean).isPresent();
  }

  /** Whether it says enough of the mixture where it was made to be held against others. */
  boolean isConclusive() {
    return isOverrun() || SignReader.isConclusive(observation);
  }

  /** Whether another was observed at the same opening of the same setup, by whatever means. */
  boolean isRepeatedBy(Sighting other) {
    return other.setup.equals(setup)
        && other.observation.throttle().equals(observation.throttle())
        && other.isOverrun() == isOverrun();
  }

  /** ln λ of a setup by the model, where this was observed. */
  double lnLambda(Setup to) {
    return observation.lnLambda(to);
  }
}
