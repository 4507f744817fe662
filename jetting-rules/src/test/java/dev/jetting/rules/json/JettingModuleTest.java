package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.Diameter;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The module with a mapper of the caller's own. */
class JettingModuleTest {

  private final ObjectMapper mapper = new ObjectMapper().findAndRegisterModules();

  @Test
  void report_writtenAndRead_isEqual() throws IOException {
    Report report = Reports.handmade();

    assertThat(mapper.readValue(mapper.writeValueAsString(report), Report.class)).isEqualTo(report);
  }

  @Test
  void report_asATree_isTheDocument() throws IOException {
    JsonNode document = new ObjectMapper().readTree(ReportJson.write(Reports.handmade()));

    assertThat(mapper.<JsonNode>valueToTree(Reports.handmade())).isEqualTo(document);
  }

  @Test
  void sheet_writtenAndRead_isEqual() throws IOException {
    SetupSheet sheet = SheetJson.read(Documents.read("example-sheet.json"));

    assertThat(mapper.readValue(mapper.writeValueAsString(sheet), SetupSheet.class))
        .isEqualTo(sheet);
    assertThat(mapper.convertValue(sheet, SetupSheet.class)).isEqualTo(sheet);
    assertThat(mapper.<JsonNode>valueToTree(sheet))
        .isEqualTo(new ObjectMapper().readTree(SheetJson.write(sheet)));
  }

  @Test
  void partOfASheet_standsByItself() throws IOException {
    assertThat(mapper.readValue("{\"bore\": \"2.66 mm\", \"neck\": \"0 mm\"}", NeedleJet.class))
        .isEqualTo(NeedleJet.of(Diameter.ofMillimetres(2.66)));
    assertThat(mapper.writeValueAsString(Length.ofMillimetres(1.5))).isEqualTo("\"1.5 mm\"");
    assertThat(mapper.writeValueAsString(List.of(ScrewKind.AIR, Lambda.of(0.9))))
        .isEqualTo("[\"air\",\"0.9\"]");
  }

  /** The path begins at the value of the library. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"bore": "2.66 mm"}                 | $.neck | missing
          {"bore": "2.66 mm", "neck": null}   | $.neck | null
          {"bore": 2.66, "neck": "0 mm"}      | $.bore | 2.66
          {"bore": "2.66 mm", "nek": "0 mm"}  | $.nek  | unknown field "nek"
          {"bore": "-2 mm", "neck": "0 mm"}   | $.bore | -2 mm
          """)
  void partOfASheet_thatIsWrong_isOurError(String json, String path, String problem) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> mapper.readValue(json, NeedleJet.class))
        .withMessageStartingWith(path + ": ")
        .withMessageContaining(problem)
        .satisfies(error -> assertThat(error.path()).isEqualTo(path))
        .satisfies(error -> assertThat(error.allowed()).isNotEmpty());
  }

  @Test
  void errorInsideOfATypeOfOthers_isTheCauseOfJacksons() {
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(
            () -> mapper.readValue("[{\"bore\": 1}]", new TypeReference<List<NeedleJet>>() {}))
        .havingCause()
        .isInstanceOf(JsonInputException.class)
        .withMessageStartingWith("$.bore: ");
  }

  @ParameterizedTest
  @CsvSource({
    "jetting setup sheet, poem",
    "'Version\": 1', 'Version\": 3'",
  })
  void sheetOfAnotherFormatOrVersion_isRefused(String old, String other) {
    String document = Documents.edited("bare-sheet.json", old, other);
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> mapper.readValue(document, SetupSheet.class));
  }

  /** What a tuner rests on is written by itself as it stands in a session. */
  @Test
  void whatATunerRestsOn_isAsInASession_andReadBack() throws IOException {
    Meanings meanings =
        Meanings.assumed().withProven(Coefficient.assumed(0.04, "1", "of the shop"));
    RiskModel risk =
        new RiskModel(
            MixtureLimits.margins().lean(Coefficient.assumed(1.11, "1", "of the shop")).build(),
            ModelUncertainty.assumed(),
            CustomarySteps.assumed().with(MeteringPart.MAIN_JET, 0.025));
    Tuner tuner =
        Tuner.readingWith(Set.of(Instrument.PLUG)).withRiskModel(risk).withMeanings(meanings);
    TuningSession session = SessionJson.read(Documents.read("example-session.json"));
    JsonNode document = new ObjectMapper().readTree(SessionJson.write(session, tuner)).get("tuner");

    assertThat(mapper.<JsonNode>valueToTree(meanings)).isEqualTo(document.get("meanings"));
    assertThat(mapper.<JsonNode>valueToTree(risk.limits())).isEqualTo(document.get("limits"));
    assertThat(mapper.<JsonNode>valueToTree(risk.uncertainty())).isEqualTo(document.get("spreads"));
    JsonNode whole = mapper.valueToTree(risk);
    for (String field : List.of("limits", "spreads", "steps")) {
      assertThat(whole.get(field)).isEqualTo(document.get(field));
    }
    assertThat(mapper.treeToValue(document.get("meanings"), Meanings.class)).isEqualTo(meanings);
    assertThat(mapper.treeToValue(document.get("limits"), MixtureLimits.class))
        .isEqualTo(risk.limits());
    assertThat(mapper.treeToValue(document.get("spreads"), ModelUncertainty.class))
        .isEqualTo(risk.uncertainty());
    assertThat(mapper.treeToValue(whole, RiskModel.class)).isEqualTo(risk);
  }

