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
  void excess_isAShareOfTheLimit_andOneBeyondALimitOfZero() {
    assertThat(above(3, 2).excess()).isEqualTo(0.5);
    assertThat(above(0.2, 0).excess()).isEqualTo(1);
    assertThat(above(1, 1).excess()).isZero();
    assertThat(above(0, 0).excess()).isZero();
  }

  @Test
  void above_ofLessThanTheLimit_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Finding.above(
                    "setting.mainJet",
                    new Measure(1, "mm"),
                    new Measure(1.2, "mm"),
                    ThrottleBand.WHOLE))
        .withMessage(
            "finding that 1.000 mm violates at most 1.200 mm:"
                + " allowed what was measured, then a limit that it violates");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Finding.below(
                    "setting.mainJet", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE))
        .withMessageStartingWith("finding that 2.000 violates at least 1.000: ");
  }

  private static Finding above(double measured, double limit) {
    return Finding.above("x", Measure.ratio(measured), Measure.ratio(limit), ThrottleBand.WHOLE)
        .says("", "");
  }

  @Test
  void common_ofTwoBands_isWhatLiesInBoth() {
    assertThat(ThrottleBand.eighths(1, 4).common(ThrottleBand.eighths(3, 8)))
        .contains(ThrottleBand.eighths(3, 4));
    assertThat(ThrottleBand.eighths(1, 4).common(ThrottleBand.eighths(4, 8)))
        .contains(ThrottleBand.eighths(4, 4));
    assertThat(ThrottleBand.eighths(1, 3).common(ThrottleBand.eighths(4, 8))).isEmpty();
  }

  @Test
  void band_fromWiderThanTo_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ThrottleBand(ThrottleOpening.FULL, ThrottleOpening.CLOSED))
        .withMessageContaining("1")
        .withMessageContaining("0");
  }
}
