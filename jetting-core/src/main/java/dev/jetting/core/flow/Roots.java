package dev.jetting.core.flow;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Bracketed roots, by Brent's method. */
final class Roots {

  private static final double RELATIVE = 1e-15;
  private static final int MOST_EVALUATIONS = 200;

  private Roots() {}

  /**
   * The root of a falling function.
   *
   * @param falling a continuous function that does not rise over the bracket
   * @param low lower end
   * @param high upper end
   * @return the root; an end of the bracket where the function does not change sign
   */
  static double ofFalling(DoubleUnaryOperator falling, double low, double high) {
    if (falling.applyAsDouble(low) <= 0) {
      return low;
    }
    if (falling.applyAsDouble(high) >= 0) {
      return high;
    }
    return new BrentSolver(RELATIVE, Double.MIN_NORMAL, 0)
        .solve(MOST_EVALUATIONS, falling::applyAsDouble, low, high);
  }
}
