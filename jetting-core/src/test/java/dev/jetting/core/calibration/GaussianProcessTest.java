package dev.jetting.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaussianProcessTest {

  private static final Offset<Double> PRINTED = within(5e-11);

  private static final List<Double> PLACES = List.of(1.0, 3.0, 5.0, 6.0, 8.0);

  /** The process of the check values: y = x sin x, σ_f 1, ℓ 1, noise variance 0.01. */
  private static GaussianProcess<Double> xSinX() {
    return GaussianProcess.<Double>prior(Kernel.squaredExponential(1, 1))
        .observing(
            PLACES.stream()
                .map(x -> new PointObservation<>(x, x * StrictMath.sin(x), 0.01))
                .toList());
  }

  /**
   * Rasmussen and Williams, Algorithm 2.1, run three ways by general-purpose libraries for the
   * project's check values.
   */
  @ParameterizedTest
  @CsvSource({
    "2,  0.9844169776, 0.5935497404",
    "4, -2.4797479743, 0.5438273109",
    "7,  4.2984253268, 0.5469068831",
    "9,  4.7572366827, 0.7928938002"
  })
  void at_xSinX_isThatOfOtherLibraries(double x, double mean, double deviation) {
    Normal value = xSinX().at(x);
    assertThat(value.mean()).isCloseTo(mean, PRINTED);
    assertThat(value.deviation()).isCloseTo(deviation, PRINTED);
  }

  /** Source as above. */
  @Test
  void logMarginalLikelihood_xSinX_isThatOfOtherLibraries() {
    assertThat(xSinX().logMarginalLikelihood()).isCloseTo(-48.0545994115, PRINTED);
  }

  /** The 2 × 2 case, which can be done by hand. */
  @Test
  void at_twoObservations_isThatByHand() {
    Normal value =
        GaussianProcess.<Double>prior(Kernel.squaredExponential(1, 1))
            .observing(
                List.of(new PointObservation<>(0.0, 1, 0.1), new PointObservation<>(1.0, 2, 0.1)))
            .at(0.5);
    assertThat(value.mean()).isCloseTo(1.5513877191, PRINTED);
    assertThat(value.deviation() * value.deviation()).isCloseTo(0.0872700955, PRINTED);
  }

  @Test
  void at_withoutObservations_isThePrior() {
    Normal value = GaussianProcess.<Double>prior(Kernel.squaredExponential(0.3, 1)).at(7.0);
    assertThat(value.mean()).isZero();
    assertThat(value.deviation()).isCloseTo(0.3, within(1e-15));
  }

  /** Against really leaving each out and conditioning on the rest. */
  @Test
  void withoutOwn_isWhatTheOthersPredict() {
    GaussianProcess<Double> all = xSinX();
    for (int i = 0; i < PLACES.size(); i++) {
      List<PointObservation<Double>> others = new ArrayList<>(all.observations());
      PointObservation<Double> left = others.remove(i);
      Normal value =
          GaussianProcess.<Double>prior(Kernel.squaredExponential(1, 1))
              .observing(others)
              .at(left.input());
      double deviation = Math.sqrt(value.deviation() * value.deviation() + 0.01);
      assertThat(all.withoutOwn(i).mean()).isCloseTo(value.mean(), within(1e-9));
      assertThat(all.withoutOwn(i).deviation()).isCloseTo(deviation, within(1e-9));
    }
  }

  @Test
  void observation_withoutNoise_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PointObservation<>(1.0, 2, 0))
        .withMessageContaining("variance of the noise")
        .withMessageContaining("more than 0");
  }

  @Test
  void kernel_withoutLength_isRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Kernel.squaredExponential(1, 0));
  }

  /** One and two standard deviations, from any table of the normal distribution. */
  @Test
  void above_isThatOfTheTable() {
    assertThat(new Normal(1, 2).above(3)).isCloseTo(0.158655, within(1e-6));
    assertThat(new Normal(1, 2).above(-3)).isCloseTo(0.977250, within(1e-6));
    assertThat(new Normal(1, 0).above(1.5)).isZero();
    assertThat(new Normal(1, 0).above(0.5)).isEqualTo(1);
  }
}
