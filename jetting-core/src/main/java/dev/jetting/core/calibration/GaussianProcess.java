package dev.jetting.core.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A Gaussian process of zero mean, conditioned on noisy observations.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning, 2006, Algorithm 2.1,
 * by a Cholesky factor of K + noise. Not for thousands of observations: the cost is their third
 * power.
 *
 * @param <X> what the process is a function of
 */
final class GaussianProcess<X> {

  private final Kernel<? super X> kernel;
  private final List<PointObservation<X>> observations;
  private final RealMatrix inverse;
  private final RealMatrix factor;
  private final RealVector weights;
  private final double logMarginalLikelihood;

  private GaussianProcess(Kernel<? super X> kernel, List<PointObservation<X>> observations) {
    this.kernel = kernel;
    this.observations = List.copyOf(observations);
    int n = observations.size();
    if (n == 0) {
      inverse = MatrixUtils.createRealMatrix(1, 1);
      factor = inverse;
      weights = MatrixUtils.createRealVector(new double[1]);
      logMarginalLikelihood = 0;
      return;
    }
    double[] values = observations.stream().mapToDouble(PointObservation::value).toArray();
    RealVector seen = MatrixUtils.createRealVector(values);
    CholeskyDecomposition decomposition = new CholeskyDecomposition(covariances(), 1e-10, 0);
    factor = decomposition.getL();
    inverse = decomposition.getSolver().getInverse();
    weights = decomposition.getSolver().solve(seen);
    double logDeterminant = 0;
    for (int i = 0; i < n; i++) {
      logDeterminant += 2 * StrictMath.log(factor.getEntry(i, i));
    }
    logMarginalLikelihood =
        -(seen.dotProduct(weights) + logDeterminant + n * StrictMath.log(2 * Math.PI)) / 2;
  }

  /**
   * The process before anything is observed.
   *
   * @param kernel covariance of its values
   * @param <X> what it is a function of
   * @return the process
   */
  public static <X> GaussianProcess<X> prior(Kernel<? super X> kernel) {
    return new GaussianProcess<>(kernel, List.of());
  }

  /**
   * This process with more observations.
   *
   * @param more the observations
   * @return the conditioned process
   */
  public GaussianProcess<X> observing(List<PointObservation<X>> more) {
    List<PointObservation<X>> all = new ArrayList<>(observations);
    all.addAll(more);
    return new GaussianProcess<>(kernel, all);
  }

  /**
   * The value at an input, without noise.
   *
   * @param input where
   * @return its distribution
   */
  public Normal at(X input) {
    return at(input, column(input));
  }

  /** The same, with what the observations have in common with the input. */
  Normal at(X input, Column column) {
    double variance = kernel.covariance(input, input);
    if (observations.isEmpty()) {
      return new Normal(0, Math.sqrt(variance));
    }
    double left = Math.max(0, variance - column.explained.dotProduct(column.explained));
    return new Normal(column.to.dotProduct(weights), Math.sqrt(left));
  }

  /**
   * What the observations have in common with an input: their covariances k, and L⁻¹ k, whose
   * square is the variance that they explain. The inverse would lose digits.
   */
  record Column(RealVector to, RealVector explained) {}

  Column column(X input) {
    if (observations.isEmpty()) {
      return new Column(weights, weights); // all zero
    }
    RealVector to = covariancesTo(input);
    RealVector explained = to.copy();
    MatrixUtils.solveLowerTriangularSystem(factor, explained);
    return new Column(to, explained);
  }

  /**
   * The covariance of the values at two inputs, without noise.
   *
   * @param one an input
   * @param other another
   * @return their covariance
   */
  public double covariance(X one, X other) {
    return covariance(one, column(one), other, column(other));
  }

  double covariance(X one, Column columnOfOne, X other, Column columnOfOther) {
    double covariance = kernel.covariance(one, other);
    return observations.isEmpty()
        ? covariance
        : covariance - columnOfOne.explained.dotProduct(columnOfOther.explained);
  }

  /**
   * The values at some inputs together, without noise.
   *
   * @param inputs where
   * @return their joint distribution
   */
  public JointNormal together(List<X> inputs) {
    int n = inputs.size();
    List<Column> columns = inputs.stream().map(this::column).toList();
    double[] mean = new double[n];
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      mean[i] = observations.isEmpty() ? 0 : columns.get(i).to.dotProduct(weights);
      for (int j = 0; j <= i; j++) {
        covariance[i][j] = covariance(inputs.get(i), columns.get(i), inputs.get(j), columns.get(j));
        covariance[j][i] = covariance[i][j];
      }
    }
    return new JointNormal(mean, covariance);
  }

  /**
   * What the others say of an observation: its value, noise included, as predicted without it (eq.
   * 5.12).
   *
   * @param index place of the observation in the order they were given
   * @return the distribution predicted for it
   * @throws IndexOutOfBoundsException if there is no observation of this index
   */
  public Normal withoutOwn(int index) {
    double value = observations.get(index).value();
    double precision = inverse.getEntry(index, index);
    return new Normal(value - weights.getEntry(index) / precision, Math.sqrt(1 / precision));
  }

  /** {@return ln p(observations); 0 without any} */
  public double logMarginalLikelihood() {
    return logMarginalLikelihood;
  }

  /** {@return the observations in the order they were given} */
  public List<PointObservation<X>> observations() {
    return observations;
  }

  private RealMatrix covariances() {
    int n = observations.size();
    RealMatrix matrix = MatrixUtils.createRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double k = kernel.covariance(observations.get(i).input(), observations.get(j).input());
        matrix.setEntry(i, j, k);
        matrix.setEntry(j, i, k);
      }
      matrix.addToEntry(i, i, observations.get(i).noiseVariance());
    }
    return matrix;
  }

  private RealVector covariancesTo(X input) {
    double[] to =
        observations.stream().mapToDouble(o -> kernel.covariance(o.input(), input)).toArray();
    return MatrixUtils.createRealVector(to);
  }
}
