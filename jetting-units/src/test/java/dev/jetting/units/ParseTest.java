package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ParseTest {

  static Stream<Arguments> good() {
    return Stream.of(
        good("1.26 mm", JetBore::parse, JetBore.ofHundredths(126)),
        good("126 hundredths", JetBore::parse, JetBore.ofHundredths(126)),
        good("127.5 1/100 mm", JetBore::parse, JetBore.ofMillimetres(1.275)),
        good("118 cm³/min", JetFlow::parse, JetFlow.ofCubicCentimetresPerMinute(118)),
        good("118cm3/min", JetFlow::parse, JetFlow.ofCubicCentimetresPerMinute(118)),
        good("118 cc/min", JetFlow::parse, JetFlow.ofCubicCentimetresPerMinute(118)),
        good("118 ml/min", JetFlow::parse, JetFlow.ofCubicCentimetresPerMinute(118)),
        good("118 mL/min", JetFlow::parse, JetFlow.ofCubicCentimetresPerMinute(118)),
        good("2.665 mm", Diameter::parse, Diameter.ofMillimetres(2.665)),
        good("54.5 mm", Length::parse, Length.ofMillimetres(54.5)),
        good("1.25 mm2", Area::parse, Area.ofSquareMillimetres(1.25)),
        good("4.0 mm", Cutaway::parse, Cutaway.ofTenths(40)),
        good("40 tenths", Cutaway::parse, Cutaway.ofMillimetres(4)),
        good("35 1/10 mm", Cutaway::parse, Cutaway.ofMillimetres(3.5)),
        good("2 of 5 from top", ClipPosition::parse, ClipPosition.fromTop(2, 5)),
        good(" 4 of 5 from bottom ", ClipPosition::parse, ClipPosition.fromBottom(4, 5)),
        good("1.75", ScrewTurns::parse, ScrewTurns.ofQuarters(7)),
        good("1.75 turns", ScrewTurns::parse, ScrewTurns.ofQuarters(7)),
        good("1 turn", ScrewTurns::parse, ScrewTurns.of(1)),
        good("3/4", ScrewTurns::parse, ScrewTurns.ofQuarters(3)),
        good("1 3/4", ScrewTurns::parse, ScrewTurns.ofQuarters(7)),
        good("1 3/8 turns", ScrewTurns::parse, ScrewTurns.ofEighths(11)),
        good("1¾", ScrewTurns::parse, ScrewTurns.ofQuarters(7)),
        good("1½ turns", ScrewTurns::parse, ScrewTurns.of(1.5)),
        good("1 ½ turns", ScrewTurns::parse, ScrewTurns.of(1.5)),
        good("⅞ turn", ScrewTurns::parse, ScrewTurns.ofEighths(7)),
        good("⅓", ScrewTurns::parse, ScrewTurns.of(1.0 / 3)),
        good("2⅔", ScrewTurns::parse, ScrewTurns.of(8.0 / 3)),
        good("0.375", ThrottleOpening::parse, ThrottleOpening.ofEighths(3)),
        good("3/8", ThrottleOpening::parse, ThrottleOpening.ofEighths(3)),
        good("37.5 %", ThrottleOpening::parse, ThrottleOpening.ofEighths(3)),
        good("100%", ThrottleOpening::parse, ThrottleOpening.FULL),
        good("0", ThrottleOpening::parse, ThrottleOpening.CLOSED),
        good(".88", Lambda::parse, Lambda.of(0.88)),
        good("+0.88", Lambda::parse, Lambda.of(0.88)),
        good("8.8E-1", Lambda::parse, Lambda.of(0.88)),
        good("14.7:1", AirFuelRatio::parse, AirFuelRatio.of(14.7)),
        good("14.7", AirFuelRatio::parse, AirFuelRatio.of(14.7)),
        good("50:1", PremixRatio::parse, PremixRatio.ofPetrolToOil(50)),
        good("1:50", PremixRatio::parse, PremixRatio.ofPetrolToOil(50)),
        good("2 %", PremixRatio::parse, PremixRatio.ofPetrolToOil(50)),
        good("2.5% oil", PremixRatio::parse, PremixRatio.ofPetrolToOil(40)),
        good("no oil", PremixRatio::parse, PremixRatio.NO_OIL),
        good("0 %", PremixRatio::parse, PremixRatio.NO_OIL),
        good("19.5 mm", FloatLevel::parse, FloatLevel.ofMillimetres(19.5)),
        good("101325 Pa", Pressure::parse, Pressure.ofPascals(101_325)),
        good("1013.25 hPa", Pressure::parse, Pressure.ofPascals(101_325)),
        good("1013.25 mbar", Pressure::parse, Pressure.ofPascals(101_325)),
        good("29.92 inHg", Pressure::parse, Pressure.ofInchesOfMercury(29.92)),
        good("760 mmHg", Pressure::parse, Pressure.ofMillimetresOfMercury(760)),
        good("1013.25\u00a0hPa", Pressure::parse, Pressure.ofHectopascals(1013.25)),
        good("1013.25\u202fhPa", Pressure::parse, Pressure.ofHectopascals(1013.25)),
        good("20 °C", Temperature::parse, Temperature.ofKelvin(293.15)),
        good("-5 °C", Temperature::parse, Temperature.ofCelsius(-5)),
        good("\u22125 °C", Temperature::parse, Temperature.ofCelsius(-5)),
        good("68 °F", Temperature::parse, Temperature.ofKelvin(293.15)),
        good("18 °F", TemperatureDifference::parse, TemperatureDifference.ofKelvin(10)),
        good("-10 °C", TemperatureDifference::parse, TemperatureDifference.ofKelvin(-10)),
        good("45 %", RelativeHumidity::parse, RelativeHumidity.ofShare(0.45)),
        good("850 m", Altitude::parse, Altitude.ofMetres(850)),
        good("1000 ft", Altitude::parse, Altitude.ofMetres(304.8)),
        good("745 kg/m3", Density::parse, Density.ofKilogramsPerCubicMetre(745)),
        good("745 g/L", Density::parse, Density.ofKilogramsPerCubicMetre(745)),
        good("0.5 mPa·s", DynamicViscosity::parse, DynamicViscosity.ofPascalSeconds(0.0005)),
        good("0.5 cP", DynamicViscosity::parse, DynamicViscosity.ofMillipascalSeconds(0.5)),
        good(
            "0.55 cSt",
            KinematicViscosity::parse,
            KinematicViscosity.ofSquareMillimetresPerSecond(0.55)),
        good("123.6 cc", Displacement::parse, Displacement.ofCubicCentimetres(123.6)),
        good("7500 1/min", EngineSpeed::parse, EngineSpeed.ofRpm(7500)),
        good("5.94 kg/h", MassFlow::parse, MassFlow.ofGramsPerSecond(1.65)),
        good("0.00165 kg/s", MassFlow::parse, MassFlow.ofGramsPerSecond(1.65)),
        good("136 cm³/min", VolumeFlow::parse, VolumeFlow.ofLitresPerHour(8.16)),
        good("0.5 m3/s", VolumeFlow::parse, VolumeFlow.ofLitresPerHour(1_800_000)),
        good("5.2 L/100km", FuelConsumption::parse, FuelConsumption.ofLitresPer100Kilometres(5.2)),
        good("54 mpg imp", FuelConsumption::parse, FuelConsumption.ofMilesPerImperialGallon(54)),
        good("45 mpg (US)", FuelConsumption::parse, FuelConsumption.ofMilesPerUsGallon(45)),
        good("17 PS", Power::parse, Power.ofMetricHorsepower(17)),
        good("16.8 hp", Power::parse, Power.ofMechanicalHorsepower(16.8)),
        good("5 %", Probability::parse, Probability.of(0.05)));
  }

  static Stream<Arguments> bad() {
    return Stream.of(
        bad("", Pressure::parse),
        bad("hPa", Pressure::parse),
        bad("1013.25", Pressure::parse),
        bad("1013.25 HPA", Pressure::parse),
        bad("1013.25 hPa absolute", Pressure::parse),
        bad("1 013.25 hPa", Pressure::parse),
        bad("1013. hPa", Pressure::parse),
        bad("1013.25.0 hPa", Pressure::parse),
        bad("0x1p3 hPa", Pressure::parse),
        bad("NaN Pa", Pressure::parse),
        bad("Infinity Pa", Pressure::parse),
        bad("1d Pa", Pressure::parse),
        bad("--1 Pa", Pressure::parse),
        bad("١٠١٣ hPa", Pressure::parse),
        bad("126", JetBore::parse),
        bad("118 cm³/min", JetBore::parse),
        bad("118", JetFlow::parse),
        bad("1.26 mm", JetFlow::parse),
        bad("40", Cutaway::parse),
        bad("2", ClipPosition::parse),
        bad("2 of 5", ClipPosition::parse),
        bad("2 from top", ClipPosition::parse),
        bad("2 of 5 from the top", ClipPosition::parse),
        bad("1 1/0", ScrewTurns::parse),
        bad("1.5 1/2", ScrewTurns::parse),
        bad("-1/2", ScrewTurns::parse),
        bad("1/2/3", ScrewTurns::parse),
        bad("½½", ScrewTurns::parse),
        bad("3/8", Lambda::parse),
        bad("14.7:2", AirFuelRatio::parse),
        bad("50", PremixRatio::parse),
        bad("1:", PremixRatio::parse),
        bad("20", Temperature::parse),
        bad("20 C", Temperature::parse),
        bad("54 mpg", FuelConsumption::parse),
        bad("850", Altitude::parse));
  }

  static Stream<Arguments> beyond() {
    return Stream.of(
        bad("1e999 Pa", Pressure::parse),
        bad("-1 hPa", Pressure::parse),
        bad("-0.1 mm", Length::parse),
        bad("0 mm", JetBore::parse),
        bad("9/8", ThrottleOpening::parse),
        bad("101 %", RelativeHumidity::parse),
        bad("-273.15 °C", Temperature::parse),
        bad("0 mpg (US)", FuelConsumption::parse),
        bad("0:1", PremixRatio::parse),
        bad("0 of 5 from top", ClipPosition::parse),
        bad("6 of 5 from top", ClipPosition::parse),
        bad("1 of 51 from bottom", ClipPosition::parse));
  }

  @Test
  void parse_moreThanADoubleHolds_quotesWhatWasWritten() {
    assertThatThrownBy(() -> JetBore.parse("1e400 mm"))
        .hasMessageStartingWith("jet bore \"1e400 mm\": allowed ")
        .hasMessageEndingWith(" mm");
  }

  @ParameterizedTest
  @MethodSource("good")
  void parse_readsEveryDocumentedForm(String text, Function<String, ?> parse, Object expected) {
    assertThat(parse.apply(text)).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("bad")
  void parse_refusesOtherForms_quotingTextAndForms(String text, Function<String, ?> parse) {
    assertThatThrownBy(() -> parse.apply(text))
        .isInstanceOfSatisfying(
            QuantityException.class,
            e -> {
              assertThat(e).hasMessageContaining("\"" + text + "\" cannot be read: allowed");
              assertThat(e.value()).isEqualTo(text);
              assertThat(e.unit()).isEmpty();
            });
  }

  @ParameterizedTest
  @MethodSource("beyond")
  void parse_refusesValuesOutOfRange(String text, Function<String, ?> parse) {
    assertThatThrownBy(() -> parse.apply(text))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining(": allowed ")
        .hasMessageNotContaining("cannot be read");
  }

  @Test
  void parse_refusesDecimalComma_withHint() {
    assertThatThrownBy(() -> Pressure.parse("1013,25 hPa"))
        .hasMessage(
            "pressure \"1013,25 hPa\" cannot be read (write a decimal point, not a comma): "
                + "allowed a decimal number with Pa, hPa, mbar, inHg, mmHg");
    assertThatThrownBy(() -> ScrewTurns.parse("1,5"))
        .hasMessage(
            "screw turns \"1,5\" cannot be read (write a decimal point, not a comma): "
                + "allowed a decimal or a fraction (1.75, 3/4, 1 3/4, 1¾), alone or with turns,"
                + " turn");
    assertThatThrownBy(() -> Pressure.parse("1,013.25 hPa")).hasMessageContaining("not a comma");
  }

  @Test
  void parse_showsLongTextShortenedAndControlCharactersEscaped() {
    assertThatThrownBy(() -> Lambda.parse("x".repeat(1000)))
        .hasMessageStartingWith("lambda \"" + "x".repeat(60) + "…\" cannot be read");
    assertThatThrownBy(() -> Lambda.parse("1\n2%s"))
        .hasMessageStartingWith("lambda \"1\\u000a2%s\" cannot be read");
  }

  private static <Q> Arguments good(String text, Function<String, Q> parse, Q expected) {
    return Arguments.of(text, parse, expected);
  }

  private static Arguments bad(String text, Function<String, ?> parse) {
    return Arguments.of(text, parse);
  }
}
