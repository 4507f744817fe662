package dev.jetting.rules.risk;

import static java.util.Comparator.comparing;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * The lean risk over the throttle range.
 *
 * @param points the points by rising throttle; at least one
 */
public record RiskProfile(List<RiskPoint> points) {

  /** How much more leaner than needed counts than richer than needed (assumed). */
  public static final double LEAN_WEIGHT = 2;

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
   * How far the mixture is from what the engine needs: the mean of |ln (λ by λ needed)| over the
   * riding, leaner than needed counting twice (assumed). On a setting whose lean risk is accepted
   * nearly all of it is enrichment.
   *
   * @param riding how much of the riding falls on which throttle opening
   * @param need the mixture the engine should get
   * @return zero or more; 0 if no point has weight
   */
  public double distance(RidingProfile riding, MixtureNeed need) {
    double sum = 0;
    double weights = 0;
    for (RiskPoint point : points) {
      ThrottleOpening throttle = point.mixture().throttle();
      double weight = riding.weightAt(throttle);
      double lean = StrictMath.log(point.lambda().value() / need.at(throttle).value());
      sum += weight * (lean > 0 ? LEAN_WEIGHT * lean : -lean);
      weights += weight;
    }
    return weights == 0 ? 0 : sum / weights;
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
