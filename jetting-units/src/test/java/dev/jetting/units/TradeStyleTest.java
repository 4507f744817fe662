package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How settings are written: common practice, no source. */
class TradeStyleTest {

  @Test
  void jets_areNamedByTheirNumbering() {
    assertThat(TradeStyle.main(JetBore.ofMillimetres(1.26))).isEqualTo("main 126");
    assertThat(TradeStyle.main(JetBore.ofMillimetres(1.275))).isEqualTo("main 127.5");
    assertThat(TradeStyle.main(JetBore.ofMillimetres(1.26349))).isEqualTo("main 126.3");
    assertThat(TradeStyle.pilot(JetBore.ofHundredths(45))).isEqualTo("pilot 45");
    assertThat(TradeStyle.main(JetFlow.ofCubicCentimetresPerMinute(118)))
        .isEqualTo("main 118 cm³/min");
    assertThat(TradeStyle.pilot(JetFlow.ofCubicCentimetresPerMinute(22.5)))
        .isEqualTo("pilot 22.5 cm³/min");
  }

  @Test
  void parts_areNamedByTheirSizes() {
    assertThat(TradeStyle.diameter(Diameter.ofMillimetres(2.665))).isEqualTo("2.665 mm");
    assertThat(TradeStyle.diameter(Diameter.ofMillimetres(2.5))).isEqualTo("2.5 mm");
    assertThat(TradeStyle.cutaway(Cutaway.ofMillimetres(4))).isEqualTo("cutaway 40");
    assertThat(TradeStyle.clip(ClipPosition.fromTop(2, 5))).isEqualTo("clip 2 of 5 from top");
    assertThat(TradeStyle.clip(ClipPosition.fromBottom(4, 5))).isEqualTo("clip 4 of 5 from bottom");
    assertThat(TradeStyle.floatLevel(FloatLevel.ofMillimetres(19.5)))
        .isEqualTo("float level 19.5 mm");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 turns",
    "0.125, ⅛ turn",
    "0.5, ½ turn",
    "1, 1 turn",
    "1.125, 1⅛ turns",
    "1.5, 1½ turns",
    "1.75, 1¾ turns",
    "2, 2 turns",
    "2.375, 2⅜ turns",
    "1.3, 1.3 turns",
    "1.3333333, 1.33 turns",
    "1.4999, 1½ turns",
    "0.999, 1 turn",
    "0.001, 0 turns"
  })
  void turns_areEighthsWhereTheyFit(double turns, String expected) {
    assertThat(TradeStyle.turns(ScrewTurns.of(turns))).isEqualTo(expected);
  }

  @Test
  void speed_isInWholeRevolutions() {
    assertThat(TradeStyle.speed(EngineSpeed.ofRpm(3674.4))).isEqualTo("3674 rpm");
  }

  @Test
  void screw_saysWhichAndOut() {
    assertThat(TradeStyle.screw(ScrewKind.MIXTURE, ScrewTurns.of(1.5)))
        .isEqualTo("mixture screw 1½ turns out");
    assertThat(TradeStyle.screw(ScrewKind.AIR, ScrewTurns.of(2)))
        .isEqualTo("air screw 2 turns out");
  }

  @ParameterizedTest
  @CsvSource({
    "0, closed throttle",
    "0.125, 1/8 throttle",
    "0.25, 1/4 throttle",
    "0.375, 3/8 throttle",
    "0.5, 1/2 throttle",
    "0.625, 5/8 throttle",
    "0.75, 3/4 throttle",
    "0.875, 7/8 throttle",
    "1, full throttle",
    "0.109375, 7/64 throttle",
    "0.0078125, 1/128 throttle",
    "0.4, 40 % throttle",
    "0.0625, 1/16 throttle",
    "0.09375, 3/32 throttle",
    "0.96875, 31/32 throttle",
    "0.999, 99.9 % throttle",
    "0.9999, full throttle"
  })
  void throttle_isAFractionWhereOneFits(double share, String expected) {
    assertThat(TradeStyle.throttle(ThrottleOpening.ofShare(share))).isEqualTo(expected);
  }

  @Test
  void mixtureAndAir_areRoundedForPeople() {
    assertThat(TradeStyle.premix(PremixRatio.ofPetrolToOil(50))).isEqualTo("premix 50:1");
    assertThat(TradeStyle.premix(PremixRatio.ofOilPercent(3))).isEqualTo("premix 33.3:1");
    assertThat(TradeStyle.premix(PremixRatio.NO_OIL)).isEqualTo("no oil");
    assertThat(TradeStyle.lambda(Lambda.of(0.8849))).isEqualTo("λ 0.88");
    assertThat(TradeStyle.airFuelRatio(AirFuelRatio.of(12.94))).isEqualTo("12.9:1");
    assertThat(TradeStyle.temperature(Temperature.ofCelsius(-0.4))).isEqualTo("0 °C");
    assertThat(TradeStyle.temperature(Temperature.ofCelsius(-5.4))).isEqualTo("-5 °C");
    assertThat(TradeStyle.pressure(Pressure.ofPascals(101_325))).isEqualTo("1013 hPa");
    assertThat(TradeStyle.humidity(RelativeHumidity.ofShare(0.45))).isEqualTo("45 %");
    assertThat(TradeStyle.altitude(Altitude.ofFeet(2800))).isEqualTo("853 m");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 %",
    "0.0001, under 1 %",
    "0.01, 1 %",
    "0.05, 5 %",
    "0.99, 99 %",
    "0.9999, over 99 %",
    "1, 100 %"
  })
  void probability_isCertainOnlyWhereItIs(double probability, String expected) {
    assertThat(TradeStyle.probability(Probability.of(probability))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "0.12, 0.1, 12 %",
    "0.104, 0.1, 10.4 %",
    "0.1, 0.1, 10 %",
    "0.0961, 0.1, 9.6 %",
    "0.1000000001, 0.1, just over 10 %",
    "0.0999999999, 0.1, just under 10 %",
    "0.009, 0.008, 0.9 %",
    "0.02, 0.008, 2 %"
  })
  void probability_besideALimit_isNotPrintedAsTheLimit(
      double probability, double limit, String expected) {
    assertThat(TradeStyle.probability(Probability.of(probability), Probability.of(limit)))
        .isEqualTo(expected);
  }

  @Test
  void text_isTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "th-TH-u-nu-thai"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(TradeStyle.main(JetBore.ofHundredths(127.5))).isEqualTo("main 127.5");
        assertThat(TradeStyle.throttle(ThrottleOpening.ofPercent(37))).isEqualTo("37 % throttle");
        assertThat(Pressure.parse("1013.25 hPa")).hasToString("101325 Pa");
        assertThat(ClipPosition.fromTop(2, 5)).hasToString("2 of 5 from top");
        assertThat(JetCalibrationTest.WATER).asString().startsWith("head 500 mm of water (998.2");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
