package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Ceiling;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.RulebookChange;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.WaivedDanger;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Message;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReportJsonTest {

  private static final String GOLDEN = "report.golden.json";

  /** The form is published: a change of it must change this file, on purpose. */
  @Test
  void write_handmadeReport() {
    Documents.assertIsGolden(GOLDEN, ReportJson.write(Reports.handmade()));
  }

  @Test
  void read_handmadeReport_isEqual() throws IOException {
    String document = Documents.read(GOLDEN);
    byte[] bytes = document.getBytes(StandardCharsets.UTF_8);

    assertThat(ReportJson.read(document)).isEqualTo(Reports.handmade());
    assertThat(ReportJson.read(new StringReader(document))).isEqualTo(Reports.handmade());
    assertThat(ReportJson.read(new ByteArrayInputStream(bytes))).isEqualTo(Reports.handmade());
  }

  @Test
  void write_numberThatJavaReleasesPrintDifferently_isTheShortest() {
    assertThat(ReportJson.write(Reports.handmade()))
        .contains("\"value\": 8.41E21,")
        .contains("\"value\": 2.0E23,");
  }

  @Test
  void write_quantities_asNumbersWithTheirUnit() throws IOException {
    JsonNode profile = tree().get("profile");

    assertThat(profile.at("/mixture/depression/values/1").doubleValue()).isEqualTo(8334.9);
    assertThat(profile.at("/mixture/depression/unit").textValue()).isEqualTo("Pa");
    assertThat(profile.at("/grid/throttle/1").doubleValue()).isEqualTo(1);
    assertThat(profile.at("/mixture/lambda/1").doubleValue()).isEqualTo(0.875);
    assertThat(tree().at("/meanRisk").doubleValue()).isEqualTo(0.125);
    assertThat(tree().at("/sheet/setting/screw/turns").textValue()).endsWith(" turns");
    assertThat(tree().at("/sheet/setting/clip").textValue()).isEqualTo("2 of 5 from top");
    assertThat(tree().at("/sheet/fuel/premix").textValue()).isEqualTo("50:1");
  }

  @Test
  void write_sheetInIt_isASetupSheet() throws IOException {
    assertThat(SheetJson.read(tree().get("sheet").toString()))
        .isEqualTo(Reports.handmade().sheet());
  }

  static Stream<Arguments> records() {
    return Stream.of(
        Arguments.of("", Report.class),
        Arguments.of("/profile", ProfileForm.class),
        Arguments.of("/profile/effects/0", PartEffect.class),
        Arguments.of("/coldestDay", DayForm.class),
        Arguments.of("/overrun", Overrun.class),
        Arguments.of("/results/0", ReportForm.ResultForm.class),
        Arguments.of("/results/1/outcome", OutcomeForm.class),
        Arguments.of("/findings/1", ReportForm.RankForm.class),
        Arguments.of("/findings/1/waiver/accepted", Ceiling.class),
        Arguments.of("/findings/1/waiver", Waiver.class),
        Arguments.of("/verdict", VerdictForm.class),
        Arguments.of("/verdict/waived/0", WaivedDanger.class),
        Arguments.of("/rulebook", RulebookEdition.class),
        Arguments.of("/rulebook/changes/0", RulebookChange.class),
        Arguments.of("/unusedWaivers/0", UnusedWaiverForm.class),
        Arguments.of("/results/0/outcome/findings/0", FindingForm.class),
        Arguments.of("/results/0/outcome/findings/0/band", ThrottleBand.class),
        Arguments.of("/plan/left/0", PlanForm.LeftForm.class),
        Arguments.of("/plan/steps/0", RemedyForm.ChangeForm.class),
        Arguments.of("/results/0/outcome/findings/0/remedy/change", RemedyForm.ChangeForm.class),
        Arguments.of("/results/0/outcome/findings/0/remedy/change/effect", Remedy.Effect.class),
        Arguments.of(
            "/results/0/outcome/findings/0/remedy/change/effect/after", Remedy.State.class),
        Arguments.of("/results/0/outcome/findings/1/remedy/aim", Remedy.Aim.class),
        Arguments.of("/assumptions/spread of λ", Coefficient.class),
        Arguments.of("/sheet/engine", Engine.class),
        Arguments.of("/sheet/engine/deliveryRatio", RpmCurve.class),
        Arguments.of("/sheet/setting", Setting.class),
        Arguments.of("/sheet/setting/needle", Needle.class),
        Arguments.of("/sheet/setting/carburettor", Carburettor.class),
        Arguments.of("/sheet/riding", Riding.class));
  }

  @ParameterizedTest
  @MethodSource("records")
  void write_record_hasItsComponentsInOrderAndNothingElse(String place, Class<?> type)
      throws IOException {
    List<String> fields = new ArrayList<>();
    tree().at(place).fieldNames().forEachRemaining(fields::add);

    assertThat(fields)
        .isEqualTo(
            Stream.of(type.getRecordComponents())
                .filter(component -> !isAbsent(component, fields))
                .map(RecordComponent::getName)
                .toList());
  }

  private static boolean isAbsent(RecordComponent component, List<String> fields) {
    return component.getType() == Optional.class && !fields.contains(component.getName());
  }

  @Test
  void write_endsLinesAlikeEverywhere() {
    assertThat(ReportJson.write(Reports.handmade())).doesNotContain("\r").endsWith("}\n");
  }

  @ParameterizedTest
  @CsvSource({"tr-TR, Asia/Kathmandu", "ar-EG-u-nu-arab, Pacific/Apia", "de-DE, America/New_York"})
  void write_underAnotherLocaleAndTimeZone_isTheSame(String locale, String zone) {
    Locale formerLocale = Locale.getDefault();
    TimeZone formerZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(ReportJson.write(Reports.handmade())).isEqualTo(Documents.read(GOLDEN));
    } finally {
      Locale.setDefault(formerLocale);
      TimeZone.setDefault(formerZone);
    }
  }

  /** What a report cannot hold, JSON need not write. */
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -0.01})
  void report_spreadThatIsNone_isRefused(double spread) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reports.handmade(spread))
        .withMessageStartingWith("spread of ln λ ")
        .withMessageEndingWith(": allowed a finite number, 0 or more");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          a-lean-rule => z-other => finding 0 of rule a-lean-rule: allowed those in its result, counted from 0, of 0
          d-broken => c-silent => two results of rule c-silent: allowed one for each rule
          """)
  void read_resultsThatDoNotGoWithTheFindings_isRefused(String id, String other, String message) {
    String report = ReportJson.write(Reports.handmade());
    int results = report.indexOf("\"results\"");
    String document =
        report.substring(0, results)
            + report.substring(results).replaceFirst('"' + id + '"', '"' + other + '"');

    assertThatThrownBy(() -> ReportJson.read(document)).hasMessageContaining(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "schemaVersion": 1 => "schemaVersion": 2 => $.schemaVersion: 2: allowed 1
          "schemaVersion": 1, => '' => $.schemaVersion: missing: allowed 1
          "model": => "modle": => $.modle: unknown field "modle", perhaps "model": allowed schemaVersion, model, rulebook, verdict, sheet, profile, meanRisk, coldestDay, hottestDay, overrun, overrunLimit, pages, results, findings, unusedWaivers, plan, proof, assumptions, cautions
          "meanRisk": 0.125 => "meanRisk": 1.125 => $.meanRisk: probability 1.125: allowed from 0 to 1
          "chargeShare": [0.875, => "chargeShare": ["0.875", => $.profile.mixture.chargeShare[0]: "0.875": allowed a finite number
          "chargeShare": [0.875, => "chargeShare": [2.875, => $.profile: share of the charge 2.875: allowed 0 to 2
          "openShare": [0.4375,0.4375] => "openShare": [0.4375] => $.profile: column with 1 of 2 numbers: allowed one for each opening
          "unit": "rpm" => "unit": "mm" => $.profile: unit "mm" of a column: allowed "rpm"
          "lambda": [0.9,0.9] => "lambda": [0.9,"1"] => $.profile.risk.lambda[1]: "1": allowed a finite number
          "index": 0 => "index": 7 => $: finding 7 of rule a-lean-rule: allowed those in its result, counted from 0, of 2
          "mainJet": "1.32 mm" => "mainJet": "1.32" => $.results[0].outcome.findings[0].remedy.change.setting.mainJet: jet bore "1.32" cannot be read: allowed a decimal number with mm, hundredths, 1/100 mm
          "openShare": [0.4375], => "openShare": [], => $.coldestDay: column with 0 of 1 numbers: allowed one for each opening
          "severity": "danger" => "severity": "deadly" => $.rulebook.changes[0].severity: "deadly": allowed "note", "warning", "danger"
          "ruling": "fails" => "ruling": "passes" => $: verdict PASSES of a report: allowed what follows from its results, findings and days, FAILS
          "tooLean": true => "tooLean": false => $: verdict FAILS of a report: allowed what follows from its results, findings and days, FAILS
          "status": "not-evaluated" => "status": "unknown" => $.results[1].outcome.branches[1].outcome.status: "unknown": allowed "passed", "failed", "not-applicable", "not-evaluated", "broken"
          "risk": "0.25" => "risk": null => $.results[0].outcome.findings[0].attributes.risk: null: allowed a text
          "risk": "0.25" => "risk": 0.25 => $.results[0].outcome.findings[0].attributes.risk: 0.25: allowed a text
          "Mind the clutch." => 1 => $.cautions[0]: 1: allowed a text
          "part": "main-jet" => "part": "main" => $.profile.effects[0].part: "main": allowed "pilot-jet", "screw", "cutaway", "needle-jet", "needle-diameter", "needle-taper", "clip", "main-jet"
          """)
  void read_ofASpoiltReport_isRefused(String piece, String spoilt, String message) {
    String document = Documents.edited(GOLDEN, piece, spoilt);

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> ReportJson.read(document))
        .withMessage(message);
  }

  /** Where a program sorts the fields, the changes come before the sheet. */
  @Test
  void read_ofFieldsInAnotherOrder_isTheSame() throws IOException {
    ObjectMapper sorting =
        new ObjectMapper().configure(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS, true);
    String sorted = sorting.writeValueAsString(sorting.treeToValue(tree(), Object.class));

    assertThat(sorted.indexOf("\"results\"")).isLessThan(sorted.indexOf("\"sheet\""));
    assertThat(ReportJson.read(sorted)).isEqualTo(Reports.handmade());
  }

  /** A report had 368 000 bytes before its profiles were columns; a page loads it over the air. */
  @Test
  void writeLine_ofAWholeReport_isAnEighthOfWhatItWas() {
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);
    Report report = Adviser.of(StandardRulebook.rulebook()).advise(AssessedSetting.of(sheet));
    String line = ReportJson.writeLine(report);

    assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(368_000 / 8);
    assertThat(ReportJson.read(line)).isEqualTo(report);
  }

  /** What is left out of a message is the library's; a shop's own words stay. */
  @Test
  void write_words_onlyWhereTheyAreNotTheLibrarys() throws IOException {
    JsonMapper mapper = JsonMapper.builder().addModule(new JettingModule()).build();
    Message own = Message.of("rule.screw-range.remedy");
    Message shops = Message.of("rule.screw-range.remedy", "Ask in the shop.");
    Message plain = Message.plain("as it is");

    assertThat(mapper.writeValueAsString(own)).isEqualTo("{\"key\":\"rule.screw-range.remedy\"}");
    assertThat(mapper.writeValueAsString(shops)).contains("Ask in the shop.");
    for (Message message : List.of(own, shops, plain)) {
      assertThat(mapper.readValue(mapper.writeValueAsString(message), Message.class))
          .isEqualTo(message);
    }
    assertThatThrownBy(() -> mapper.readValue("{\"key\": \"no.such\"}", Message.class))
        .hasMessageContaining("allowed a key of this library");
  }

  @Test
  void writeLine_isOneLineOfTheSame() {
    String line = ReportJson.writeLine(Reports.handmade());

    assertThat(line).doesNotContain("\n");
    assertThat(ReportJson.read(line)).isEqualTo(Reports.handmade());
  }

  @Test
  void read_ofAVersionToCome_isRefusedForItsVersionBeforeAnythingElse() {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> ReportJson.read("{\"news\": [], \"schemaVersion\": 2}"))
        .withMessage("$.schemaVersion: 2: allowed 1");
  }

  private static JsonNode tree() throws IOException {
    return new ObjectMapper().readTree(ReportJson.write(Reports.handmade()));
  }
}
