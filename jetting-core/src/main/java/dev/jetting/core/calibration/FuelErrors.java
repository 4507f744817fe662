package dev.jetting.core.calibration;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * What is known of an engine at one throttle opening, its air being given: the three errors that
 * act on the fuel and what is left, normal together. ln λ with any setting is linear in them, so
 * that a search over many settings needs no {@link CalibratedModel} for each.
 */
public final class FuelErrors {

  private static final int OF_WHAT_IS_LEFT = 3;

  private final double[] means;
  private final double[][] covariances;

  private FuelErrors(double[] means, double[][] covariances) {
    this.means = means;
    this.covariances = covariances;
  }

  static FuelErrors of(
      GaussianProcess<Place> process, double shift, AirCase given, ThrottleOpening throttle) {
    Place left = Place.inUse(new Sensitivities(0, 0, 0, 0), throttle.share());
    List<Place> places =
        List.of(
            Place.of(ErrorSource.PILOT),
            Place.of(ErrorSource.NEEDLE),
            Place.of(ErrorSource.MAIN),
            left);
    Place airPlace = Place.of(ErrorSource.AIR);
    Normal air = process.at(airPlace);
    double airVariance = air.deviation() * air.deviation();
    int n = places.size();
    double[] means = new double[n];
    double[][] covariances = new double[n][n];
    for (int i = 0; i < n; i++) {
      double byAir =
          airVariance == 0 ? 0 : process.covariance(places.get(i), airPlace) / airVariance;
      means[i] = process.at(places.get(i)).mean() + byAir * (given.z() - air.mean());
      for (int j = 0; j < n; j++) {
        covariances[i][j] =
            process.covariance(places.get(i), places.get(j))
                - byAir * process.covariance(places.get(j), airPlace);
      }
    }
    means[OF_WHAT_IS_LEFT] += shift;
    return new FuelErrors(means, covariances);
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
    double[] slopes = {pilot, needle, main, 1};
    double variance = 0;
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        variance += slopes[i] * slopes[j] * covariances[i][j];
      }
    }
    return Math.max(0, variance);
  }
}
