package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What riders write, and what two of them could mean by it. */
class RiderInputTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "125",
        "#125",
        "# 125",
        "main 125",
        "Main jet 125",
        "MAIN #125",
        "no. 125",
        "1.25 mm",
        "1.25mm",
        " 125 ",
        "125 hundredths",
        "size 125"
      })
  void mainJet_isRead(String text) {
    assertThat(RiderInput.mainJet(text)).isEqualTo(JetBore.ofHundredths(125));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"45", "pilot 45", "pilot jet #45", "idle jet 45", "slow jet 45", ".45 mm"})
  void pilotJet_isRead(String text) {
    assertThat(RiderInput.pilotJet(text)).isEqualTo(JetBore.ofHundredths(45));
  }

  @Test
  void jet_ofAnotherCircuit_isNotRead() {
    assertThatThrownBy(() -> RiderInput.mainJet("pilot 45"))
        .isInstanceOf(QuantityException.class)
        .hasMessage(
            "main jet \"pilot 45\" cannot be read: write it such as #118, main 118 or 1.18 mm");
  }

  @Test
  void jet_bareMillimetres_areAskedFor() {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.mainJet("1.25"));
    assertThat(asked)
        .hasMessage(
            "main jet \"1.25\" is ambiguous: did you mean 1.25 mm? Write it so, with its unit.");
    assertThat(asked.readings()).containsExactly("1.25 mm");
  }

  @ParameterizedTest
  @CsvSource({"40, 4", "cutaway 40, 4", "4 mm, 4", "3.5mm, 3.5", "slide 35, 3.5", "0, 0"})
  void cutaway_isRead(String text, double millimetres) {
    assertThat(RiderInput.cutaway(text)).isEqualTo(Cutaway.ofMillimetres(millimetres));
  }

  @Test
  void cutaway_ofOneDigit_isAskedFor() {
    assertThatThrownBy(() -> RiderInput.cutaway("4"))
        .hasMessage("cutaway \"4\" is ambiguous: did you mean 4 mm or 4 tenths?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2 from top", "2nd groove from top", "needle 2nd groove from the top",
            "clip 2 of 5 from top",
        "second from top", "clip in the 2nd groove from top", "4 from bottom",
            "fourth from the bottom"
      })
  void clip_isRead(String text) {
    assertThat(RiderInput.clip(text, 5)).isEqualTo(ClipPosition.fromTop(2, 5));
  }

  @ParameterizedTest
  @CsvSource({"middle, 3", "top, 1", "bottom, 5", "top groove, 1", "3, 3"})
  void clip_byName_isRead(String text, int groove) {
    assertThat(RiderInput.clip(text, 5)).isEqualTo(ClipPosition.fromTop(groove, 5));
  }

  @Test
  void clip_withoutItsEnd_isAskedFor() {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.clip("2nd groove", 5));
    assertThat(asked.readings()).containsExactly("2 of 5 from top", "2 of 5 from bottom");
  }

  @Test
  void clip_middleOfFour_isAskedFor() {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.clip("middle", 4));
    assertThat(asked.readings()).containsExactly("2 from top", "3 from top");
  }

  @Test
  void clip_countedOnOtherGrooves_isRefused() {
    assertThatThrownBy(() -> RiderInput.clip("2 of 4 from top", 5))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("a groove of the needle's 5");
  }

  @Test
  void clip_withoutTheNumberOfGrooves_asksForIt() {
    assertThatThrownBy(() -> RiderInput.clip("3 from top"))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("without the number of grooves")
        .hasMessageContaining("2 of 5 from top");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1-1/2 out",
        "1 1/2 out",
        "1½ turns out",
        "1.5",
        "1.5 turns",
        "1-½",
        "air screw 1½ turns out",
        "mixture screw 1 1/2 turns",
        "1½"
      })
  void turns_areRead(String text) {
    assertThat(RiderInput.turns(text)).isEqualTo(ScrewTurns.of(1.5));
  }

  @Test
  void turns_in_areRefused() {
    assertThatThrownBy(() -> RiderInput.turns("1 turn in"))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("turns out from gently seated");
  }

  @ParameterizedTest
  @CsvSource({
    "half, 0.5",
    "half throttle, 0.5",
    "WOT, 1",
    "wide open, 1",
    "full throttle, 1",
    "closed, 0",
    "closed throttle, 0",
    "idle, 0",
    "3/8 throttle, 0.375",
    "3/8, 0.375",
    "quarter, 0.25",
    "three quarters, 0.75",
    "40 %, 0.4",
    "40% throttle, 0.4",
    "0.4, 0.4",
    "¼, 0.25",
    "0, 0",
    "1/8 open, 0.125"
  })
  void throttle_isRead(String text, double share) {
    assertThat(RiderInput.throttle(text)).isEqualTo(ThrottleOpening.ofShare(share));
  }

  @Test
  void throttle_bareNumber_isAskedFor() {
    assertThatThrownBy(() -> RiderInput.throttle("50"))
        .hasMessage(
            "throttle opening \"50\" is ambiguous: did you mean 50 %? Write it so, with its unit.");
    assertThatThrownBy(() -> RiderInput.throttle("1"))
        .hasMessage("throttle opening \"1\" is ambiguous: did you mean full or 1 %?");
  }

  @ParameterizedTest
  @CsvSource({
    "20 C, 20",
    "20C, 20",
    "20 °C, 20",
    "68F, 20",
    "68 °F, 20",
    "-5 c, -5",
    "−5 °C, -5",
    "20 degrees Celsius, 20",
    "20° C, 20"
  })
  void temperature_isRead(String text, double celsius) {
    assertThat(RiderInput.temperature(text).celsius()).isCloseTo(celsius, within(1e-9));
  }

  @Test
  void temperature_bareNumber_isAskedFor() {
    assertThatThrownBy(() -> RiderInput.temperature("20"))
        .hasMessage("temperature \"20\" is ambiguous: did you mean 20 °C or 20 °F?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40",
        "40:1",
        "1:40",
        "premix 40",
        "premix 40:1",
        "2.5 %",
        "2.5%",
        "40 to 1",
        "1/40",
        "1 : 40"
      })
  void premix_isRead(String text) {
    assertThat(RiderInput.premix(text)).isEqualTo(PremixRatio.ofPetrolToOil(40));
  }

  @Test
  void premix_smallNumber_isAskedFor() {
    assertThatThrownBy(() -> RiderInput.premix("2"))
        .hasMessage("premix ratio \"2\" is ambiguous: did you mean 2 % or 2:1?");
    assertThat(RiderInput.premix("no oil")).isEqualTo(PremixRatio.NO_OIL);
  }

  @Test
  void lambda_thatIsAnAirFuelRatio_isAskedFor() {
    assertThatThrownBy(() -> RiderInput.lambda("13.2"))
        .isInstanceOf(QuantityException.class)
        .hasMessage("lambda \"13.2\": allowed 0.4 to 2; is it an air-fuel ratio of 13.2:1?");
    assertThatThrownBy(() -> RiderInput.airFuelRatio("0.88"))
        .hasMessage("air-fuel ratio \"0.88\": allowed more than 2; is it a λ of 0.88?");
    assertThat(RiderInput.lambda("λ .88")).isEqualTo(Lambda.of(0.88));
    assertThat(RiderInput.airFuelRatio("AFR 12.9")).isEqualTo(AirFuelRatio.of(12.9));
  }

  /** How riders note it (common practice, no source). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "MJ 125",
        "mj125",
        "main: 125",
        "main=125",
        "125 main",
        "Main jet: 125",
        "no 125",
        "no125"
      })
  void mainJet_asWrittenInNotes_isRead(String text) {
    assertThat(RiderInput.mainJet(text)).isEqualTo(JetBore.ofHundredths(125));
  }

  @ParameterizedTest
  @ValueSource(strings = {"PJ 45", "pj#45", "pilot jet: 45", "45 pilot", "idle: 45"})
  void pilotJet_asWrittenInNotes_isRead(String text) {
    assertThat(RiderInput.pilotJet(text)).isEqualTo(JetBore.ofHundredths(45));
  }

  @ParameterizedTest
  @CsvSource({
    "2nd notch from the top, 2",
    "2nd clip from top, 2",
    "2nd slot from top, 2",
    "2nd position from top, 2",
    "clip position 3, 3",
    "notch 3, 3",
    "#2 from top, 2",
    "2/5 from top, 2",
    "2nd from the top groove, 2",
    "centre, 3",
    "leanest, 1",
    "richest, 5"
  })
  void clip_asWrittenInNotes_isRead(String text, int groove) {
    assertThat(RiderInput.clip(text, 5)).isEqualTo(ClipPosition.fromTop(groove, 5));
  }

  /** The lowest groove hangs the needle highest: nobody knows which of the two is meant. */
  @ParameterizedTest
  @ValueSource(strings = {"lowest", "highest", "highest groove"})
  void clip_lowestOrHighest_isAskedFor(String text) {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.clip(text, 5));
    assertThat(asked.readings()).containsExactly("top", "bottom");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "one and a half",
        "1 and a half",
        "1 turn and a half",
        "1 and 1/2",
        "1 1/2 turns from seated",
        "1.5 rotations",
        "1.5 revs out"
      })
  void turns_inWords_areRead(String text) {
    assertThat(RiderInput.turns(text)).isEqualTo(ScrewTurns.of(1.5));
  }

  @ParameterizedTest
  @CsvSource({"half a turn, 0.5", "half, 0.5", "quarter turn, 0.25", "two turns, 2"})
  void turns_ofPartsOrWords_areRead(String text, double turns) {
    assertThat(RiderInput.turns(text)).isEqualTo(ScrewTurns.of(turns));
  }

  /** Each word means what its fraction means. */
  @ParameterizedTest
  @CsvSource({
    "an eighth, 1/8",
    "eighth, 1/8",
    "one eighth, 1/8",
    "1/8th, 1/8",
    "three eighths, 3/8",
    "three-eighths, 3/8",
    "3 eighths, 3/8",
    "five eighths throttle, 5/8",
    "one quarter, 1/4",
    "a quarter, 1/4",
    "one half, 1/2",
    "half way, 1/2",
    "halfway, 1/2",
    "a third, 1/3",
    "two thirds, 2/3",
    "three quarter, 3/4",
    "three sixteenths, 3/16",
    "flat out, full",
    "pinned, full",
    "full bore, full",
    "off, closed"
  })
  void throttle_inWords_isWhatItsFractionIs(String text, String fraction) {
    assertThat(RiderInput.throttle(text)).isEqualTo(RiderInput.throttle(fraction));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/4 to 1/2", "1/4-1/2", "a quarter to a half"})
  void throttle_ofARange_isAskedFor(String text) {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.throttle(text));
    assertThat(asked.readings()).containsExactly("1/4 throttle", "1/2 throttle");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"20 deg C", "20oC", "20ºC", "20˚C", "20 centigrade", "68 deg F", "68 deg. F"})
  void temperature_asWrittenInNotes_isRead(String text) {
    assertThat(RiderInput.temperature(text).celsius()).isCloseTo(20, within(1e-9));
  }

  @Test
  void temperature_minus_isRead() {
    assertThat(RiderInput.temperature("minus 5 C")).isEqualTo(Temperature.ofCelsius(-5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40/1",
        "40-1",
        "1 in 40",
        "2.5 percent",
        "40:1 premix",
        "25 ml/l",
        "25ml per litre"
      })
  void premix_asWrittenOnCans_isRead(String text) {
    assertThat(RiderInput.premix(text)).isEqualTo(PremixRatio.ofPetrolToOil(40));
  }

  @ParameterizedTest
  @CsvSource({
    "sea level, 0",
    "900 masl, 900",
    "900 m asl, 900",
    "900 metres above sea level, 900",
    "1.5 km, 1500",
    "1'500 m, 1500"
  })
  void altitude_asWrittenOnMaps_isRead(String text, double metres) {
    assertThat(RiderInput.altitude(text)).isEqualTo(Altitude.ofMetres(metres));
  }

  /** One and a half metres for some, fifteen hundred for others. */
  @Test
  void thousands_areAskedFor() {
    assertThatThrownBy(() -> RiderInput.altitude("1.500 m"))
        .hasMessage("altitude \"1.500 m\" is ambiguous: did you mean 1500 m or 1.5 m?");
    assertThatThrownBy(() -> RiderInput.altitude("3,000 ft"))
        .hasMessage("altitude \"3,000 ft\" is ambiguous: did you mean 3000 ft or 3 ft?");
    assertThatThrownBy(() -> RiderInput.engineSpeed("7.500"))
        .hasMessage("engine speed \"7.500\" is ambiguous: did you mean 7500 rpm or 7.5 rpm?");
    assertThatThrownBy(() -> RiderInput.engineSpeed("7.5"))
        .hasMessage(
            "engine speed \"7.5\" is ambiguous: did you mean 7.5k rpm? Write it so, with its unit.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"7.5k", "7.5k rpm", "7.5 krpm", "7500 revs", "7500 U/min", "7'500 rpm"})
  void engineSpeed_asOnATachometer_isRead(String text) {
    assertThat(RiderInput.engineSpeed(text)).isEqualTo(EngineSpeed.ofRpm(7500));
  }

  /** What an error offers, this class reads. */
  @Test
  void readings_areRead() {
    assertThat(RiderInput.engineSpeed("7.5k rpm")).isEqualTo(EngineSpeed.ofRpm(7500));
    assertThat(RiderInput.altitude("1500 m")).isEqualTo(Altitude.ofMetres(1500));
    assertThat(RiderInput.throttle("1/4 throttle")).isEqualTo(ThrottleOpening.ofShare(0.25));
  }

  @Test
  void otherQuantities_areRead() {
    assertThat(RiderInput.diameter("Ø24")).isEqualTo(Diameter.ofMillimetres(24));
    assertThat(RiderInput.diameter("28 mm carb")).isEqualTo(Diameter.ofMillimetres(28));
    assertThat(RiderInput.displacement("0.125 l")).isEqualTo(Displacement.ofCubicCentimetres(125));
    assertThat(RiderInput.floatLevel("floats at 19.5 mm"))
        .isEqualTo(FloatLevel.ofMillimetres(19.5));
    assertThat(RiderInput.pressure("1.013 bar")).isEqualTo(Pressure.ofHectopascals(1013));
    assertThat(RiderInput.pressure("101300 Pa")).isEqualTo(Pressure.ofHectopascals(1013));
    assertThat(RiderInput.pressure("29.92\"")).isEqualTo(Pressure.ofInchesOfMercury(29.92));
    assertThat(RiderInput.probability("1 in 10")).isEqualTo(Probability.of(0.1));

    assertThat(RiderInput.altitude("3000ft")).isEqualTo(Altitude.ofFeet(3000));
    assertThat(RiderInput.altitude("900 m")).isEqualTo(Altitude.ofMetres(900));
    assertThat(RiderInput.diameter("24")).isEqualTo(Diameter.ofMillimetres(24));
    assertThat(RiderInput.diameter("2.665mm")).isEqualTo(Diameter.ofMillimetres(2.665));
    assertThat(RiderInput.displacement("123ccm")).isEqualTo(Displacement.ofCubicCentimetres(123));
    assertThat(RiderInput.engineSpeed("7500")).isEqualTo(EngineSpeed.ofRpm(7500));
    assertThat(RiderInput.floatLevel("float level 19.5 mm"))
        .isEqualTo(FloatLevel.ofMillimetres(19.5));
    assertThat(RiderInput.humidity("45%")).isEqualTo(RelativeHumidity.ofPercent(45));
    assertThat(RiderInput.pressure("1013 mbar")).isEqualTo(Pressure.ofHectopascals(1013));
    assertThat(RiderInput.jetFlow("main 118cc/min"))
        .isEqualTo(JetFlow.ofCubicCentimetresPerMinute(118));
    assertThat(RiderInput.probability("10 %")).isEqualTo(Probability.ofPercent(10));
  }

  @Test
  void diameter_ofAStampedNumber_isAskedFor() {
    QuantityException asked =
        catchThrowableOfType(QuantityException.class, () -> RiderInput.diameter("266"));
    assertThat(asked.readings()).containsExactly("2.66 mm", "266 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "abc", "1,25 mm", "mm", "#", "%"})
  void nonsense_isRefusedWithASample(String text) {
    List.<Runnable>of(
            () -> RiderInput.mainJet(text),
            () -> RiderInput.pilotJet(text),
            () -> RiderInput.cutaway(text),
            () -> RiderInput.clip(text, 5),
            () -> RiderInput.turns(text),
            () -> RiderInput.throttle(text),
            () -> RiderInput.temperature(text),
            () -> RiderInput.premix(text),
            () -> RiderInput.altitude(text),
            () -> RiderInput.diameter(text),
            () -> RiderInput.displacement(text),
            () -> RiderInput.engineSpeed(text),
            () -> RiderInput.floatLevel(text),
            () -> RiderInput.lambda(text),
            () -> RiderInput.airFuelRatio(text),
            () -> RiderInput.humidity(text),
            () -> RiderInput.pressure(text),
            () -> RiderInput.jetFlow(text),
            () -> RiderInput.probability(text))
        .forEach(
            reader ->
                assertThatThrownBy(reader::run)
                    .isInstanceOf(QuantityException.class)
                    .hasMessageContaining("write it such as "));
  }
}
