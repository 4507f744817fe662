package dev.jetting.rules.search;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RectangularCholeskyDecomposition;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Engines as the spreads allow them, drawn evenly by a Sobol sequence through the inverse normal
 * distribution: the same engines every time. The residual over the throttle is drawn through a
 * pivoted Cholesky factor of its covariance.
 */
final class Draws {

  /** What a factor may leave out of the residual's variance, by the variance. */
  private static final double LEFT_OUT = 1e-6;

  /**
   * An engine and its carburettor.
   *
   * @param differences natural logarithm of true by modelled flow
   * @param residual e^g at each opening: true by modelled λ
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Drawn(Map<ErrorSource, Double> differences, double[] residual) {}

  private final ModelUncertainty uncertainty;
  private final double[][] root;
  private final SobolSequenceGenerator sobol;
  private final NormalDistribution normal = new NormalDistribution();

  Draws(ModelUncertainty uncertainty) {
    this.uncertainty = uncertainty;
    root = root(uncertainty, AssessedSetting.openings());
    sobol = new SobolSequenceGenerator(ErrorSource.values().length + root[0].length);
  }

  private static double[][] root(ModelUncertainty uncertainty, List<ThrottleOpening> openings) {
    double spread = uncertainty.residual().value();
    double length = uncertainty.spreads().residualLength();
    int n = openings.size();
    if (spread == 0) {
      return new double[n][0];
    }
    RealMatrix correlation = MatrixUtils.createRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double apart = (openings.get(i).share() - openings.get(j).share()) / length;
        correlation.setEntry(i, j, StrictMath.exp(-apart * apart / 2));
      }
    }
    double[][] factor =
        new RectangularCholeskyDecomposition(correlation, LEFT_OUT).getRootMatrix().getData();
    for (double[] row : factor) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= spread;
      }
    }
    return factor;
  }

  /** The first engines of the sequence. Its zero is left out, because no quantile accepts it. */
  List<Drawn> first(int count) {
    sobol.skipTo(1);
    return IntStream.range(0, count).mapToObj(i -> next()).toList();
  }

  private Drawn next() {
    double[] even = sobol.nextVector();
    double[] standard = new double[even.length];
    for (int i = 0; i < even.length; i++) {
      standard[i] = normal.inverseCumulativeProbability(even[i]);
    }
    int used = 0;
    Map<ErrorSource, Double> differences = new EnumMap<>(ErrorSource.class);
    for (ErrorSource source : ErrorSource.values()) {
      differences.put(source, uncertainty.spreads().of(source) * standard[used++]);
    }
    double[] residual = new double[root.length];
    for (int i = 0; i < residual.length; i++) {
      double g = 0;
      for (int j = 0; j < root[i].length; j++) {
        g += root[i][j] * standard[used + j];
      }
      residual[i] = StrictMath.exp(g);
    }
    return new Drawn(differences, residual);
  }
}
