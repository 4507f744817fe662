package dev.jetting.core.engine;

import com.google.common.collect.Comparators;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Comparator;
import java.util.List;

/**
 * The mixture that an engine should get over the throttle range: λ at points, straight between
 * them, held at the ends.
 *
 * <p>Best power near λ 0.82 is published (about 12:1 against 14.7:1). The rest of the curves
 * offered here is this project's own assumption. A builder's word about his engine goes before
 * both.
 *
 * @param points the points by rising throttle; at least one, each of a λ from 0.6 to 1.2
 */
public record MixtureNeed(List<Point> points) {

  /**
   * A point of the curve.
   *
   * @param throttle throttle opening
   * @param lambda the mixture wanted there
   */
  public record Point(ThrottleOpening throttle, Lambda lambda) {

    /**
     * A point.
     *
     * @param eighths throttle opening in eighths, 0 to 8
     * @param lambda λ wanted there, more than zero
     * @return the point
     * @throws IllegalArgumentException if one is out of range
     */
    public static Point of(int eighths, double lambda) {
      return new Point(ThrottleOpening.ofEighths(eighths), Lambda.of(lambda));
    }
  }

  /** The richest that a two-stroke still burns and the leanest that one could want (assumed). */
  private static final double LEAST = 0.6;

  private static final double GREATEST = 1.2;

  private static final MixtureNeed VERY_MILD =
      of(
          Point.of(0, 0.85),
          Point.of(1, 1.00),
          Point.of(2, 0.98),
          Point.of(4, 0.96),
          Point.of(6, 0.94),
          Point.of(8, 0.82));

  private static final MixtureNeed MILD =
      of(
          Point.of(0, 0.82),
          Point.of(1, 0.95),
          Point.of(2, 0.94),
          Point.of(4, 0.93),
          Point.of(6, 0.92),
          Point.of(8, 0.80));

  private static final MixtureNeed TUNED =
      of(
          Point.of(0, 0.80),
          Point.of(1, 0.90),
          Point.of(2, 0.88),
          Point.of(4, 0.87),
          Point.of(6, 0.85),
          Point.of(8, 0.77));

  /**
   * Checks the points.
   *
   * @param points the points by rising throttle
   * @throws IllegalArgumentException if there is none, their throttle openings do not rise, or a λ
   *     is outside 0.6 to 1.2
   */
  public MixtureNeed {
    points = List.copyOf(points);
    Checks.that(
        !points.isEmpty()
            && Comparators.isInStrictOrder(points, Comparator.comparing(Point::throttle)),
        () -> Sentence.of("error.name.need"),
        points,
        () -> Sentence.of("error.points-throttle"));
    for (Point point : points) {
      Checks.within(
          () -> Sentence.of("error.name.wanted").with("throttle", point.throttle()),
          point.lambda().value(),
          LEAST,
          GREATEST);
    }
  }

  /**
   * A curve through points.
   *
   * @param points the points by rising throttle; at least one
   * @return the curve
   * @throws IllegalArgumentException if there is none or their throttle openings do not rise
   */
  public static MixtureNeed of(Point... points) {
    return new MixtureNeed(List.of(points));
  }

  /** {@return what this project assumes for an engine of low compression and little heat} */
  public static MixtureNeed assumedVeryMild() {
    return VERY_MILD;
  }

  /** {@return what this project assumes for a standard engine} */
  public static MixtureNeed assumedMild() {
    return MILD;
  }

  /** {@return what this project assumes for a tuned engine: richer, for it makes more heat} */
  public static MixtureNeed assumedTuned() {
    return TUNED;
  }

  /**
   * The mixture wanted at a throttle opening.
   *
   * @param throttle throttle opening
   * @return λ wanted there
   */
  public Lambda at(ThrottleOpening throttle) {
    return Lambda.of(
        Piecewise.linear(
            points, throttle.share(), p -> p.throttle().share(), p -> p.lambda().value()));
  }
}