  @Test
  void mixtureSeries_namesCircuitsAsAllDocumentsDo_andIsReadBack() throws IOException {
    MixtureSeries series =
        AssessedSetting.of(SheetJson.read(Documents.read("example-sheet.json"))).series();
    JsonNode tree = mapper.valueToTree(series);

    assertThat(tree.at("/rows/0/shares").fieldNames())
        .toIterable()
        .containsExactly("pilot", "cutaway", "needle", "main");
    assertThat(mapper.treeToValue(tree, MixtureSeries.class)).isEqualTo(series);
    String upper = tree.toString().replaceFirst("\"pilot\"", "\"PILOT\"");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> mapper.readValue(upper, MixtureSeries.class))
        .withMessageContaining("\"PILOT\": allowed \"pilot\", \"cutaway\"");
  }

  @Test
  void record_isWrittenByItsComponentsAlone() throws IOException {
    assertThat(mapper.writeValueAsString(new NextStep.TickOff(List.of(Check.JETS_CLEAN))))
        .isEqualTo("{\"checks\":[\"jets-clean\"]}");
  }

  static Stream<Object> withoutForm() {
    return Stream.of(
        AssessedSetting.of(SheetJson.read(Documents.read("example-sheet.json"))),
        Tuner.readingWith(Set.of(Instrument.PLUG)),
        MachineDescription.builder(),
        StandardRulebook.rulebook(),
        StandardRulebook.rulebook().rules().get(0));
  }

  @ParameterizedTest
  @MethodSource("withoutForm")
  void typeThatIsNoPlainData_isRefusedInOurWords(Object value) {
    String refusal = " has no form in JSON: allowed plain data, such as a setup sheet";
    String name = value.getClass().getSimpleName();
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> mapper.writeValueAsString(value))
        .withMessageStartingWith(name + refusal);
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> mapper.readValue("{}", value.getClass()))
        .withMessageStartingWith("$: " + name + refusal);
  }

  @Test
  void limitsOfAClassOfTheCallers_areRefusedInOurWords() {
    MixtureLimits ours = MixtureLimits.assumed();
    MixtureLimits theirs =
        new MixtureLimits() {
          @Override
          public Lambda lean(ThrottleOpening throttle, MixtureNeed need) {
            return ours.lean(throttle, need);
          }

          @Override
          public Lambda rich(ThrottleOpening throttle, MixtureNeed need) {
            return ours.rich(throttle, need);
          }

          @Override
          public Lambda overrun(MixtureNeed need) {
            return ours.overrun(need);
          }

          @Override
          public Map<String, Coefficient> basis() {
            return ours.basis();
          }
        };
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> mapper.writeValueAsString(theirs))
        .withMessageStartingWith("limits of a class of the caller's own: allowed ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          dev.jetting.units.Lambda    | "-1"    | lambda -1
          dev.jetting.units.Lambda    | true    | true
          dev.jetting.units.Length    | "1 ell" | ell
          dev.jetting.units.ScrewKind | "AIR"   | allowed "mixture", "air"
          """)
  void rootThatIsNoObject_thatIsWrong_isOurError(Class<?> type, String json, String said) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> mapper.readValue(json, type))
        .withMessageStartingWith("$: ")
        .withMessageContaining(said)
        .satisfies(error -> assertThat(error.path()).isEqualTo("$"))
        .satisfies(error -> assertThat(error.value()).isNotEmpty())
        .satisfies(error -> assertThat(error.allowed()).isNotEmpty());
  }

  @Test
  void typesOfOthers_areLeftToTheMapper() throws IOException {
    ObjectMapper plain = new ObjectMapper();
    for (String json : List.of("7", "\"7\"", "7.0", "null")) {
      assertThat(mapper.readValue(json, String.class))
          .isEqualTo(plain.readValue(json, String.class));
      assertThat(mapper.readValue(json, Integer.class))
          .isEqualTo(plain.readValue(json, Integer.class));
    }
    assertThat(mapper.readValue("[null, \"MONDAY\"]", DayOfWeek[].class))
        .containsExactly(null, DayOfWeek.MONDAY);
    assertThat(mapper.writeValueAsString(DayOfWeek.MONDAY)).isEqualTo("\"MONDAY\"");
    assertThat(mapper.writeValueAsString(Double.NaN))
        .isEqualTo(plain.writeValueAsString(Double.NaN));
    // Jackson's own module for them is the caller's to register.
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> plain.writeValueAsString(Optional.of("x")));
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> mapper.writeValueAsString(Optional.of("x")));
  }
}
