package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;

/**
 * Which engine speed goes with a throttle opening on the road: N = N_idle + (N_peak − N_idle) √θ.
 *
 * <p>The square root is this project's own assumption: road load grows with the square of speed, so
 * the first part of the throttle brings most of the speed. Not for accelerating or braking: ask the
 * model for any pair of throttle and speed instead.
 *
 * @param idle speed at closed throttle, more than zero
 * @param peak speed at full throttle, not below {@code idle}
 */
public record LoadLine(EngineSpeed idle, EngineSpeed peak) {

  /**
   * Checks the speeds.
   *
   * @param idle speed at closed throttle, more than zero
   * @param peak speed at full throttle, not below {@code idle}
   * @throws IllegalArgumentException if the idle speed is zero or above the peak speed
   */
  public LoadLine {
    Checks.that(
        idle.rpm() > 0 && idle.compareTo(peak) <= 0,
        () -> Sentence.of("error.name.idle-speed"),
        idle,
        () -> Sentence.of("error.idle-below-peak").with("most", peak));
  }

  /**
   * The speed at a throttle opening.
   *
   * @param throttle opening by lift
   * @return the speed there
   */
  public EngineSpeed at(ThrottleOpening throttle) {
    double span = peak.rpm() - idle.rpm();
    return EngineSpeed.ofRpm(idle.rpm() + span * Math.sqrt(throttle.share()));
  }
}
