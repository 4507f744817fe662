package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * Something read on an engine: between which mixtures it ran, at a throttle opening and speed, with
 * whatever jets happened to be in and in the weather of that hour.
 *
 * <p>Plain of form: a wideband sensor's λ has both ends alike and its own deviation; a plug colour
 * is a band; "leaner than" has its upper end far out. What a colour or a symptom means is for
 * others to say.
 *
 * @param setup engine, setting, air and fuel when it was read
 * @param throttle throttle opening
 * @param speed engine speed, more than zero
 * @param from the richest mixture that it may mean
 * @param to the leanest mixture that it may mean, not richer than {@code from}
 * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
 */
public record Reading(
    Setup setup,
    ThrottleOpening throttle,
    EngineSpeed speed,
    Lambda from,
    Lambda to,
    double deviation) {

  /**
   * Checks the numbers.
   *
   * @param setup engine, setting, air and fuel when it was read
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param from the richest mixture that it may mean
   * @param to the leanest mixture that it may mean, not richer than {@code from}
   * @param deviation standard deviation of the reading in ln λ, 0.001 to 1
   * @throws IllegalArgumentException if one is out of range
   */
  public Reading {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(throttle, "throttle");
    Checks.that(speed.rpm() > 0, "engine speed of a reading", speed, "more than 0 rpm");
    Checks.that(
        from.compareTo(to) <= 0, "rich end of a reading", from, "at most its lean end, " + to);
    deviation = Checks.within("standard deviation of a reading in ln λ", deviation, 0.001, 1);
  }

  /**
   * A measured λ.
   *
   * @param setup engine, setting, air and fuel when it was read
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param lambda what was measured
   * @param deviation standard deviation in ln λ, 0.001 to 1; a wideband sensor in a two-stroke's
   *     exhaust is taken to be good for 0.02 (assumed)
   * @return the reading
   * @throws IllegalArgumentException if one is out of range
   */
  public static Reading measured(
      Setup setup, ThrottleOpening throttle, EngineSpeed speed, Lambda lambda, double deviation) {
    return new Reading(setup, throttle, speed, lambda, lambda, deviation);
  }

  boolean isPoint() {
    return from.equals(to);
  }
}
