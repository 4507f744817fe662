package dev.jetting.rules.risk;

import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the lean risk is greatest, over all days and over the whole region of throttle and speed
 * that is ridden.
 *
 * @param day the day
 * @param throttle throttle opening
 * @param speed engine speed: that of the level road, or that of a climb
 * @param lambda the mixture expected there
 * @param leanLimit the leanest mixture that does no harm there
 * @param leanRisk probability that the true mixture is leaner than the lean limit
 */
public record WorstSpot(
    Day day,
    ThrottleOpening throttle,
    EngineSpeed speed,
    Lambda lambda,
    Lambda leanLimit,
    Probability leanRisk) {

  /** A day on which a setting is assessed. */
  public enum Day {
    /** The day of the setup. */
    TODAY,
    /** The coldest day that the owner rides in. */
    COLDEST,
    /** The hottest day that the owner rides in. */
    HOTTEST
  }

  /**
   * Checks for nulls.
   *
   * @param day the day
   * @param throttle throttle opening
   * @param speed engine speed: that of the level road, or that of a climb
   * @param lambda the mixture expected there
   * @param leanLimit the leanest mixture that does no harm there
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   */
  public WorstSpot {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(lambda, "lambda");
    Objects.requireNonNull(leanLimit, "leanLimit");
    Objects.requireNonNull(leanRisk, "leanRisk");
  }

  /**
   * Finds the worst spot.
   *
   * @param days the lean risk over the throttle range in the air of each day; at least one
   * @return the spot with the greatest risk; of equals that of the earlier day, then that of the
   *     level road, then that of the smallest throttle
   * @throws IllegalArgumentException if there is no day
   */
  public static WorstSpot of(Map<Day, RiskProfile> days) {
    return Stream.of(Day.values())
        .flatMap(
            day -> Optional.ofNullable(days.get(day)).map(profile -> of(day, profile)).stream())
        .reduce(WorstSpot::worse)
        .orElseThrow(() -> new IllegalArgumentException("days without any: allowed at least one"));
  }

  /**
   * Finds the worst spot of one day.
   *
   * @param day the day
   * @param profile the lean risk over the throttle range in its air
   * @return the spot with the greatest risk; of equals that of the level road, then that of the
   *     smallest throttle
   */
  public static WorstSpot of(Day day, RiskProfile profile) {
    WorstSpot worst = level(day, profile.worst());
    for (RiskPoint point : profile.points()) {
      worst = worse(worst, uphill(day, point));
    }
    return worst;
  }

  private static WorstSpot level(Day day, RiskPoint point) {
    return new WorstSpot(
        day,
        point.mixture().throttle(),
        point.mixture().speed(),
        point.lambda(),
        point.leanLimit(),
        point.leanRisk());
  }

  private static WorstSpot uphill(Day day, RiskPoint point) {
    return new WorstSpot(
        day,
        point.mixture().throttle(),
        point.uphill().speed(),
        point.lambda(),
        point.leanLimit(),
        point.uphill().leanRisk());
  }

  private static WorstSpot worse(WorstSpot one, WorstSpot other) {
    return other.leanRisk.isMoreThan(one.leanRisk) ? other : one;
  }
}
