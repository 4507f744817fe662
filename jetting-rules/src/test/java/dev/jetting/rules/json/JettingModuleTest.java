package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Diameter;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import java.io.IOException;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
