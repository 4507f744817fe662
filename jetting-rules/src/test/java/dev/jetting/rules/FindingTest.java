package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.api.Test;

class FindingTest {

  @Test
  void text_putsAttributesIntoTheMessage() {
    Finding finding =
        Finding.above("setting.x", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
            .with("lambda", "λ 1.04")
            .with("where", "3/8 throttle")
            .says("At {where}: {lambda}; {unknown} stays.", "Mend it.");
    assertThat(finding.text()).isEqualTo("At 3/8 throttle: λ 1.04; {unknown} stays.");
  }

  @Test
  void text_attributeThatLooksLikeAPlaceholder_isNotPutInTwice() {
    Finding finding =
        Finding.above("setting.x", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
            .with("a", "{b}")
            .with("b", "B")
            .says("{a} {b}", "Mend it.");
    assertThat(finding.text()).isEqualTo("{b} B");
  }

  @Test
  void margin_isNegativeByHowMuchTheRuleFailed() {
    assertThat(
            Finding.above("x", Measure.ratio(3), Measure.ratio(2), ThrottleBand.WHOLE)
                .says("", "")
                .margin())
        .isEqualTo(Measure.ratio(-1));
    assertThat(
            Finding.below("x", new Measure(1, "mm²"), new Measure(4, "mm²"), ThrottleBand.WHOLE)
                .says("", "")
                .margin())
        .isEqualTo(new Measure(-3, "mm²"));
  }

  @Test
  void band_fromWiderThanTo_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ThrottleBand(ThrottleOpening.FULL, ThrottleOpening.CLOSED))
        .withMessageContaining("1")
        .withMessageContaining("0");
  }
}
