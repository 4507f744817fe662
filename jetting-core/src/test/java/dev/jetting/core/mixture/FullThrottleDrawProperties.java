package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.units.VolumeFlow;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** The bound against the model, on what could be bolted together and on what could not. */
class FullThrottleDrawProperties {

  @Property
  @Domain(SetupArbitraries.class)
  void bound_isNeverExceeded(@ForAll Setup setup) {
    holds(setup);
  }

  @Property
  @Domain(SetupArbitraries.Extreme.class)
  void bound_isNeverExceededByExtremeSetups(@ForAll Setup setup) {
    holds(setup);
  }

  @Property
  @Domain(SetupArbitraries.class)
  void boundOfSeveralDays_isNeverExceededOnAnyOfThem(@ForAll Setup setup, @ForAll Setup other) {
    VolumeFlow most = FullThrottleDraw.atMost(setup, List.of(setup.air(), other.air()));
    assertThat(FullThrottleDraw.of(setup)).isLessThanOrEqualTo(most);
    assertThat(FullThrottleDraw.of(setup.withAir(other.air()))).isLessThanOrEqualTo(most);
  }

  private static void holds(Setup setup) {
    assertThat(FullThrottleDraw.of(setup)).isLessThanOrEqualTo(FullThrottleDraw.atMost(setup));
  }
}
