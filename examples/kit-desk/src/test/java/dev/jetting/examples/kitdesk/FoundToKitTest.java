package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.MachineResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a search writes for programs, recommended by a kit, is the setting that was found. */
class FoundToKitTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir private Path directory;

  @Test
  void settingOnTheFamilysCarburettor_hasTheRiskThatWasTold() throws Exception {
    assertSameRisk(sheet());
  }

  /** A slender screw, a float valve with a wider seat, and floats that stand high. */
  @Test
  void settingOnACarburettorWithFittingsOfItsOwn_hasTheRiskThatWasTold() throws Exception {
    assertSameRisk(
        sheet()
            .replace("\"areaPerTurn\": \"0.25 mm²\"", "\"areaPerTurn\": \"0.18 mm²\"")
            .replace("\"seat\": \"2 mm\"", "\"seat\": \"2.5 mm\"")
            .replace("\"set\": \"18 mm\"", "\"set\": \"16 mm\""));
  }

  @Test
  void screwThatTheCatalogueDoesNotHave_isNullAndSaid() throws IOException {
    Path out = directory.resolve("found.jsonl");
    String foreign =
        sheet().replace("\"areaPerTurn\": \"0.25 mm²\"", "\"areaPerTurn\": \"0.2 mm²\"");

    Run run = search(foreign, out);

    assertThat(run.out()).contains("With the screw of the sheet, which is not the family's");
    assertThat(found(out))
        .allSatisfy(
            line -> {
              assertThat(line.at("/setting").has("fittedScrew")).isTrue();
              assertThat(line.at("/setting/fittedScrew").isNull()).isTrue();
            });
  }

  private void assertSameRisk(String sheet) throws Exception {
    Path out = directory.resolve("found.jsonl");
    search(sheet, out);

    KitValidator validator = KitValidator.of(CatalogueFiles.demo().catalogue());
    List<JsonNode> found = found(out);
    assertThat(found).hasSize(3);
    for (JsonNode line : found) {
      MachineResult result =
          validator.validate(KitJson.read(kit(line)), KitDepth.SETTING).machines().get(0);
      double risk =
          Stream.of(result.today(), result.coldest(), result.hottest())
              .mapToDouble(corner -> corner.leanRisk().value())
              .max()
              .orElseThrow();
      assertThat(risk).isEqualTo(line.get("worstRisk").asDouble());
      assertThat(line.get("leanRisk").asDouble()).isLessThanOrEqualTo(risk);
    }
  }

  private Run search(String sheet, Path out) throws IOException {
    Path file = Files.writeString(directory.resolve("sheet.json"), sheet);
    return Run.with(
        "search",
        "--demo",
        "--sheet",
        file.toString(),
        "--keep",
        "screw",
        "--top",
        "3",
        "--out",
        out.toString());
  }

  private static String sheet() throws IOException {
    return Files.readString(Project.DEMO.resolve("sheet.json"));
  }

  private static List<JsonNode> found(Path out) throws IOException {
    try (Stream<String> lines = Files.lines(out)) {
      return lines.skip(1).map(FoundToKitTest::parsed).toList();
    }
  }

  private static JsonNode parsed(String line) {
    try {
      return MAPPER.readTree(line);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** A kit of the parts of a found setting, for the machine and market of the demo's sheet. */
  private static String kit(JsonNode line) {
    ObjectNode recommendation = MAPPER.createObjectNode().put("machine", "milk cart");
    recommendation.setAll((ObjectNode) line.get("setting"));
    ObjectNode kit =
        MAPPER
            .createObjectNode()
            .put("format", "jetting kit")
            .put("schemaVersion", 1)
            .put("id", "found")
            .put("description", "found by a search")
            .put("family", "slide 24");
    Stream.of("pilotJet", "slide", "needleJet", "needle", "mainJet", "fittedScrew", "floatValve")
        .filter(recommendation::hasNonNull)
        .forEach(part -> kit.withArray("/parts").add(recommendation.get(part)));
    kit.put("market", "highland");
    kit.withArray("/recommendations").add(recommendation);
    return kit.toString();
  }
}
