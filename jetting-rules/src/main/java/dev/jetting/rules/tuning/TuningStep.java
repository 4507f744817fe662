package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import java.util.List;
import java.util.Objects;

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
}
