package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Wording;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.units.RiderInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TasksTest {

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```java\\n(.*?)^```$");
  private static final Pattern STEP = Pattern.compile("(?ms)^ *// step\\n(.*?)^ *// end of step$");
  private static final Path SHEETS =
      Project.DIRECTORY.resolve("src/main/resources/dev/jetting/examples/quickstart");
  private static final Path KITS =
      Project.DIRECTORY.resolve("../kit-desk/src/main/resources/dev/jetting/examples/kitdesk");

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);

  @Test
  void page_showsTheSnippetsThatAreRunHere() throws IOException {
    List<String> steps =
        parts(STEP, "src/test/java/dev/jetting/examples/quickstart/Tasks.java").stream()
            .map(step -> step.stripTrailing().stripIndent() + "\n")
            .toList();
    assertThat(steps).hasSize(13);
    assertThat(parts(BLOCK, "TASKS.md")).isEqualTo(steps);
  }

  @Test
  void page_hasEachTaskInItsContents() throws IOException {
    List<String> titles = parts(Pattern.compile("(?m)^## (.*)$"), "TASKS.md");
    assertThat(titles).hasSize(13);
    assertThat(parts(Pattern.compile("(?m)^- \\[(.*)]\\(#"), "TASKS.md")).isEqualTo(titles);
  }

  @Test
  void map_hasARowForEachSpeedAndOpening() throws IOException {
    assertThat(Tasks.map(sheet("rich-start")))
        .hasLineCount(4 * AssessedSetting.openings().size() + 1)
        .contains("\n100,7500,");
  }

  @Test
  void shortReport_isInTheLanguageAskedFor() throws IOException {
    Report report =
        Adviser.of(StandardRulebook.rulebook())
            .advise(AssessedSetting.of(sheet("lean-in-the-middle")));
    assertThat(Tasks.page(report, Locale.GERMAN))
        .isNotEqualTo(Tasks.page(report, Locale.ENGLISH))
        .contains("\"format\":\"jetting short report\"");
  }

  @Test
  void order_isReadBackByAMapperOfTheShops() throws IOException {
    SetupSheet sheet = sheet("lean-in-the-middle");
    JsonNode order = new ObjectMapper().readTree(Tasks.order(7, sheet).toString());
    assertThat(order.get("number").intValue()).isEqualTo(7);
    assertThat(Tasks.sheetOf(order)).isEqualTo(sheet);
  }

  @Test
  void machine_isWrittenAsASheetFile(@TempDir Path directory) throws IOException {
    Path file = directory.resolve("cart.json");
    Tasks.toSheetFile(Walk.machine(), file);
    assertThat(SheetJson.read(Files.readString(file))).isEqualTo(Walk.machine().sheet());
  }

  @Test
  void germanPage_isGerman_andSoIsTheErrorOfABadSheet() throws IOException {
    String json = json("lean-in-the-middle");
    assertThat(Tasks.germanPage(json)).startsWith("Bericht über: ");
    assertThat(Tasks.germanPage(json.replaceAll("(\"mainJet\": )\"[^\"]*\"", "$1\"96\"")))
        .startsWith("$.setting.mainJet: Düsenbohrung \"96\" ist nicht lesbar; erlaubt: ");
  }

  @Test
  void kits_areCheckedLineByLine_andABadLineIsNamed() throws IOException {
    Catalogue catalogue = CatalogueJson.read(Files.readString(KITS.resolve("catalogue.json")));
    String kit = Files.readAllLines(KITS.resolve("kits.jsonl")).get(0);
    int failed = Tasks.checkKits(catalogue, List.of("{}", kit.replace("main 96\"", "no\"")), out);
    assertThat(failed).isEqualTo(2);
    assertThat(printed()).contains("line 1: $.format: missing", "milk round: ", "\"no\"");
  }

  @Test
  void session_isAnsweredInTheLanguageAskedFor() throws IOException {
    String session = Tasks.before(sheet("lean-in-the-middle"));
    assertThat(Tasks.next(session, "de-AT,de;q=0.8,en;q=0.5").body())
        .isEqualTo(
            SessionText.of(
                SessionJson.read(session),
                Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL)),
                Wording.of(Locale.GERMAN)));
    assertThat(Tasks.next(session, "sv").status()).isEqualTo(200);
    assertThat(Tasks.next("{}", "it"))
        .isEqualTo(new Tasks.Answer(422, "$.format: manca; ammesso: \"jetting tuning session\""));
  }

  @Test
  void session_goesOnElsewhere() throws IOException {
    String json = Tasks.before(sheet("lean-in-the-middle"));
    EnumSet<Instrument> sensor = EnumSet.of(Instrument.WIDEBAND);
    assertThat(Tasks.elsewhere(json, sensor))
        .isEqualTo(SessionText.of(SessionJson.read(json), Tuner.readingWith(sensor)));
  }

  @Test
  void ruleFile_joinsTheStandardRules() throws IOException {
    String page = Files.readString(Project.DIRECTORY.resolve("../../jetting-rules/RULE-FILES.md"));
    int from = page.indexOf("```json\n") + "```json\n".length();
    Rulebook rulebook = Tasks.withFile(page.substring(from, page.indexOf("```", from)), out);
    assertThat(rulebook.rule("kit-main-jet")).isPresent();
    assertThat(rulebook.rule("lean-anywhere")).isPresent();
  }

  @Test
  void waivedFinding_isNamedWithItsAuthor() throws IOException {
    Report report =
        Tasks.waiving(AssessedSetting.of(sheet("lean-in-the-middle")), LocalDate.of(2027, 3, 31));
    assertThat(report.toString()).contains("A. Weaver");
  }

  @Test
  void comparison_saysInItalianWhatBecameWorse() throws IOException {
    SetupSheet before = sheet("mild-all-round");
    SetupSheet after =
        before.withSetup(
            before
                .setup()
                .withSetting(before.setup().setting().withMainJet(RiderInput.mainJet("#80"))));
    assertThat(Tasks.compare(before, before)).isNotEqualTo(Tasks.compare(before, after));
    assertThat(Tasks.compare(before, after)).contains("magr");
  }

  @Test
  void partByPart_isGermanText_thenARowForEachOpening() throws IOException {
    SetupSheet before = sheet("mild-all-round");
    SetupSheet after =
        before.withSetup(
            before
                .setup()
                .withSetting(before.setup().setting().withMainJet(RiderInput.mainJet("#80"))));
    assertThat(Tasks.whatTheJetsDid(AssessedSetting.of(before), AssessedSetting.of(after)))
        .startsWith("Hauptdüse 80 statt ")
        .contains("λ steigt am meisten bei ", "\n\nthrottle_percent,lambda_before,");
  }

  @Test
  void chart_namesTheLeanNeedle_andHasARowForEachOpening() throws IOException {
    assertThat(Tasks.chart(sheet("lean-in-the-middle"))).startsWith("Lean on the needle at ");
    assertThat(Tasks.chart(sheet("rich-start")))
        .startsWith("throttle_percent,speed_rpm,lambda,")
        .hasLineCount(AssessedSetting.openings().size() + 1);
  }

  @Test
  void replacedLimit_isThatOfTheRule() {
    assertThat(
            Tasks.stricter()
                .assumptions()
                .get("float valve capacity by full-throttle flow")
                .value())
        .isEqualTo(1.5);
  }

  private static SetupSheet sheet(String name) throws IOException {
    return SheetJson.read(json(name));
  }

  private static String json(String name) throws IOException {
    return Files.readString(SHEETS.resolve(name + ".json"));
  }

  private String printed() {
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static List<String> parts(Pattern pattern, String file) throws IOException {
    String text = Files.readString(Project.DIRECTORY.resolve(file));
    return pattern.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
  }
}
