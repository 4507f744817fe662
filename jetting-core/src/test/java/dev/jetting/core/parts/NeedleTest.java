package dev.jetting.core.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedleTest {

  private static final Needle TWO_TAPERS =
      needle(2.5, List.of(taper(5, 0.02), taper(15, 0.05)), 5, 40);

  @ParameterizedTest
  @CsvSource({"0, 2.5, 0", "5, 2.5, 0", "10, 2.4, 5", "15, 2.3, 10", "25, 1.8, 20", "40, 1.05, 35"})
  void diameter_fallsByEachTaperFromItsStart(double down, double diameter, double tapered) {
    // By hand: 2.5 − 0.02 (to 15) − 0.05 (from 15).
    assertThat(TWO_TAPERS.diameterAt(down)).isCloseTo(diameter, within(1e-12));
    assertThat(TWO_TAPERS.taperedLength(down)).isCloseTo(tapered, within(1e-12));
  }

  @Test
  void diameter_beyondTheTip_isNone() {
    assertThat(TWO_TAPERS.diameterAt(40.001)).isZero();
  }

  @Test
  void straightNeedle_hasOneDiameter() {
    Needle straight = needle(2.5, List.of(), 1, 10);

    assertThat(straight.diameterAt(9.9)).isEqualTo(2.5);
    assertThat(straight.taperedLength(9.9)).isZero();
  }

  @Test
  void wrongNeedles_areRefused() {
    refused(() -> needle(2.5, List.of(), 0, 10), "grooves of needle n 0: allowed 1 to 9");
    refused(() -> needle(2.5, List.of(), 10, 10), "grooves of needle n 10: allowed 1 to 9");
    refused(
        () -> needle(2.5, List.of(taper(5, 0.02)), 5, 5),
        "tip of needle n 5 mm: allowed below the last taper's start");
    assertThatThrownBy(() -> needle(2.5, List.of(taper(5, 0.02), taper(5, 0.03)), 5, 40))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("tapers of needle n [")
        .hasMessageEndingWith("]: allowed each starting below the one before");
    assertThatThrownBy(() -> needle(2.5, List.of(taper(5, 0.1)), 5, 40))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageEndingWith(": allowed leaving more than 0 mm of diameter at the tip");
    refused(
        () ->
            Needle.builder()
                .id("")
                .cylinder(Diameter.ofMillimetres(2))
                .tapers(List.of())
                .grooves(1)
                .groovePitch(mm(1))
                .tip(mm(10))
                .build(),
        "id of the needle is blank: allowed any text with a visible character");
    refused(() -> taper(5, 0.6), "rate of a needle's taper in mm/mm 0.6: allowed 0 to 0.5");
    refused(() -> taper(5, -0.01), "rate of a needle's taper in mm/mm -0.01: allowed 0 to 0.5");
  }

  private static void refused(ThrowingCallable call, String message) {
    assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }

  private static Needle needle(double cylinder, List<Taper> tapers, int grooves, double tip) {
    return Needle.builder()
        .id("n")
        .cylinder(Diameter.ofMillimetres(cylinder))
        .tapers(tapers)
        .grooves(grooves)
        .groovePitch(mm(1))
        .tip(mm(tip))
        .build();
  }

  private static Taper taper(double start, double rate) {
    return new Taper(mm(start), rate);
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
