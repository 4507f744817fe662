package dev.jetting.rules.tuning;

import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * Something seen at a throttle opening and engine speed.
 *
 * @param throttle throttle opening
 * @param speed engine speed, more than zero
 * @param seen what was seen
 */
public record Look(ThrottleOpening throttle, EngineSpeed speed, Seen seen) {
  /**
   * Checks for nulls.
   *
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param seen what was seen
   * @throws IllegalArgumentException if the speed is zero
   */
  public Look {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(seen, "seen");
    if (speed.rpm() <= 0) {
      throw new IllegalArgumentException(
          "engine speed of a look " + speed + ": allowed more than 0 rpm");
    }
  }
}
