package dev.jetting.rules.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.engine.LoadLine;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RiddenSpeedsTest {

  private static final LoadLine LINE =
      new LoadLine(EngineSpeed.ofRpm(1000), EngineSpeed.ofRpm(7000));

  /** By hand: 1000 + 6000 √(θ by load). */
  @ParameterizedTest
  @CsvSource({"2, 0.5, 4000", "2, 0.125, 2500", "4, 1, 4000", "1, 0.25, 4000", "10, 0, 1000"})
  void uphill_leavesTheRoadWhatTheHillDoesNotTake(double load, double throttle, double rpm) {
    assertThat(new RiddenSpeeds(load).uphill(LINE, ThrottleOpening.ofShare(throttle)).rpm())
        .isCloseTo(rpm, within(1e-9));
  }

  @Test
  void levelRoad_isTheLoadLine() {
    for (int eighths = 0; eighths <= 8; eighths++) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      assertThat(RiddenSpeeds.levelRoad().uphill(LINE, throttle)).isEqualTo(LINE.at(throttle));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.99, 10.5, Double.NaN, Double.POSITIVE_INFINITY})
  void load_outOfRange_isRefused(double load) {
    assertThatThrownBy(() -> new RiddenSpeeds(load))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("load uphill by that of the level road ")
        .hasMessageEndingWith(": allowed 1 to 10");
  }
}
