package dev.jetting.rules.kit;

import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * The greatest lean risk on one day, on the level road and on climbs.
 *
 * @param throttle the throttle opening where it is
 * @param leanRisk the probability there that the mixture is too lean
 */
public record CornerRisk(ThrottleOpening throttle, Probability leanRisk) {

  /**
   * Checks for nulls.
   *
   * @param throttle the throttle opening where it is
   * @param leanRisk the probability there that the mixture is too lean
   */
  public CornerRisk {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(leanRisk, "leanRisk");
  }

  static CornerRisk of(WorstSpot worst) {
    return new CornerRisk(worst.throttle(), worst.leanRisk());
  }
}
