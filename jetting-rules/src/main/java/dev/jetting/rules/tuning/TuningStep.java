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
 * @param looks what was seen, in order
 */
public record TuningStep(Setup setup, List<Look> looks) {
  /**
   * Copies the looks.
   *
   * @param setup engine, setting, air and fuel of that run
   * @param looks what was seen, in order
   */
  public TuningStep {
    Objects.requireNonNull(setup, "setup");
    looks = List.copyOf(looks);
  }

  /** The throttle openings that were looked at. */
  Set<ThrottleOpening> openings() {
    return looks.stream().map(Look::throttle).collect(Collectors.toUnmodifiableSet());
  }

  /** What the looks amount to, in order. */
  List<Reading> readings(Meanings meanings) {
    return looks.stream()
        .map(look -> look.seen().as(setup, look.throttle(), look.speed(), meanings))
        .toList();
  }
}
