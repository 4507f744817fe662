package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** More room or more suction never brings less fuel, whatever its inertia. */
class PulsedFlowProperties {

  private static final double ROUNDING = 1e-12;

  @Property
  void smallerRestriction_neverPassesLess(
      @ForAll @DoubleRange(min = 13, max = 17) double lnAlpha,
      @ForAll @DoubleRange(min = 5, max = 10) double lnBeta,
      @ForAll @DoubleRange(min = 0.1, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 20_000) double suction,
      @ForAll @DoubleRange(min = 0, max = 200) double head,
      @ForAll @DoubleRange(min = 6, max = 11) double lnInertia,
      @ForAll @DoubleRange(min = 0.3, max = 1) double byAlpha,
      @ForAll @DoubleRange(min = 0.3, max = 1) double byBeta) {
    double alpha = Math.pow(10, lnAlpha);
    double beta = Math.pow(10, lnBeta);
    double inertia = Math.pow(10, lnInertia);
    double peak = suction - head;
    double mean = share * suction - head;

    double flow = PulsedFlow.flow(alpha, beta, share, peak, mean, inertia);
    double freer = PulsedFlow.flow(byAlpha * alpha, byBeta * beta, share, peak, mean, inertia);

    assertThat(freer).isGreaterThanOrEqualTo(flow * (1 - ROUNDING));
  }

  @Property
  void moreSuction_neverBringsLess(
      @ForAll @DoubleRange(min = 13, max = 17) double lnAlpha,
      @ForAll @DoubleRange(min = 5, max = 10) double lnBeta,
      @ForAll @DoubleRange(min = 0.1, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 20_000) double suction,
      @ForAll @DoubleRange(min = 0, max = 200) double head,
      @ForAll @DoubleRange(min = 6, max = 11) double lnInertia,
      @ForAll @DoubleRange(min = 1, max = 2) double more) {
    double alpha = Math.pow(10, lnAlpha);
    double beta = Math.pow(10, lnBeta);
    double inertia = Math.pow(10, lnInertia);

    double flow =
        PulsedFlow.flow(alpha, beta, share, suction - head, share * suction - head, inertia);
    double raised = more * suction;
    double stronger =
        PulsedFlow.flow(alpha, beta, share, raised - head, share * raised - head, inertia);

    assertThat(stronger).isGreaterThanOrEqualTo(flow * (1 - ROUNDING));
  }

  @Property
  void sensitivity_isTheDerivative(
      @ForAll @DoubleRange(min = 13, max = 17) double lnAlpha,
      @ForAll @DoubleRange(min = 5, max = 10) double lnBeta,
      @ForAll @DoubleRange(min = 0.1, max = 1) double share,
      @ForAll @DoubleRange(min = 300, max = 20_000) double suction,
      @ForAll @DoubleRange(min = 0, max = 200) double head,
      @ForAll @DoubleRange(min = 6, max = 11) double lnInertia) {
    double alpha = Math.pow(10, lnAlpha);
    double beta = Math.pow(10, lnBeta);
    double inertia = Math.pow(10, lnInertia);
    double peak = suction - head;
    double mean = share * suction - head;
    double h = 1e-5;

    PulsedFlow.Sensitivity slope = PulsedFlow.sensitivity(alpha, beta, share, peak, mean, inertia);
    double byAlpha =
        Math.log(PulsedFlow.flow(alpha * (1 + h), beta, share, peak, mean, inertia))
            - Math.log(PulsedFlow.flow(alpha * (1 - h), beta, share, peak, mean, inertia));
    double byBeta =
        Math.log(PulsedFlow.flow(alpha, beta * (1 + h), share, peak, mean, inertia))
            - Math.log(PulsedFlow.flow(alpha, beta * (1 - h), share, peak, mean, inertia));

    assertThat(slope.byAlpha() * alpha).isCloseTo(byAlpha / (2 * h), within(1e-6));
    assertThat(slope.byBeta() * beta).isCloseTo(byBeta / (2 * h), within(1e-6));
  }
}
