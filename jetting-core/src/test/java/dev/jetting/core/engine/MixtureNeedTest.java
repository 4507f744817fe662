package dev.jetting.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.engine.MixtureNeed.Point;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixtureNeedTest {

  @ParameterizedTest
  @CsvSource({"0, 0.9", "0.25, 0.9", "0.5, 1.0", "0.75, 1.1", "1, 1.1"})
  void at_isStraightBetweenThePoints_andHeldAtTheEnds(double throttle, double lambda) {
    MixtureNeed need = MixtureNeed.of(Point.of(2, 0.9), Point.of(6, 1.1));

    assertThat(need.at(ThrottleOpening.ofShare(throttle)).value()).isCloseTo(lambda, within(1e-12));
  }

  @Test
  void assumedNeeds_areRicherTheMoreHeatAnEngineMakes() {
    for (int eighths = 0; eighths <= 8; eighths++) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      assertThat(MixtureNeed.assumedTuned().at(throttle))
          .isLessThan(MixtureNeed.assumedMild().at(throttle));
      assertThat(MixtureNeed.assumedMild().at(throttle))
          .isLessThan(MixtureNeed.assumedVeryMild().at(throttle));
    }
  }

  @Test
  void assumedNeeds_atFullThrottle_areNearBestPower() {
    // Best power about 12:1 against 14.7:1, λ 0.82 (university lecture notes); the band is assumed.
    for (MixtureNeed need :
        List.of(
            MixtureNeed.assumedVeryMild(), MixtureNeed.assumedMild(), MixtureNeed.assumedTuned())) {
      assertThat(need.at(ThrottleOpening.FULL).value()).isBetween(0.82 - 0.06, 0.82 + 0.06);
    }
  }

  @Test
  void needWithoutPointsOrOutOfOrder_isRefused() {
    String allowed = "allowed at least one point, each at a wider throttle than the one before";
    assertThatThrownBy(MixtureNeed::of)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("mixture needed []: " + allowed);
    assertThatThrownBy(() -> MixtureNeed.of(Point.of(4, 0.9), Point.of(2, 0.9)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("mixture needed [")
        .hasMessageEndingWith(allowed);
    assertThatThrownBy(() -> Point.of(9, 0.9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("9 eighths");
  }
}
