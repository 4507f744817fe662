package dev.jetting.rules.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.rules.risk.RiskProfile;
import org.junit.jupiter.api.Test;

class NeedDistanceTest {

  /** ln 1.1 = 0.09531, from any table. */
  @Test
  void leanerThanNeeded_countsTwice() {
    assertThat(NeedDistance.of(0.99, 0.9)).isCloseTo(2 * 0.0953102, within(1e-7));
    assertThat(NeedDistance.of(0.9, 0.99)).isCloseTo(0.0953102, within(1e-7));
    assertThat(NeedDistance.of(0.9, 0.9)).isZero();
    assertThat(RiskProfile.LEAN_WEIGHT).isEqualTo(2);
  }
}
