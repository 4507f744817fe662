package dev.jetting.rules.risk;

import static java.util.Comparator.comparing;

import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * The lean risk over the throttle range.
 *
 * @param points the points by rising throttle; at least one
 */
public record RiskProfile(List<RiskPoint> points) {

  /**
   * Checks the points.
   *
   * @param points the points by rising throttle; at least one
   * @throws IllegalArgumentException if there is none
   */
  public RiskProfile {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("risk profile without points: allowed at least one");
    }
  }

  /** {@return the point with the greatest risk; of equals the one at the smallest throttle} */
  public RiskPoint worst() {
    RiskPoint worst = points.get(0);
    for (RiskPoint point : points) {
      if (point.leanRisk().compareTo(worst.leanRisk()) > 0) {
        worst = point;
      }
    }
    return worst;
  }

  /**
   * The mean risk over the riding.
   *
   * @param riding how much of the riding falls on which throttle opening
   * @return the weighted mean of the risks; the worst risk if no point has weight
   */
  public Probability mean(RidingProfile riding) {
    double weighted = 0;
    double weights = 0;
    for (RiskPoint point : points) {
      double weight = riding.weightAt(point.mixture().throttle());
      weighted += weight * point.leanRisk().value();
      weights += weight;
    }
    return weights == 0 ? worst().leanRisk() : Probability.of(Math.min(1, weighted / weights));
  }

  /**
   * The points at which the risk exceeds what is accepted.
   *
   * @param accepted the accepted risk
   * @return the points by rising throttle; none if all is well
   */
  public List<RiskPoint> above(Probability accepted) {
    return points.stream().filter(p -> p.leanRisk().compareTo(accepted) > 0).toList();
  }

  /**
   * The point nearest to a throttle opening.
   *
   * @param throttle throttle opening
   * @return the nearest point; of two equally near the one at the smaller throttle
   */
  public RiskPoint nearest(ThrottleOpening throttle) {
    return points.stream()
        .min(
            comparing((RiskPoint p) -> Math.abs(p.mixture().throttle().share() - throttle.share())))
        .orElseThrow();
  }
}
