package dev.jetting.rules.search;

import dev.jetting.core.calibration.Normal;

/**
 * A lean risk beyond which a setting no longer matters.
 *
 * @param risk the risk
 * @param quantile by so many standard deviations the limit is above ln λ in the middle air case at
 *     least where the risk is not beyond {@code risk}: a little less than the true quantile, never
 *     more; −∞ for risks of which nothing is told
 */
record RiskLimit(double risk, double quantile) {

  /** No setting matters, whatever its risk. */
  static final RiskLimit NOTHING = new RiskLimit(-1, Double.NEGATIVE_INFINITY);

  private static final Normal STANDARD = new Normal(0, 1);

  /** Beyond so many deviations the probability has no digits left. */
  private static final double FURTHEST = 37;

  private static final int HALVINGS = 42;

  /** The middle air case has at least so much of the probability, and so of the risk. */
  static final double MIDDLES_PROBABILITY = 0.53;

  boolean isNothing() {
    return risk < 0;
  }

  static RiskLimit of(double risk) {
    double middles = risk / MIDDLES_PROBABILITY;
    return new RiskLimit(risk, middles > 0.5 ? Double.NEGATIVE_INFINITY : quantile(middles));
  }

  /** The lower end of a bracket of the quantile: what lies below has more than the risk. */
  private static double quantile(double risk) {
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
