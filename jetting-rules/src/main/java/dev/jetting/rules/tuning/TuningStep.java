package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A setup that was tried, with what was seen on it.
 *
 * @param setup engine, setting, air and fuel of that run
 * @param observations what was seen, in order
 */
public record TuningStep(Setup setup, List<Observation> observations) {
  /**
   * Copies the observations.
   *
   * @param setup engine, setting, air and fuel of that run
   * @param observations what was seen, in order
   */
  public TuningStep {
    Objects.requireNonNull(setup, "setup");
    observations = List.copyOf(observations);
  }

  /** The throttle openings that were looked at. */
  Set<ThrottleOpening> openings() {
    return observations.stream().map(Observation::throttle).collect(Collectors.toUnmodifiableSet());
  }

  /** What the observations amount to, in order. */
  List<Reading> readings(Meanings meanings) {
    return observations.stream()
        .map(
            observation ->
                observation
                    .evidence()
                    .as(setup, observation.throttle(), observation.speed(), meanings))
        .toList();
  }
}
