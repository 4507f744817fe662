package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
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
  void boundOfSeveralDaysAndFuels_isNeverExceededByAnyOfThem(
      @ForAll Setup setup, @ForAll Setup other) {
    List<Air> days = List.of(setup.air(), other.air());
    List<Fuel> fuels = List.of(setup.fuel(), other.fuel());
    VolumeFlow most = FullThrottleDraw.atMost(setup, days, fuels);
    for (Air day : days) {
      for (Fuel fuel : fuels) {
        assertThat(FullThrottleDraw.of(setup.withAir(day).withFuel(fuel)))
            .isLessThanOrEqualTo(most);
      }
    }
  }

  private static void holds(Setup setup) {
    assertThat(FullThrottleDraw.of(setup)).isLessThanOrEqualTo(FullThrottleDraw.atMost(setup));
  }
}
