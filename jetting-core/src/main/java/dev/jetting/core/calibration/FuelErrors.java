package dev.jetting.core.calibration;

import dev.jetting.core.mixture.FuelSensitivities;

/**
 * What is known of an engine at one throttle opening, its air being given: the three errors that
 * act on the fuel and what is left, normal together. ln λ with any setting is linear in them, so
 * that a search over many settings needs no {@link CalibratedModel} for each.
 */
public final class FuelErrors {

  private static final int OF_WHAT_IS_LEFT = 3;

  private final double[] means;
  private final double[][] covariances;

  /** Of the errors of the pilot circuit, the ring and the main jet, and of what is left. */
  FuelErrors(double[] means, double[][] covariances) {
    this.means = means;
    this.covariances = covariances;
  }

  /**
   * Returns the mean of what is added to the modelled ln λ of a setting.
   *
   * @param pilot ∂ ln λ/∂ z of the pilot circuit with the setting, −1 to 0
   * @param needle the same of the ring between needle and needle jet
   * @param main the same of the main jet
   * @return the mean in ln λ
   */
  public double mean(double pilot, double needle, double main) {
    return pilot * means[0] + needle * means[1] + main * means[2] + means[OF_WHAT_IS_LEFT];
  }

  /**
   * Returns the variance of ln λ of a setting, without the tolerances of its parts.
   *
   * @param pilot ∂ ln λ/∂ z of the pilot circuit with the setting, −1 to 0
   * @param needle the same of the ring between needle and needle jet
   * @param main the same of the main jet
   * @return the variance in ln λ, zero or more
   */
  public double variance(double pilot, double needle, double main) {
    double[] slopes = {pilot, needle, main};
    double variance = covariances[OF_WHAT_IS_LEFT][OF_WHAT_IS_LEFT];
    for (int i = 0; i < slopes.length; i++) {
      variance += covariances[i][i] * slopes[i] * slopes[i];
    }
    for (int i = 0; i < slopes.length; i++) {
      double others = covariances[i][OF_WHAT_IS_LEFT];
      for (int j = 0; j < i; j++) {
        others += covariances[i][j] * slopes[j];
      }
      variance += 2 * slopes[i] * others;
    }
    return Math.max(0, variance);
  }

  /** ln λ at this opening, in this case of the air. */
  Normal lnLambda(FuelSensitivities modelled) {
    double pilot = modelled.pilot();
    double needle = modelled.needle();
    double main = modelled.main();
    return new Normal(
        modelled.lnLambda() + mean(pilot, needle, main), Math.sqrt(variance(pilot, needle, main)));
  }
}
