package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CustomaryStepsTest {

  @ParameterizedTest
  @EnumSource
  void assumed_hasAStepForEveryPart(MeteringPart part) {
    assertThat(CustomarySteps.assumed().of(part)).isPositive().isLessThanOrEqualTo(1);
  }

  @Test
  void with_changesOneStep_andLeavesTheFirstSetAlone() {
    CustomarySteps other = CustomarySteps.assumed().with(MeteringPart.MAIN_JET, 0.05);

    assertThat(other.of(MeteringPart.MAIN_JET)).isEqualTo(0.05);
    assertThat(other.of(MeteringPart.CLIP))
        .isEqualTo(CustomarySteps.assumed().of(MeteringPart.CLIP));
    assertThat(CustomarySteps.assumed().of(MeteringPart.MAIN_JET)).isNotEqualTo(0.05);
    assertThat(other).isNotEqualTo(CustomarySteps.assumed()).isNotEqualTo("steps");
    assertThat(other.with(MeteringPart.MAIN_JET, 0.02))
        .isEqualTo(CustomarySteps.assumed())
        .hasSameHashCodeAs(CustomarySteps.assumed());
    assertThat(other)
        .hasToString(
            "customary steps PILOT_JET 0.02 SCREW 0.25 CUTAWAY 0.5 NEEDLE_JET 0.02"
                + " NEEDLE_DIAMETER 0.01 NEEDLE_TAPER 0.001 CLIP 1 MAIN_JET 0.05");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN, Double.POSITIVE_INFINITY})
  void with_aStepOutOfRange_isRefused(double size) {
    assertThatThrownBy(() -> CustomarySteps.assumed().with(MeteringPart.CLIP, size))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("customary step of CLIP ")
        .hasMessageEndingWith(": allowed more than 0 and at most 1");
  }
}
