package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.AirFormula;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.fuel.FuelShare;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Altitude;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetJsonTest {

  private static final String EXAMPLE = "example-sheet.json";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"1.3 mm\"",
        "\"130 hundredths\"",
        "\"130 1/100 mm\"",
        "\" 1.30mm \"",
        "{\"value\": 1.3, \"unit\": \"mm\"}",
        "{\"unit\": \"hundredths\", \"value\": 130}",
        "{\"value\": 130e0, \"unit\": \"1/100 mm\"}"
      })
  void read_quantityWithAUnit_inEveryForm(String form) {
    assertThat(edited("\"1.28 mm\"", form).setup().setting().mainJet())
        .isEqualTo(JetBore.ofMillimetres(1.3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.125", "125e-3", "\"0.125\"", "\"1/8\"", "\"12.5 %\"", "\"⅛\""})
  void read_quantityWithoutAUnit_inEveryForm(String form) {
    assertThat(edited("\"1/8\"", form).setup().engine().need().points().get(1).throttle())
        .isEqualTo(ThrottleOpening.ofEighths(1));
  }

  @Test
  void read_curveAsABareArray_isThatThroughItsPoints() {
    String weights = "[{\"throttle\": 0, \"weight\": 1}, {\"throttle\": 1, \"weight\": 2}]";
    String speeds = "[{\"speed\": \"0 rpm\", \"value\": 1.5}]";

    assertThat(edited("{\"points\": [{\"speed\": \"0 rpm\", \"value\": 1}]}", speeds))
        .extracting(sheet -> sheet.setup().engine().exhaust().deliveryFactor())
        .isEqualTo(RpmCurve.of(RpmCurve.Point.of(0, 1.5)));
    assertThat(edited("\"assumed road\"", weights).riding().profile().points()).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.75", "\"1.75\"", "\"1 3/4 turns\"", "\"1¾\""})
  void read_turnsThatNeedNoUnit_inEveryForm(String form) {
    assertThat(edited("\"1 1/2 turns\"", form).setup().setting().screw().turns())
        .isEqualTo(ScrewTurns.of(1.75));
  }

  @Test
  void read_rememberedEndOfTheNeedle_isWrittenAgain() {
    SetupSheet sheet = edited("2 of 5 from top", "4 of 5 from bottom");

    assertThat(SheetJson.write(sheet)).contains("\"clip\": \"4 of 5 from bottom\"");
  }

  static Stream<Arguments> shorthands() {
    return Stream.of(
        shorthand(
            "\"flow\": \"assumed\"",
            "",
            FlowCoefficients.assumed(),
            s -> s.setup().setting().carburettor().flow()),
        shorthand(
            "\"induction\": \"mild\"",
            "",
            Induction.assumedMild(),
            s -> s.setup().engine().induction()),
        shorthand(
            "\"induction\": \"mild\"",
            "\"induction\": \"tuned\"",
            Induction.assumedTuned(),
            s -> s.setup().engine().induction()),
        need("\"very mild\"", MixtureNeed.assumedVeryMild()),
        need("\"mild\"", MixtureNeed.assumedMild()),
        need("\"tuned\"", MixtureNeed.assumedTuned()),
        shorthand(
            "{\"id\": \"foam-filter\", \"effectiveArea\": \"900 mm²\"}",
            "\"open mouth\"",
            Intake.openMouth(),
            s -> s.setup().setting().intake()),
        shorthand(
            "{\"id\": \"foam-filter\", \"effectiveArea\": \"900 mm²\"}",
            "{\"id\": \"open mouth\", \"openMouth\": true}",
            Intake.openMouth(),
            s -> s.setup().setting().intake()),
        shorthand(
            "\"profile\": \"assumed road\"",
            "",
            RidingProfile.assumedRoad(),
            s -> s.riding().profile()),
        fuel("\"petrol\"", Fuel.PETROL),
        fuel("\"E5\"", Fuel.E5),
        fuel("\"E10\"", Fuel.E10),
        fuel("\"E85\"", Fuel.E85),
        fuel("{\"blend\": \"E10\", \"premix\": \"no oil\"}", Fuel.E10),
        fuel(
            "{\"blend\": \"E10\", \"premix\": \"2 %\"}",
            Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50))),
        fuel(
            "{\"blend\": \"petrol\", \"premix\": \"50:1\", \"oil\": \"methanol\"}",
            Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(50), FuelComponent.METHANOL)),
        fuel(
            "{\"blend\": {\"basis\": \"mass\", \"shares\": [{\"component\": \"methanol\","
                + " \"share\": 0.25}, {\"component\": \"ethanol\", \"share\": 0.75}]}, \"premix\":"
                + " \"no oil\"}",
            Fuel.of(
                FuelBlend.byMass(
                    List.of(
                        new FuelShare(FuelComponent.ETHANOL, 0.75),
                        new FuelShare(FuelComponent.METHANOL, 0.25))))),
        fuel(
            "{\"density\": \"740 kg/m³\", \"dynamicViscosity\": \"0.5 mPa·s\","
                + " \"stoichiometricRatio\": 14.5, \"premix\": \"no oil\"}",
            Fuel.ofProperties(
                Density.ofKilogramsPerCubicMetre(740),
                DynamicViscosity.ofPascalSeconds(0.0005),
                AirFuelRatio.of(14.5))));
  }

  private static Arguments need(String form, MixtureNeed need) {
    String document = Documents.read(EXAMPLE);
    int start = document.indexOf("\"need\": ") + "\"need\": ".length();
    String written =
        document.substring(start, document.indexOf("},\n  \"setting\"")).stripTrailing();
    return shorthand(written, form, need, s -> s.setup().engine().need());
  }

  private static Arguments fuel(String form, Fuel fuel) {
    return shorthand(
        "{\"blend\": \"E5\", \"premix\": \"50:1\"}", form, fuel, s -> s.setup().fuel());
  }

  private static Arguments shorthand(
      String piece, String form, Object expected, Function<SetupSheet, Object> of) {
    return Arguments.of(piece, form.isEmpty() ? piece : form, expected, of);
  }

  @ParameterizedTest
  @MethodSource("shorthands")
  void read_shorthand_standsForTheLibrarysOwnValue(
      String piece, String form, Object expected, Function<SetupSheet, Object> of) {
    assertThat(of.apply(edited(piece, form))).isEqualTo(expected);
  }

  @Test
  void read_airByAltitude_hasThePressureOfTheStandardAtmosphere() {
    assertThat(example().setup().air())
        .isEqualTo(
            Air.at(
                Altitude.ofMetres(350), Temperature.ofCelsius(18), RelativeHumidity.ofPercent(55)));
  }

  @Test
  void read_airWithoutFormula_isByCipm2007() {
    assertThat(example().riding().coldest())
        .isEqualTo(
            Air.of(
                Pressure.ofHectopascals(1025),
                Temperature.ofCelsius(-5),
                RelativeHumidity.ofPercent(70)));
    assertThat(
            edited("\"formula\": \"cipm-2007\"", "\"formula\": \"ideal-gas\"")
                .riding()
                .hottest()
                .formula())
        .isEqualTo(AirFormula.IDEAL_GAS);
  }

  @Test
  void read_partsLeftOut_areUnknown() {
    PartsAtHand parts = example().parts();

    assertThat(parts.mainJets()).hasSize(3).contains(JetBore.ofMillimetres(1.25));
    assertThat(parts.needles()).isEmpty();
    assertThat(SheetJson.read(Documents.read("bare-sheet.json")).parts())
        .isEqualTo(PartsAtHand.unknown());
  }

  @Test
  void read_provenanceLeftOut_isUnknown() {
    assertThat(example().provenance().mainJetFlow())
        .contains(JetFlow.ofCubicCentimetresPerMinute(190));
    assertThat(example().provenance().carburettor()).isEmpty();
    assertThat(SheetJson.read(Documents.read("bare-sheet.json")).provenance())
        .isEqualTo(Provenance.unknown());
  }

  @Test
  void read_typicalValues_areInTheOrderOfTheirEnum_andNoneWhereLeftOut() {
    SetupSheet guessed =
        edited("\"title\": ", "\"typical\": [\"idle-lift\", \"peak-speed\"],\n  \"title\": ");

    assertThat(guessed.typical()).containsExactly(MachineValue.PEAK_SPEED, MachineValue.IDLE_LIFT);
    assertThat(SheetJson.read(SheetJson.write(guessed))).isEqualTo(guessed);
    assertThat(example().typical()).isEmpty();
    assertThat(SheetJson.write(example())).doesNotContain("\"typical\"");
  }

  @Test
  void read_typicalValueThatIsNone_isRefused() {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> edited("\"title\": ", "\"typical\": [\"peak-sped\"], \"title\": "))
        .withMessageStartingWith("$.typical[0]: \"peak-sped\"")
        .withMessageContaining("peak-speed");
  }

  @Test
  void read_fromReaderAndStream_asFromText() throws IOException {
    String document = Documents.read(EXAMPLE);
    String marked = "\ufeff" + document;

    assertThat(SheetJson.read(new StringReader(document))).isEqualTo(example());
    assertThat(SheetJson.read(new StringReader(marked))).isEqualTo(example());
    assertThat(SheetJson.read(new ByteArrayInputStream(marked.getBytes(UTF_8))))
        .isEqualTo(example());
  }

  @Test
  void read_fromAStreamThatIsNotUtf8_isRefused() {
    byte[] bytes = Documents.read(EXAMPLE).getBytes(UTF_16);

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read(new ByteArrayInputStream(bytes)))
        .withMessage("$: bytes that are not UTF-8: allowed UTF-8");
  }

  /** The form is published: a change of it must change this file, on purpose. */
  @Test
  void write_exampleSheet_inFull() {
    Documents.assertIsGolden("example-sheet.golden.json", SheetJson.write(example()));
  }

  @ParameterizedTest
  @CsvSource({"tr-TR, Asia/Kathmandu", "ar-EG-u-nu-arab, Pacific/Apia", "de-DE, America/New_York"})
  void write_underAnotherLocaleAndTimeZone_isTheSame(String locale, String zone) {
    String expected = SheetJson.write(example());
    Locale formerLocale = Locale.getDefault();
    TimeZone formerZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(SheetJson.write(example())).isEqualTo(expected);
    } finally {
      Locale.setDefault(formerLocale);
      TimeZone.setDefault(formerZone);
    }
  }

  private static SetupSheet example() {
    return SheetJson.read(Documents.read(EXAMPLE));
  }

  private static SetupSheet edited(String piece, String replacement) {
    return SheetJson.read(Documents.edited(EXAMPLE, piece, replacement));
  }
}
