package dev.jetting.rules.risk;

import static java.util.Comparator.comparing;

import com.google.common.collect.Comparators;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.rules.need.NeedDistance;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The lean risk over the throttle range.
 *
 * @param points the points by rising throttle; at least one
 */
public record RiskProfile(List<RiskPoint> points) {

  /** How much more leaner than needed counts than richer than needed (assumed). */
  public static final double LEAN_WEIGHT = NeedDistance.LEAN_WEIGHT;

  /**
   * Checks the points.
   *
   * @param points the points by rising throttle; at least one
   * @throws IllegalArgumentException if there is none, their openings do not rise, or they state
   *     the effects of other parts
   */
  public RiskProfile {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("risk profile without points: allowed at least one");
    }
    if (!Comparators.isInStrictOrder(
        points, comparing((RiskPoint point) -> point.mixture().throttle()))) {
      throw new IllegalArgumentException(
          "throttle openings of a risk profile "
              + points.stream().map(point -> point.mixture().throttle()).toList()
              + ": allowed rising ones");
    }
    List<MeteringPart> parts = parts(points.get(0));
    for (RiskPoint point : points) {
      if (!parts(point).equals(parts)) {
        throw new IllegalArgumentException(
            "effects of "
                + parts(point)
                + " at a point of a risk profile: allowed those of its first, "
                + parts);
      }
    }
  }

  private static List<MeteringPart> parts(RiskPoint point) {
    return point.effects().stream().map(PartEffect::part).toList();
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
    return mean(riding, point -> point.leanRisk().value())
        .map(risk -> Probability.of(Math.min(1, risk)))
        .orElseGet(() -> worst().leanRisk());
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
    return mean(
            riding,
            point ->
                NeedDistance.of(
                    point.lambda().value(), need.at(point.mixture().throttle()).value()))
        .orElse(0.0);
  }

  /**
   * The mean of a number over the riding.
   *
   * @param riding how much of the riding falls on which throttle opening
   * @param number the number at a point
   * @return its weighted mean; empty if no point has weight
   */
  public Optional<Double> mean(RidingProfile riding, ToDoubleFunction<RiskPoint> number) {
    List<Double> weight =
        riding.weights(points.stream().map(point -> point.mixture().throttle()).toList());
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += weight.get(i) * number.applyAsDouble(points.get(i));
      weights += weight.get(i);
    }
    return weights == 0 ? Optional.empty() : Optional.of(sum / weights);
  }

  /**
   * The points at which the risk exceeds what is accepted.
   *
   * @param accepted the accepted risk
   * @return the points by rising throttle; none if all is well
   */
  public List<RiskPoint> above(Probability accepted) {
    Objects.requireNonNull(accepted, "accepted");
    return points.stream().filter(p -> p.leanRisk().compareTo(accepted) > 0).toList();
  }

  /**
   * The point nearest to a throttle opening.
   *
   * @param throttle throttle opening
   * @return the nearest point; of two equally near the one at the smaller throttle
   */
  public RiskPoint nearest(ThrottleOpening throttle) {
    RiskPoint nearest = points.get(0);
    for (RiskPoint point : points) {
      nearest = away(point, throttle) < away(nearest, throttle) ? point : nearest;
    }
    return nearest;
  }

  private static double away(RiskPoint point, ThrottleOpening throttle) {
    return Math.abs(point.mixture().throttle().share() - throttle.share());
  }
}
