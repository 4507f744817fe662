package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlideGapTest {

  private static final double BORE = 0.030;

  @ParameterizedTest
  @CsvSource({"0.1, 0.05204", "0.25, 0.19550", "0.5, 0.5", "0.75, 0.80450", "1, 1", "0, 0"})
  void area_isThePublishedShareOfTheBore(double lift, double share) {
    // Open share of a round bore behind a flat slide: calculated from the circular segment.
    double bore = Math.PI / 4 * BORE * BORE;

    assertThat(SlideGap.area(BORE, lift * BORE) / bore).isCloseTo(share, within(5e-6));
  }

  @Test
  void area_isHeldWithinTheBore() {
    assertThat(SlideGap.area(BORE, 2 * BORE)).isEqualTo(SlideGap.area(BORE, BORE));
    assertThat(SlideGap.area(BORE, -1)).isZero();
  }

  @Test
  void area_ofTheLeastLift_keepsItsDigits() {
    // With t half the angle at the centre: R² (t − sin 2t/2) = R² (2t³/3 − 2t⁵/15 + 4t⁷/315 …).
    double height = 1e-5;
    double radius = BORE / 2;
    double half = Math.asin(Math.sqrt(height / BORE)) * 2;
    double series =
        radius
            * radius
            * Math.pow(half, 3)
            * (2 / 3.0 - 2 * half * half / 15 + 4 * Math.pow(half, 4) / 315);

    assertThat(SlideGap.area(BORE, height) / series).isCloseTo(1, within(1e-10));
  }
}
