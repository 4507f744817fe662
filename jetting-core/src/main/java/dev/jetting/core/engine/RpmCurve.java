package dev.jetting.core.engine;

import com.google.common.collect.Comparators;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Sentence;
import java.util.Comparator;
import java.util.List;

/**
 * A plain number over engine speed: given at points, straight between them, held at the ends.
 *
 * @param points the points by rising speed; at least one
 */
public record RpmCurve(List<Point> points) {

  private static final int MOST_POINTS = 200;

  /**
   * A point of the curve.
   *
   * @param speed engine speed
   * @param value the number there, 0 to 10
   */
  public record Point(EngineSpeed speed, double value) {

    /**
     * Checks the number.
     *
     * @param speed engine speed
     * @param value the number there, 0 to 10
     * @throws IllegalArgumentException if it is outside 0 to 10
     */
    public Point {
      value =
          Checks.within(
              () -> Sentence.of("error.name.curve-at").with("speed", speed), value, 0, 10);
    }

    /**
     * A point.
     *
     * @param rpm engine speed in revolutions per minute
     * @param value the number there, 0 to 10
     * @return the point
     * @throws IllegalArgumentException if one is out of range
     */
    public static Point of(double rpm, double value) {
      return new Point(EngineSpeed.ofRpm(rpm), value);
    }
  }

  /**
   * Checks the points.
   *
   * @param points the points by rising speed
   * @throws IllegalArgumentException if there is none or their speeds do not rise
   */
  public RpmCurve {
    points = List.copyOf(points);
    Checks.atMost(
        "points",
        () -> Sentence.of("error.name.points-of-a-curve-over-engine-speed"),
        points.size(),
        MOST_POINTS);
    Checks.that(
        !points.isEmpty()
            && Comparators.isInStrictOrder(points, Comparator.comparing(Point::speed)),
        () -> Sentence.of("error.name.curve"),
        points,
        () -> Sentence.of("error.points-speed"));
  }

  /**
   * A curve through points.
   *
   * @param points the points by rising speed; at least one
   * @return the curve
   * @throws IllegalArgumentException if there is none or their speeds do not rise
   */
  public static RpmCurve of(Point... points) {
    return new RpmCurve(List.of(points));
  }

  /**
   * The same number at every speed.
   *
   * @param value the number, 0 to 10
   * @return the curve
   * @throws IllegalArgumentException if it is out of range
   */
  public static RpmCurve constant(double value) {
    return of(Point.of(0, value));
  }

  /**
   * The number at a speed.
   *
   * @param speed engine speed
   * @return the number there
   */
  public double at(EngineSpeed speed) {
    return Piecewise.linear(points, speed.rpm(), p -> p.speed().rpm(), Point::value);
  }
}
