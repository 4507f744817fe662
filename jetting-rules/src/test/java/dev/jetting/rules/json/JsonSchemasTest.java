package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.tuning.TuningSession;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas against the readers, by a validator from outside. */
class JsonSchemasTest {

  private static final Path DEMO =
      Path.of("../examples/quickstart/src/main/resources/dev/jetting/examples/quickstart");

  private static final Path FOLDER = Path.of("src/main/resources/dev/jetting/rules/json");

  static Stream<Path> demoSheets() throws IOException {
    try (Stream<Path> files = Files.list(DEMO)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  static Stream<Path> schemas() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".schema.json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void everyField_saysWhatItIs(Path file) throws IOException {
    JsonNode schema = JsonMapper.builder().build().readTree(Files.readString(file));

    for (JsonNode properties : schema.findValues("properties")) {
      properties
          .properties()
          .forEach(
              field ->
                  assertThat(field.getValue().has("description") || field.getValue().has("const"))
                      .as(field.getKey())
                      .isTrue());
    }
  }

  @Test
  void schemas_areMadeFromTheCode() {
    Documents.assertIsPublished(
        "setup-sheet.schema.json",
        SchemaWriter.of(
            "setup-sheet", "A jetting setup sheet", SetupSheet.class, SheetForm.HEADER));
    Documents.assertIsPublished(
        "report.schema.json",
        SchemaWriter.of("report", "A jetting report", Report.class, Map.of("schemaVersion", "1")));
    Documents.assertIsPublished(
        "rule-file.schema.json",
        SchemaWriter.of("rule-file", "A jetting rule file", RuleFile.class, RuleFileForm.HEADER));
    Documents.assertIsPublished(
        "tuning-session.schema.json",
        SchemaWriter.of(
            "tuning-session", "A jetting tuning session", TuningSession.class, SessionForm.HEADER));
    Documents.assertIsPublished(
        "catalogue.schema.json",
        SchemaWriter.of("catalogue", "A jetting catalogue", Catalogue.class, CatalogueForm.HEADER));
    Documents.assertIsPublished(
        "kit.schema.json", SchemaWriter.of("kit", "A jetting kit", Kit.class, KitForm.HEADER));
    Documents.assertIsPublished(
        "rule-limits.schema.json",
        SchemaWriter.of(
            "rule-limits", "Limits of jetting rules", LimitsForm.class, LimitsForm.HEADER));
    Documents.assertIsPublished(
        "waivers.schema.json",
        SchemaWriter.of("waivers", "Waivers of findings", WaiversForm.class, WaiversForm.HEADER));
    Documents.assertIsPublished(
        "kit-waivers.schema.json",
        SchemaWriter.of(
            "kit-waivers", "Waivers of jetting kits", KitWaiversForm.class, KitWaiversForm.HEADER));
    Documents.assertIsPublished(
        "short-report.schema.json",
        SchemaWriter.of(
            "short-report",
            "A jetting report for a page",
            ShortReportForm.class,
            ShortReportForm.HEADER));
    Documents.assertIsPublished(
        "report-difference.schema.json",
        SchemaWriter.of(
            "report-difference",
            "What two jetting reports differ in",
            DifferenceDocument.class,
            DifferenceDocument.HEADER));
    Documents.assertIsPublished(
        "sheet-impact.schema.json",
        SchemaWriter.of(
            "sheet-impact",
            "What new jetting rules do to a sheet",
            ImpactForm.class,
            ImpactForm.HEADER));
    Documents.assertIsPublished(
        "kit-validation.schema.json",
        SchemaWriter.of(
            "kit-validation",
            "What is said of a jetting kit",
            KitValidation.class,
            Map.of("schemaVersion", "1")));
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void schema_isASchemaItself(Path file) throws IOException {
    assertThat(Validators.complaintsOfSchema(Files.readString(file))).isEmpty();
  }

  /** No form is without its schema, and no schema without the method that gives it. */
  @Test
  void everySchema_isGivenByAMethod() throws ReflectiveOperationException, IOException {
    List<String> given = new ArrayList<>();
    for (Method method : JsonSchemas.class.getMethods()) {
      if (Modifier.isStatic(method.getModifiers())) {
        given.add((String) method.invoke(null));
      }
    }
    List<String> published = new ArrayList<>();
    for (Path file : schemas().toList()) {
      published.add(Files.readString(file));
    }

    assertThat(given).containsExactlyInAnyOrderElementsOf(published);
    try (Stream<Path> sources = Files.list(Path.of("src/main/java/dev/jetting/rules/json"))) {
      assertThat(sources.map(file -> file.getFileName().toString()))
          .filteredOn(name -> name.endsWith("Json.java") || name.equals("RuleFile.java"))
          .hasSameSizeAs(published);
    }
  }

  @ParameterizedTest
  @MethodSource("demoSheets")
  void demoSheet_isValid_andSoIsWhatIsWrittenOfIt(Path file) throws IOException {
    String sheet = Files.readString(file);

    assertThat(Validators.SHEET.complaints(sheet)).isEmpty();
    assertThat(Validators.SHEET.complaints(SheetJson.write(SheetJson.read(sheet)))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"example-sheet.json", "bare-sheet.json", "example-sheet.golden.json"})
  void exampleSheet_isValid(String name) {
    assertThat(Validators.SHEET.complaints(Documents.read(name))).isEmpty();
  }

  @Test
  void goldenReport_isValid() {
    assertThat(Validators.REPORT.complaints(Documents.read("report.golden.json"))).isEmpty();
  }

  @Test
  void exampleRuleFile_isValid_andSoIsWhatIsWrittenOfIt() {
    String file = Documents.read("example-rules.json");

    assertThat(Validators.RULE_FILE.complaints(file)).isEmpty();
    assertThat(Validators.RULE_FILE.complaints(RuleFile.read(file).toJson())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "format": "jetting setup sheet" => "format": "sheet"
          "schemaVersion": 1 => "schemaVersion": 2
          "title": => "titel":
          "cutaway": => "cutAway":
          "clip": "2 of 5 from top", => ''
          "mainJet": "1.28 mm" => "mainJet": null
          "mainJet": "1.28 mm" => "mainJet": 1.28
          "mainJet": "1.28 mm" => "mainJet": "1.28"
          "mainJet": "1.28 mm" => "mainJet": "1.28 °C"
          "mainJet": "1.28 mm" => "mainJet": {"value": 1.28}
          "grooves": 5 => "grooves": 5.5
          "rate": 0.02 => "rate": "0.02"
          "screwKind": "mixture" => "screwKind": "fuel"
          "induction": "mild" => "induction": "wild"
          "altitude": "350 m" => "altitude": "350 m", "pressure": "1000 hPa"
          "altitude": "350 m", => ''
          , "premix": "50:1" => ''
          "premix": "50:1" => "premix": "50"
          """)
  void brokenSheet_isInvalid(String piece, String spoilt) {
    String sheet = Documents.edited("example-sheet.json", piece, spoilt == null ? "" : spoilt);

    assertThat(Validators.SHEET.complaints(sheet)).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "schemaVersion" : 1 => "schemaVersion" : 2
          "status" : "failed" => "status" : "lost"
          "severity" : "danger" => "severity" : "grave"
          "meanRisk" : 0.125 => "meanRisk" : null
          """)
  void brokenReport_isInvalid(String piece, String spoilt) {
    String report =
        Documents.edited("report.golden.json", piece.replace(" :", ":"), spoilt.replace(" :", ":"));

    assertThat(Validators.REPORT.complaints(report)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("dev.jetting.rules.json.BadRuleFileTest#broken")
  void brokenRuleFile_isInvalid(String piece, String spoilt) {
    String file = Documents.edited("example-rules.json", piece, spoilt);

    assertThat(Validators.RULE_FILE.complaints(file)).isNotEmpty();
  }

  @Test
  void exampleSession_isValid_andSoIsWhatIsWrittenOfIt() {
    String session = Documents.read("example-session.json");

    assertThat(Validators.SESSION.complaints(session)).isEmpty();
    assertThat(Validators.SESSION.complaints(SessionJson.write(SessionJson.read(session))))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "format": "jetting tuning session" => "format": "session"
          "evidence": {"colour": "brown"} => "evidence": {}
          "evidence": {"colour": "brown"} => "evidence": {"colour": "green"}
          "evidence": {"colour": "brown"} => "evidence": {"colour": "brown", "symptom": "bogs"}
          "speed": "7500 rpm" => "speed": "7500 mm"
          """)
  void brokenSession_isInvalid(String piece, String spoilt) {
    String session = Documents.edited("example-session.json", piece, spoilt);

    assertThat(Validators.SESSION.complaints(session)).isNotEmpty();
  }
}
