package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ShortOrificeTest {

  @ParameterizedTest
  @CsvFileSource(resources = "short-orifice.csv", numLinesToSkip = 1)
  void discharge_isThePublishedCorrelation(double reynolds, double expected, String source) {
    assertThat(ShortOrifice.discharge(reynolds, 2)).as(source).isCloseTo(expected, within(5e-6));
  }

  /**
   * With c = 1/Cdu, y = 20 (1 + 2.25 L/d)/Re and t the correlation's last term, full over
   * linearised is (c + y − t)/√(c² + 2cy), and the root is (c + y) √(1 − (y/(c+y))²). So the
   * linearised coefficient is at most 1/√(1 − (y/(c+y))²) − 1 too high and at most t/(c + y) too
   * low, whatever the numbers.
   */
  @Test
  void linearised_isWithinWhatLeavingOutTheTermsAllows() {
    for (double lengthRatio = 2; lengthRatio <= 10; lengthRatio++) {
      for (double reynolds : reynolds()) {
        double c = 1 / (0.827 - 0.0085 * lengthRatio);
        double y = 20 * (1 + 2.25 * lengthRatio) / reynolds;
        double log = Math.log10(1.5e-4 * reynolds);
        double t = 0.005 * lengthRatio / (1 + 7.5 * log * log);
        double share = y / (c + y);

        assertThat(error(reynolds, lengthRatio))
            .as("Re %s, L/d %s", reynolds, lengthRatio)
            .isLessThanOrEqualTo(1 / Math.sqrt(1 - share * share) - 1 + 1e-12)
            .isGreaterThanOrEqualTo(-t / (c + y) - 1e-12);
      }
    }
  }

  /** Greatest and RMS error over Re 500 to 10 000, equal steps of its logarithm. */
  @ParameterizedTest
  @CsvFileSource(resources = "linearised-orifice.csv", numLinesToSkip = 1)
  void linearised_isAsFarFromTheCorrelation_asTold(
      double lengthRatio, double lowest, double highest, double rms, String source) {
    double[] errors =
        DoubleStream.of(reynolds()).map(reynolds -> error(reynolds, lengthRatio)).toArray();
    double square = DoubleStream.of(errors).map(e -> e * e).average().orElseThrow();

    assertThat(100 * DoubleStream.of(errors).min().orElseThrow())
        .as(source)
        .isCloseTo(lowest, within(1e-4));
    assertThat(100 * DoubleStream.of(errors).max().orElseThrow())
        .as(source)
        .isCloseTo(highest, within(1e-4));
    assertThat(100 * Math.sqrt(square)).as(source).isCloseTo(rms, within(1e-4));
  }

  @Test
  void restriction_flowsWhatTheLinearisedDischargeSays() {
    double bore = 1.26e-3;
    double density = 740;
    double viscosity = 5e-4;
    double area = Math.PI / 4 * bore * bore;
    for (double pressure : new double[] {10, 500, 8000}) {
      double flow = ShortOrifice.restriction(bore, 2, density, viscosity).flow(pressure);
      double reynolds = density * flow / area * bore / viscosity;

      double expected =
          ShortOrifice.linearisedDischarge(reynolds, 2) * area * Math.sqrt(2 * pressure / density);
      assertThat(flow / expected).isCloseTo(1, within(1e-12));
    }
  }

  private static double error(double reynolds, double lengthRatio) {
    return ShortOrifice.linearisedDischarge(reynolds, lengthRatio)
            / ShortOrifice.discharge(reynolds, lengthRatio)
        - 1;
  }

  private static double[] reynolds() {
    return IntStream.rangeClosed(0, 200).mapToDouble(i -> 500 * Math.pow(20, i / 200.0)).toArray();
  }
}
