package dev.jetting.rules.search;

import dev.jetting.core.calibration.Normal;

/**
 * A lean risk beyond which a setting no longer matters.
 *
 * <p>If the risk is not beyond it, the limit is above ln λ of the middle air case by at least the
 * numbers of standard deviations below. These are a little less than the true quantiles, never
 * more. They are −∞ if the risk has no bound.
 *
 * @param risk the risk
 * @param ofMiddle of standard deviations of the middle case, whose risk is part of the whole
 * @param ofRest of residual standard deviations, for the cases of as much air or more have no less
 *     λ than the middle one, and no less spread than the residual
 */
record RiskLimit(double risk, double ofMiddle, double ofRest) {

  /** At least so much of the probability is the middle case's. */
  static final double MIDDLES_PROBABILITY = 0.299;

  /** At least so much is the middle case's and those of more air. */
  static final double RESTS_PROBABILITY = 0.649;

  /** No setting matters, whatever its risk. */
  static final RiskLimit NOTHING =
      new RiskLimit(-1, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

  private static final Normal STANDARD = new Normal(0, 1);

  /** In standard deviations; beyond it the probability has no digits left. */
  private static final double FURTHEST = 37;

  private static final int HALVINGS = 42;

  boolean isNothing() {
    return risk < 0;
  }

  static RiskLimit of(double risk) {
    return new RiskLimit(
        risk, quantile(risk / MIDDLES_PROBABILITY), quantile(risk / RESTS_PROBABILITY));
  }

  /** Whether the distance from the limit bounds the risk of a setting. */
  boolean isBounded() {
    return ofRest > Double.NEGATIVE_INFINITY;
  }

  /** The lower end of a bracket of the quantile: what lies below has more than the risk. */
  private static double quantile(double risk) {
    if (risk > 0.5) {
      return Double.NEGATIVE_INFINITY;
    }
    double low = -1e-9;
    double high = FURTHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (STANDARD.above(middle) > risk) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
