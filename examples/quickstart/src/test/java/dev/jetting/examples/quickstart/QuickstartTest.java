package dev.jetting.examples.quickstart;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.ShortReportJson;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuickstartTest {

  private static final Path GOLDEN =
      Project.DIRECTORY.resolve("src/test/resources/dev/jetting/examples/quickstart/golden");

  /** Whatever is printed, by the ending of its golden file; JSON has a golden file in the rules. */
  private static final Map<String, List<String>> FORMS =
      Map.of(
          ".txt", List.of(),
          ".compact.txt", List.of("--compact"),
          ".md", List.of("--markdown"),
          ".de.txt", List.of("--language", "de"),
          ".it.txt", List.of("--language", "it"));

  /** CI runs this on each Java that the project supports. */
  @ParameterizedTest
  @EnumSource(Demo.class)
  void demo_printsTheGoldenText(Demo demo) throws IOException {
    for (Map.Entry<String, List<String>> form : FORMS.entrySet()) {
      Path golden = GOLDEN.resolve(demo.title() + form.getKey());
      Run run = with(form.getValue(), "--demo", demo.title());
      if (Boolean.getBoolean("golden.update")) {
        Files.createDirectories(GOLDEN);
        Files.writeString(golden, run.out());
      }
      assertThat(run.out()).isEqualTo(Files.readString(golden));
      assertThat(run.err()).isEmpty();
    }
  }

  private static Run with(List<String> first, String... then) {
    return Run.with(Stream.concat(first.stream(), Stream.of(then)).toArray(String[]::new));
  }

  private static List<Run> everyForm() {
    return Stream.concat(
            Stream.of("--colour", "--compact", "--full", "--markdown", "--json")
                .map(form -> Run.with(form)),
            Stream.of("de", "it").map(language -> Run.with("--language", language)))
        .toList();
  }

  /** Locales that print other digits, decimal commas, or fold case in their own way. */
  @ParameterizedTest
  @ValueSource(strings = {"ar-EG-u-nu-arab", "de-DE", "tr-TR", "th-TH-u-ca-buddhist-nu-thai"})
  void anyLocaleAndTimeZone_printsTheSameBytes(String language) {
    List<Run> forms = everyForm();
    Run error = Run.with("--demo", "?");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertThat(everyForm()).isEqualTo(forms);
      assertThat(Run.with("--demo", "?")).isEqualTo(error);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void manyThreads_printTheSameBytes() {
    List<Run> forms = everyForm();
    assertThat(IntStream.range(0, 8).parallel().mapToObj(i -> everyForm()).toList())
        .allMatch(forms::equals);
  }

  @Test
  void compact_hasALineForEachFindingAndTheVerdict() {
    Report report = ReportJson.read(Run.with("--json").out());
    List<String> lines = Run.with("--compact").out().lines().toList();
    assertThat(lines).hasSize(report.findings().size() + 1);
    for (int i = 0; i < report.findings().size(); i++) {
      RankedFinding found = report.findings().get(i);
      assertThat(lines.get(i))
          .startsWith(found.severity() + " ")
          .contains(found.finding().text(), found.ruleId());
    }
    assertThat(lines.get(lines.size() - 1)).startsWith("VERDICT Do not ride like this");
  }

  /** A page loads it over a slow line: nothing in it stands twice. */
  @Test
  void json_isSmall_andItsShortFormFitsInAFewKilobytes() {
    Report report = ReportJson.read(Run.with("--json").out());

    assertThat(report.plan()).isPresent();
    assertThat(ReportJson.writeLine(report)).hasSizeLessThan(60_000);
    assertThat(ShortReportJson.write(report)).hasSizeLessThan(8_000);
  }

  @Test
  void full_listsWhatTheOtherFormsCount() {
    assertThat(Run.with("--full").out()).contains("lean limit by λ wanted");
    assertThat(Run.with().out())
        .doesNotContain("lean limit by λ wanted")
        .contains("assumed values");
  }

  @Test
  void markdown_saysTheVerdictFirstAndHasEveryFindingAndCaution() {
    Report report = ReportJson.read(Run.with("--json").out());
    String markdown = Run.with("--markdown").out();
    assertThat(markdown)
        .startsWith(
            "# Report on: " + report.sheet().title() + "\n\n**Verdict:** Do not ride like this");
    assertThat(report.findings()).allMatch(f -> markdown.contains(f.finding().text()));
    assertThat(report.cautions()).allMatch(markdown::contains);
  }

  @Test
  void twoForms_areRefused() {
    refused(Run.with("--json", "--markdown"), "--json", "--markdown", "see --help");
  }

  @Test
  void noArguments_runsTheDefaultDemo() {
    assertThat(Run.with()).isEqualTo(Run.with("--demo", "lean-in-the-middle"));
  }

  @ParameterizedTest
  @CsvSource({
    "mild-all-round, 0",
    "lean-in-the-middle, 1",
    "tuned-all-round, 0",
    "tuned-on-mild-main, 1",
    "frost-on-the-pass, 1",
    "rich-start, 0",
  })
  void exitCode_isOneWhereTheReportSpeaksAgainstRiding(String demo, int expected) {
    assertThat(Run.with("--demo", demo).exitCode()).isEqualTo(expected);
    assertThat(Run.with("--demo", demo, "--json").exitCode()).isEqualTo(expected);
  }

  @Test
  void fileAndStandardInput_giveWhatTheDemoGives(@TempDir Path directory) throws IOException {
    String sheet = sheet(Demo.RICH_START);
    Path file = Files.writeString(directory.resolve("setting.json"), sheet);
    Run demo = Run.with("--demo", "rich-start");
    assertThat(Run.with(file.toString())).isEqualTo(demo);
    assertThat(Run.reading(sheet, "-")).isEqualTo(demo);
  }

  @Test
  void json_readsBackAsTheReportOfTheDemo() {
    Run run = Run.with("--demo", "rich-start", "--json");
    Report report = ReportJson.read(run.out());
    assertThat(ReportJson.write(report)).isEqualTo(run.out());
    assertThat(report.sheet().title())
        .isEqualTo("Milk cart, mild engine, rich start for plug chops");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void colour_notOnATerminal_isOff() {
    assertThat(Run.with("--colour")).isEqualTo(Run.with());
  }

  @Test
  void help_tellsUsageAndExitCodes() {
    Run run = Run.with("--help");
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains(
            "Usage: quickstart",
            "--demo",
            "--list-demos",
            "--compact",
            "--markdown",
            "--json",
            "--version",
            "Exit code");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void version_isThatOfTheBuild() {
    Run run = Run.with("--version");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).matches("quickstart [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)?\\R");
  }

  @Test
  void listDemos_namesEachAndTheDefault() {
    Run run = Run.with("--list-demos");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out().lines()).hasSize(Demo.values().length);
    for (Demo demo : Demo.values()) {
      assertThat(run.out()).contains(demo.title());
    }
    assertThat(run.out()).containsOnlyOnce("(the default)");
  }

  @Test
  void readme_tellsOfEveryDemo() throws IOException {
    String readme = Files.readString(Project.DIRECTORY.resolve("README.md"));
    for (Demo demo : Demo.values()) {
      assertThat(readme).contains("| `" + demo.title() + "`");
    }
  }

  @Test
  void badValues_nameThePathTheValueAndWhatIsAllowed() throws IOException {
    String sheet = sheet(Demo.RICH_START);
    refused(
        Run.reading(sheet.replace("\"1.08 mm\"", "\"108 furlongs\""), "-"),
        "standard input",
        "$.setting.mainJet",
        "108 furlongs",
        "allowed",
        "mm");
    refused(
        Run.reading(sheet.replace("\"mainJet\"", "\"mainjet\""), "-"),
        "$.setting.mainjet",
        "mainJet");
    refused(
        Run.reading(sheet.replace("4 of 5", "4 of 6"), "-"), "$.setting", "4 of 6", "5 grooves");
    refused(Run.reading(sheet.replace("\"fuel\": {", "\"fuel\": null, \"x\": {"), "-"), "$.fuel");
  }

  /** The sheet can be read, the fuel's properties at this temperature are not known. */
  @Test
  void airTooColdForTheFuel_isRefused() throws IOException {
    refused(
        Run.reading(sheet(Demo.RICH_START).replace("\"-4 °C\"", "\"-55 °C\""), "-"),
        "temperature",
        "-55",
        "allowed");
  }

  @Test
  void noSheetAtAll_isRefused() {
    refused(Run.reading("", "-"), "standard input", "empty");
    refused(Run.reading("{", "-"), "line 1");
    refused(Run.reading("[]", "-"), "$");
    refused(Run.reading("{}", "-"), "format", "jetting setup sheet");
    refused(Run.reading(" ".repeat(1_100_000), "-"), "too large", "1000000");
    refused(Run.reading("[".repeat(5_000), "-"), "deep");
    refused(Run.with(new ByteArrayInputStream(new byte[] {'{', (byte) 0xff, '}'}), "-"), "UTF-8");
  }

  @Test
  void badFiles_areRefused(@TempDir Path directory) {
    refused(Run.with(directory.resolve("none.json").toString()), "none.json", "no such file");
    refused(Run.with(directory.toString()), "directory");
    refused(Run.with("a\u0000b"), "no such file");
    refused(Run.with("two\nlines"), "two lines", "no such file");
    refused(Run.with(""), "\"\"");
  }

  @Test
  void failingInput_isRefused() {
    refused(Run.with(new PipedInputStream(), "-"), "standard input", "Pipe not connected");
  }

  @Test
  void badArguments_areRefused() {
    refused(Run.with("--demo", "big-bore"), "big-bore", "mild-all-round");
    refused(Run.with("--demo"), "--demo", "see --help");
    refused(Run.with("--jsno"), "--jsno", "see --help");
    refused(Run.with("one.json", "two.json"), "two.json", "see --help");
    refused(Run.with("one.json", "--demo", "rich-start"), "one.json", "rich-start", "allowed one");
  }

  private static void refused(Run run, String... parts) {
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("quickstart: ")
        .contains(parts)
        .endsWith(System.lineSeparator());
    assertThat(run.err().lines()).hasSize(1);
  }

  private static String sheet(Demo demo) throws IOException {
    try (InputStream in = demo.open()) {
      return new String(in.readAllBytes(), UTF_8);
    }
  }
}
