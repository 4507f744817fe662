package dev.jetting.rules.risk;

import com.google.common.collect.Comparators;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * How much of the riding falls on which throttle opening: weights at points, straight between them,
 * held at the ends. Only their proportions count.
 *
 * @param points the points by rising throttle; at least one, and not all without weight
 */
public record RidingProfile(List<Point> points) {

  private static final int MOST_POINTS = 200;

  /**
   * A point of the profile.
   *
   * @param throttle throttle opening
   * @param weight weight there, 0 to 1000
   */
  public record Point(ThrottleOpening throttle, double weight) {

    /**
     * Checks the weight.
     *
     * @param throttle throttle opening
     * @param weight weight there, 0 to 1000
     * @throws IllegalArgumentException if it is outside 0 to 1000
     */
    public Point {
      Objects.requireNonNull(throttle, "throttle");
      if (!(weight >= 0 && weight <= 1000)) {
        throw InvalidValueException.worded(
            Sentence.of("error.weight").with("weight", weight).with("throttle", throttle),
            Sentence.of("error.to").with("low", 0).with("high", 1000));
      }
      weight += 0.0; // −0.0 becomes 0.0
    }
  }

  /**
   * Checks the points.
   *
   * @param points the points by rising throttle; at least one, and not all without weight
   * @throws IllegalArgumentException if there is none, their throttle openings do not rise, or no
   *     weight is more than zero
   */
  public RidingProfile {
    points = List.copyOf(points);
    Checks.atMost(
        "points",
        () -> Sentence.of("error.name.points-of-a-riding-profile"),
        points.size(),
        MOST_POINTS);
    boolean rising = Comparators.isInStrictOrder(points, Comparator.comparing(Point::throttle));
    if (!rising || points.stream().noneMatch(p -> p.weight() > 0)) {
      throw InvalidValueException.of(
          Sentence.of("error.name.profile"),
          points.toString(),
          Sentence.of("error.profile-points"));
    }
  }

  /**
   * A profile as this project assumes it for the road: mostly small and middle throttle.
   *
   * @return the assumed profile
   */
  public static RidingProfile assumedRoad() {
    return new RidingProfile(
        List.of(
            new Point(ThrottleOpening.CLOSED, 1),
            new Point(ThrottleOpening.ofEighths(1), 3),
            new Point(ThrottleOpening.ofEighths(4), 2),
            new Point(ThrottleOpening.FULL, 1)));
  }

  /** {@return as much at one throttle opening as at any other: for means over the throttle} */
  public static RidingProfile even() {
    return new RidingProfile(List.of(new Point(ThrottleOpening.CLOSED, 1)));
  }

  /**
   * The weight at a throttle opening.
   *
   * @param throttle throttle opening
   * @return the weight there
   */
  public double weightAt(ThrottleOpening throttle) {
    double share = throttle.share();
    Point before = points.get(0);
    for (Point next : points) {
      if (share <= next.throttle().share()) {
        double from = before.throttle().share();
        double to = next.throttle().share();
        double part = to == from ? 0 : Math.max(0, (share - from) / (to - from));
        return before.weight() + part * (next.weight() - before.weight());
      }
      before = next;
    }
    return before.weight();
  }

  /**
   * How much of the riding falls to each of some throttle openings: the weight there, times the
   * part of the throttle that is nearer to it than to its neighbours. By it the mean over openings
   * does not depend on how close they stand.
   *
   * @param rising the openings, rising; at least one
   * @return a weight for each, in their order; only their proportions count
   */
  public List<Double> weights(List<ThrottleOpening> rising) {
    int last = rising.size() - 1;
    List<Double> weights = new ArrayList<>(rising.size());
    for (int i = 0; i <= last; i++) {
      double from = rising.get(Math.max(0, i - 1)).share();
      double to = rising.get(Math.min(last, i + 1)).share();
      weights.add(weightAt(rising.get(i)) * (last == 0 ? 1 : (to - from) / 2));
    }
    return weights;
  }
}
