package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JetSeriesTest {
  /** Steps that change along the series, as they commonly do; invented sizes. */
  private static final JetSeries<JetBore> MAINS =
      JetSeries.regular(JetBore::ofHundredths, 100, 2.5, 110)
          .and(JetSeries.regular(JetBore::ofHundredths, 110, 5, 125));

  private static final JetSeries<JetFlow> IRREGULAR =
      JetSeries.of(List.of(flow(35), flow(42), flow(38), flow(35), flow(40)));

  @Test
  void regular_addsStepsInDecimals() {
    assertThat(JetSeries.regular(JetBore::ofMillimetres, 0.1, 0.1, 0.7).sizes())
        .extracting(JetBore::millimetres)
        .containsExactly(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7);
  }

  @Test
  void sizes_areAscendingAndDistinct() {
    assertThat(IRREGULAR.sizes()).containsExactly(flow(35), flow(38), flow(40), flow(42));
    assertThat(MAINS.sizes())
        .extracting(JetBore::hundredths)
        .containsExactly(100.0, 102.5, 105.0, 107.5, 110.0, 115.0, 120.0, 125.0);
    assertThat(MAINS.smallest()).isEqualTo(bore(100));
    assertThat(MAINS.largest()).isEqualTo(bore(125));
  }

  @Test
  void next_followsTheStepWhereTheSizeIs() {
    assertThat(MAINS.nextUp(bore(107.5))).contains(bore(110));
    assertThat(MAINS.nextUp(bore(110))).contains(bore(115));
    assertThat(MAINS.nextDown(bore(110))).contains(bore(107.5));
    assertThat(MAINS.nextDown(bore(115))).contains(bore(110));
  }

  @Test
  void next_takesSizesThatAreNotInTheSeries() {
    assertThat(MAINS.contains(bore(111))).isFalse();
    assertThat(MAINS.nextUp(bore(111))).contains(bore(115));
    assertThat(MAINS.nextDown(bore(111))).contains(bore(110));
    assertThat(MAINS.nextUp(bore(50))).contains(bore(100));
    assertThat(MAINS.nextDown(bore(300))).contains(bore(125));
  }

  @Test
  void next_isEmptyBeyondTheEnds() {
    assertThat(MAINS.nextUp(bore(125))).isEmpty();
    assertThat(MAINS.nextUp(bore(300))).isEmpty();
    assertThat(MAINS.nextDown(bore(100))).isEmpty();
    assertThat(MAINS.nextDown(bore(50))).isEmpty();
  }

  @Test
  void moved_countsSizes() {
    assertThat(MAINS.moved(bore(107.5), 2)).contains(bore(115));
    assertThat(MAINS.moved(bore(115), -2)).contains(bore(107.5));
    assertThat(MAINS.moved(bore(115), 0)).contains(bore(115));
    assertThat(MAINS.moved(bore(115), 3)).isEmpty();
    assertThat(MAINS.moved(bore(115), Integer.MIN_VALUE)).isEmpty();
    assertThat(MAINS.stepsBetween(bore(107.5), bore(115))).isEqualTo(2);
    assertThat(MAINS.stepsBetween(bore(115), bore(107.5))).isEqualTo(-2);
    assertThatThrownBy(() -> MAINS.moved(bore(111), 1))
        .isInstanceOf(QuantityException.class)
        .hasMessage(
            "jet series \"1.11 mm\": " + "allowed a size of 1 to 1.1 by 0.025, to 1.25 by 0.05 mm");
  }

  @Test
  void nearest_prefersTheLargerOfTwo() {
    assertThat(MAINS.nearest(bore(111))).isEqualTo(bore(110));
    assertThat(MAINS.nearest(bore(112.5))).isEqualTo(bore(115));
    assertThat(MAINS.nearest(bore(113))).isEqualTo(bore(115));
    assertThat(MAINS.nearest(bore(115))).isEqualTo(bore(115));
    assertThat(MAINS.nearest(bore(1))).isEqualTo(bore(100));
    assertThat(MAINS.nearest(bore(999))).isEqualTo(bore(125));
  }

  @Test
  void toString_printsRunsAndSizes() {
    assertThat(MAINS).hasToString("1 to 1.1 by 0.025, to 1.25 by 0.05 mm");
    assertThat(IRREGULAR).hasToString("35, 38 to 42 by 2 cm³/min");
    assertThat(JetSeries.of(List.of(bore(60)))).hasToString("0.6 mm");
    assertThat(JetSeries.of(List.of(Lambda.of(1), Lambda.of(1e-9)))).hasToString("1e-9, 1");
  }

  @Test
  void parse_readsRunsAndSizesInAnyUnitOfTheQuantity() {
    assertThat(JetSeries.parse("100 to 110 by 2.5, to 125 by 5 hundredths", JetBore::parse))
        .isEqualTo(MAINS)
        .hasSameHashCodeAs(MAINS);
    assertThat(JetSeries.parse(" 42, 35, 38, 40 cm3/min ", JetFlow::parse)).isEqualTo(IRREGULAR);
    assertThat(JetSeries.parse("30 to 45 by 5 tenths", Cutaway::parse).nextUp(Cutaway.ofTenths(40)))
        .contains(Cutaway.ofMillimetres(4.5));
    assertThat(JetSeries.parse("35, to 45 by 5 cc/min", JetFlow::parse).sizes()).hasSize(3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "hundredths",
        "100, 105",
        "100 to 110 hundredths",
        "100 to 110 by 3 hundredths",
        "110 to 100 by 5 hundredths",
        "100 to 110 by 0 hundredths",
        "to 110 by 5 hundredths",
        "100,5, 101 hundredths",
        "100, 105, hundredths",
        "0.001 to 900 by 0.001 hundredths",
        "1 to 1e300 by 1 hundredths",
        "900 to 1100 by 100 hundredths",
        "-5 to 10 by 5 hundredths"
      })
  void parse_refusesOtherForms(String text) {
    assertThatThrownBy(() -> JetSeries.parse(text, JetBore::parse))
        .isInstanceOf(QuantityException.class);
  }

  @Test
  void factories_refuseWhatMakesNoSeries() {
    assertThatThrownBy(() -> JetSeries.of(List.<JetBore>of()))
        .hasMessage("jet series: number of sizes 0 sizes: allowed from 1 to 10000");
    assertThatThrownBy(
            () ->
                JetSeries.of(IntStream.rangeClosed(1, 10_001).mapToObj(i -> Lambda.of(i)).toList()))
        .hasMessage("jet series: number of sizes 10001 sizes: allowed from 1 to 10000");
    assertThatThrownBy(() -> JetSeries.regular(JetBore::ofHundredths, 100, 3, 110))
        .hasMessage("jet series \"100 to 110 by 3\": allowed runs upwards in whole steps");
    assertThatThrownBy(() -> JetSeries.regular(JetBore::ofHundredths, 100, -5, 90))
        .hasMessageContaining("allowed steps above 0");
    assertThatThrownBy(() -> JetSeries.regular(JetBore::ofHundredths, 100, Double.NaN, 110))
        .hasMessageContaining("100 to 110 by NaN");
    assertThatThrownBy(() -> JetSeries.of(List.of(PremixRatio.NO_OIL)))
        .hasMessageContaining("sizes that print as a number with a unit");
    assertThatThrownBy(
            () -> JetSeries.of(List.of(ClipPosition.fromTop(1, 5), ClipPosition.fromTop(2, 5))))
        .hasMessageContaining("sizes that print as a number with a unit");
  }

  @Test
  void equals_isByTheSizes() {
    assertThat(MAINS).isNotEqualTo(IRREGULAR).isNotEqualTo("MAINS");
  }

  private static JetBore bore(double hundredths) {
    return JetBore.ofHundredths(hundredths);
  }

  private static JetFlow flow(double number) {
    return JetFlow.ofCubicCentimetresPerMinute(number);
  }
}
