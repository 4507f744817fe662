package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
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
import org.junit.jupiter.api.Test;

/** The module with a mapper of the caller's own. */
class JettingModuleTest {

  private final ObjectMapper mapper = JsonMapper.builder().addModule(new JettingModule()).build();

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
  }

  @Test
  void partOfASheet_standsByItself() throws IOException {
    assertThat(mapper.readValue("{\"bore\": \"2.66 mm\", \"neck\": \"0 mm\"}", NeedleJet.class))
        .isEqualTo(NeedleJet.of(Diameter.ofMillimetres(2.66)));
    assertThat(mapper.writeValueAsString(Length.ofMillimetres(1.5)))
        .isEqualTo("{\"value\":1.5,\"unit\":\"mm\"}");
    assertThat(mapper.writeValueAsString(List.of(ScrewKind.AIR, Lambda.of(0.9))))
        .isEqualTo("[\"air\",0.9]");
  }

  @Test
  void partOfASheet_isReadStrictly() {
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> mapper.readValue("{\"bore\": \"2.66 mm\"}", NeedleJet.class));
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(
            () -> mapper.readValue("{\"bore\": \"2.66 mm\", \"neck\": null}", NeedleJet.class));
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(() -> mapper.readValue("{\"bore\": 2.66, \"neck\": \"0 mm\"}", NeedleJet.class))
        .withMessageContaining("diameter \"2.66\" cannot be read");
  }

  @Test
  void sheetOfAnotherFormatOrVersion_isRefused() {
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(
            () ->
                mapper.readValue(
                    Documents.edited("bare-sheet.json", "jetting setup sheet", "poem"),
                    SetupSheet.class))
        .withMessageContaining("allowed \"jetting setup sheet\"");
    assertThatExceptionOfType(JsonMappingException.class)
        .isThrownBy(
            () ->
                mapper.readValue(
                    Documents.edited("bare-sheet.json", "Version\": 1", "Version\": 3"),
                    SetupSheet.class))
        .withMessageContaining("schemaVersion 3: allowed 1");
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
  }
}
