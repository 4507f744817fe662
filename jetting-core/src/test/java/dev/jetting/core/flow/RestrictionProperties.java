package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class RestrictionProperties {

  @Property
  void flow_needsTheDifferenceThatDrivesIt(
      @ForAll @DoubleRange(min = 1e9, max = 1e18) double alpha,
      @ForAll @DoubleRange(min = 1e6, max = 1e13) double beta,
      @ForAll @DoubleRange(min = 0.01, max = 1e5) double difference) {
    double q = new Restriction(alpha, beta).flow(difference);

    assertThat((alpha * q * q + beta * q) / difference).isCloseTo(1, within(1e-12));
  }

  @Property
  void passing_multipliesTheFlow(
      @ForAll @DoubleRange(min = 1e9, max = 1e18) double alpha,
      @ForAll @DoubleRange(min = 1e6, max = 1e13) double beta,
      @ForAll @DoubleRange(min = 0.5, max = 2) double factor,
      @ForAll @DoubleRange(min = 0.01, max = 1e5) double difference) {
    Restriction plain = new Restriction(alpha, beta);

    assertThat(plain.passing(factor).flow(difference) / (factor * plain.flow(difference)))
        .isCloseTo(1, within(1e-12));
  }

  @Property
  void flow_withoutADifference_isNone(@ForAll @DoubleRange(min = -1e5, max = 0) double difference) {
    assertThat(new Restriction(1e14, 1e9).flow(difference)).isZero();
  }
}
