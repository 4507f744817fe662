package dev.jetting.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expectation propagation against brute-force numerical integration of the posterior. */
class ExpectationPropagationTest {

  private static final double INFINITY = Double.POSITIVE_INFINITY;

  private static final Kernel<Double> KERNEL = Kernel.squaredExponential(0.1, 0.3);

  /** With one interval the moments are exact, except for the arithmetic. */
  @ParameterizedTest
  @CsvSource({
    "-0.05, 0.05, 0.07",
    " 0.10, 0.20, 0.07",
    " 0.00, Infinity, 0.02",
    "-Infinity, -0.15, 0.05",
    " 0.35, 0.40, 0.02",
    "-0.001, 0.001, 0.2"
  })
  void condition_oneInterval_isExact(double low, double high, double noise) {
    IntervalObservation<Double> interval = new IntervalObservation<>(0.5, low, high, noise);
    Normal found =
        ExpectationPropagation.condition(GaussianProcess.prior(KERNEL), List.of(interval)).at(0.5);
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (double f = -0.8; f <= 0.8; f += 1e-5) {
      double weight = StrictMath.exp(-f * f / (2 * 0.01)) * likelihood(f, interval);
      sum += weight;
      mean += weight * f;
      square += weight * f * f;
    }
    mean /= sum;
    assertThat(found.mean()).isCloseTo(mean, within(1e-6));
    assertThat(found.deviation()).isCloseTo(Math.sqrt(square / sum - mean * mean), within(1e-6));
  }

  /** Two correlated values, each known by an interval: integrated on a grid over both. */
  @ParameterizedTest
  @CsvSource({
    "-0.05, 0.05,  0.02, 0.12, 0.07",
    " 0.05, Infinity, -Infinity, 0.02, 0.05",
    " 0.10, 0.20, -0.20, -0.10, 0.10",
    " 0.00, 0.04,  0.00, 0.04, 0.02"
  })
  void condition_twoIntervals_isNearNumericalIntegration(
      double low1, double high1, double low2, double high2, double noise) {
    IntervalObservation<Double> one = new IntervalObservation<>(0.2, low1, high1, noise);
    IntervalObservation<Double> two = new IntervalObservation<>(0.5, low2, high2, noise);
    GaussianProcess<Double> found =
        ExpectationPropagation.condition(GaussianProcess.prior(KERNEL), List.of(one, two));

    double variance = 0.01;
    double covariance = KERNEL.covariance(0.2, 0.5);
    double determinant = variance * variance - covariance * covariance;
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (double f = -0.6; f <= 0.6; f += 1e-3) {
      for (double g = -0.6; g <= 0.6; g += 1e-3) {
        double form = (variance * f * f - 2 * covariance * f * g + variance * g * g) / determinant;
        double weight = StrictMath.exp(-form / 2) * likelihood(f, one) * likelihood(g, two);
        sum += weight;
        mean += weight * f;
        square += weight * f * f;
      }
    }
    mean /= sum;
    double deviation = Math.sqrt(square / sum - mean * mean);
    // A twentieth of a deviation: far below what a plug colour can show.
    assertThat(found.at(0.2).mean()).isCloseTo(mean, within(0.05 * deviation));
    assertThat(found.at(0.2).deviation()).isCloseTo(deviation, within(0.05 * deviation));
  }

  @Test
  void condition_intervalOfEverything_teachesNothing() {
    GaussianProcess<Double> prior = GaussianProcess.prior(KERNEL);
    GaussianProcess<Double> found =
        ExpectationPropagation.condition(
            prior, List.of(new IntervalObservation<>(0.5, -INFINITY, INFINITY, 0.05)));
    assertThat(found.at(0.4)).isEqualTo(prior.at(0.4));
  }

  @Test
  void condition_impossibleInterval_isLeftOutAndNothingBreaks() {
    GaussianProcess<Double> prior = GaussianProcess.prior(KERNEL);
    Normal found =
        ExpectationPropagation.condition(
                prior, List.of(new IntervalObservation<>(0.5, 50, INFINITY, 0.01)))
            .at(0.5);
    assertThat(found.mean()).isZero();
  }

  @Test
  void interval_withEndsAlike_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IntervalObservation<>(0.5, 0.1, 0.1, 0.05))
        .withMessageContaining("less than its upper end");
  }

  private static double likelihood(double f, IntervalObservation<Double> interval) {
    return below((interval.high() - f) / interval.noiseDeviation())
        - below((interval.low() - f) / interval.noiseDeviation());
  }

  private static double below(double t) {
    return Double.isInfinite(t) ? (t > 0 ? 1 : 0) : Erf.erfc(-t / Math.sqrt(2)) / 2;
  }

  /** A sweep costs some n³ multiplications; all of them together are bounded for any number. */
  @Test
  void sweeps_costBoundedWork() {
    for (int n = 1; n <= 170; n++) {
      double work = (double) ExpectationPropagation.mostSweeps(n) * n * n * n;
      assertThat(work).isLessThanOrEqualTo(ExpectationPropagation.MOST_WORK);
    }
    assertThat(ExpectationPropagation.mostSweeps(20)).isEqualTo(500);
    assertThat(ExpectationPropagation.mostSweeps(80)).isGreaterThanOrEqualTo(9);
  }

  /** Eighty noisy intervals of one curve settle within the sweeps that they are allowed. */
  @Test
  void condition_ofManyIntervals_staysWithinThem() {
    List<IntervalObservation<Double>> intervals =
        IntStream.range(0, 80)
            .mapToObj(
                i -> {
                  double value = 0.1 * StrictMath.sin(i / 12.0);
                  return new IntervalObservation<>(i / 80.0, value - 0.02, value + 0.02, 0.03);
                })
            .toList();
    GaussianProcess<Double> found =
        ExpectationPropagation.condition(GaussianProcess.prior(KERNEL), intervals);
    for (IntervalObservation<Double> interval : intervals) {
      assertThat(found.at(interval.input()).mean()).isBetween(interval.low(), interval.high());
    }
  }
}
