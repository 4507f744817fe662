package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class IsentropicFlowProperties {

  /** By the equation itself, which the closed form was derived from, for any γ. */
  @Property
  void dropBehindPump_solvesTheBalance(
      @ForAll @DoubleRange(min = -6, max = 6) double lnCapacity,
      @ForAll @DoubleRange(min = 1.05, max = 1.7) double gamma) {
    double capacity = Math.exp(lnCapacity);

    double drop = IsentropicFlow.dropBehindPump(capacity, gamma);

    assertThat(drop).isBetween(0.0, 1.0);
    double passes = capacity * IsentropicFlow.psiOfDrop(drop, gamma);
    assertThat(passes).isCloseTo(1 - drop, within(1e-13 * (1 - drop)));
  }

  @Property
  void dropBehindPump_fallsWithTheCapacity(
      @ForAll @DoubleRange(min = -6, max = 6) double lnCapacity,
      @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
    double capacity = Math.exp(lnCapacity);

    assertThat(IsentropicFlow.dropBehindPump(capacity * (1 + more), 1.4))
        .isLessThan(IsentropicFlow.dropBehindPump(capacity, 1.4));
  }
}
