package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to be wary of in what was seen: a crisp engine, which is no proof of a good mixture; a plug
 * that was white and an engine that pinged, which ask to stop; a measured λ that disagrees with all
 * the rest.
 */
final class Warnings {

  private Warnings() {}

  /** A sentence each, in the order they were seen, disagreeing readings last. */
  static List<String> of(TuningSession session, Calibration calibration) {
    List<String> warnings = new ArrayList<>();
    for (TuningStep step : session.steps()) {
      for (Observation observation : step.observations()) {
        warning(observation.evidence())
            .ifPresent(
                w -> warnings.add("At " + TradeStyle.throttle(observation.throttle()) + ": " + w));
      }
    }
    for (Reading odd : calibration.disagreeing(StepChooser.DISAGREES)) {
      warnings.add(
          TradeStyle.lambda(odd.from())
              + " read at "
              + TradeStyle.throttle(odd.throttle())
              + " disagrees with all the rest: look for an air leak, a blocked passage or a sensor"
              + " gone wrong before any part is changed.");
    }
    return warnings;
  }

  private static Optional<String> warning(Evidence evidence) {
    if (evidence.equals(new Evidence.Felt(Symptom.CRISP))) {
      return Optional.of(
          "crisp is no proof of a good mixture: the last step before too lean feels best. Read the"
              + " plug before going leaner.");
    }
    if (evidence.equals(new Evidence.Felt(Symptom.PINGS))) {
      return Optional.of("an engine that pings is being hurt. Stop and go richer.");
    }
    return evidence.equals(new Evidence.Colour(PlugColour.WHITE))
        ? Optional.of("a white plug is far too lean. Stop and go richer.")
        : Optional.empty();
  }
}
