package dev.jetting.core.calibration;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * Values that are normally distributed together.
 *
 * <p>Source: Rasmussen and Williams 2006, section 3.6.3: what noisy observations of the values
 * leave follows from a Cholesky factor of B = I + T½ K T½, which is well conditioned for any
 * precision.
 */
final class JointNormal {

  private final double[] mean;
  private final double[][] covariance;

  JointNormal(double[] mean, double[][] covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /**
   * The distributions of each value on its own, once each has been observed with some precision.
   *
   * @param precisions precision of each observation, 0 for none
   * @param shifts precision times observed value
   * @return the distributions, in the order of the values
   */
  Normal[] observing(double[] precisions, double[] shifts) {
    int n = mean.length;
    double[][] b = new double[n][n];
    double[] root = new double[n];
    double[] pulled = new double[n];
    for (int i = 0; i < n; i++) {
      root[i] = Math.sqrt(precisions[i]);
      for (int j = 0; j <= i; j++) {
        b[i][j] = root[i] * covariance[i][j] * root[j];
        b[j][i] = b[i][j];
      }
      b[i][i]++;
      double residual = shifts[i] - precisions[i] * mean[i];
      for (int j = 0; j < n; j++) {
        pulled[j] += covariance[j][i] * residual;
      }
    }
    double[][] factor =
        new CholeskyDecomposition(MatrixUtils.createRealMatrix(b), 1e-10, 0).getL().getData();
    double[] along = solved(factor, root, pulled);
    Normal[] left = new Normal[n];
    for (int i = 0; i < n; i++) {
      double[] explained = solved(factor, root, covariance[i]);
      double variance = covariance[i][i];
      double centre = mean[i] + pulled[i];
      for (int k = 0; k < n; k++) {
        variance -= explained[k] * explained[k];
        centre -= explained[k] * along[k];
      }
      left[i] = new Normal(centre, Math.sqrt(Math.max(0, variance)));
    }
    return left;
  }

  /** L⁻¹ T½ v. */
  private static double[] solved(double[][] factor, double[] root, double[] vector) {
    double[] solved = new double[vector.length];
    for (int i = 0; i < solved.length; i++) {
      double left = root[i] * vector[i];
      for (int k = 0; k < i; k++) {
        left -= factor[i][k] * solved[k];
      }
      solved[i] = left / factor[i][i];
    }
    return solved;
  }
}
