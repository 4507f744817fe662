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
   * @param falling a continuous function that does not rise over the bracket, is not below zero at
   *     its lower end nor above zero at its upper; Brent's method asks for both itself
   * @param low lower end
   * @param high upper end, no less
   * @return the root
   */
  static double ofFalling(DoubleUnaryOperator falling, double low, double high) {
    if (low == high) {
      return low;
    }
    return new BrentSolver(RELATIVE, Double.MIN_NORMAL, 0)
        .solve(MOST_EVALUATIONS, falling::applyAsDouble, low, high);
  }
}
