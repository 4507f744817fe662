package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;

/**
 * What a colour or a symptom says of the mixture: a band of λ by the λ that the engine needs at
 * that throttle opening, and how far it is to be trusted.
 *
 * @param from the richest, by the λ needed; 0.01 to {@code to}
 * @param to the leanest, by the λ needed; to 100
 * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
 * @param why where the numbers come from
 */
public record Meaning(double from, double to, double deviation, String why) {

  static final double NO_LIMIT_RICH = 0.01;
  static final double NO_LIMIT_LEAN = 100;

  /**
   * Checks the band.
   *
   * @param from the richest, by the λ needed; 0.01 to {@code to}
   * @param to the leanest, by the λ needed; to 100
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @param why where the numbers come from
   * @throws IllegalArgumentException if a number is out of range
   */
  public Meaning {
    boolean ordered = from >= NO_LIMIT_RICH && from < to && to <= NO_LIMIT_LEAN;
    if (!ordered || !(deviation >= 0.001 && deviation <= 1)) {
      throw new IllegalArgumentException(
          "meaning of a reading, "
              + from
              + " to "
              + to
              + " with a deviation of "
              + deviation
              + ": allowed a band within 0.01 to 100 times the λ needed, and a"
              + " deviation of 0.001 to 1");
    }
    if (why.isBlank()) {
      throw new IllegalArgumentException(
          "reason for the meaning of a reading is blank: allowed a source or a reason");
    }
  }

  static Meaning assumed(double from, double to, double deviation) {
    return new Meaning(from, to, deviation, "assumed; not measured");
  }

  Reading reading(Setup setup, ThrottleOpening throttle, EngineSpeed speed) {
    double need = setup.engine().need().at(throttle).value();
    return new Reading(
        setup, throttle, speed, Lambda.of(need * from), Lambda.of(need * to), deviation);
  }
}
