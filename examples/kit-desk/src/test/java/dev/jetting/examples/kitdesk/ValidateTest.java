package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.json.KitValidationJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's kits through the program, whole, stopped on the way, and spoilt. */
class ValidateTest {

  private static final String KITS = Project.DEMO.resolve("kits.jsonl").toString();

  @TempDir private Path directory;

  @ParameterizedTest
  @ValueSource(strings = {"fit", "setting"})
  void demo_printsTheGoldenSummary(String depth) throws IOException {
    Run run = Run.with("validate", "--demo", "--depth", depth);

    Golden.assertIs("validate-" + depth + ".txt", run.out());
    assertThat(run.exitCode()).isEqualTo(3);
  }

  @Test
  void oneKit_isAPage() throws IOException {
    Run run = Run.with("validate", "--demo", Project.DEMO.resolve("kit.json").toString());

    Golden.assertIs("kit.txt", run.out());
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
  }

  /** Only the dangerous kit of the demo, so that there are findings with remedies on the page. */
  @Test
  void oneKitThatFails_isAPageThatSaysWhy() throws IOException {
    String line = Files.readAllLines(Path.of(KITS)).get(2);
    Path kit = Files.writeString(directory.resolve("crisp.json"), line);

    Run run = Run.with("validate", "--demo", kit.toString());

    Golden.assertIs("kit-fails.txt", run.out());
    assertThat(run.exitCode()).isEqualTo(1);
  }

  @Test
  void coverage_isToldOnThePage() throws IOException {
    Run run =
        Run.with(
            "validate",
            "--demo",
            "--depth",
            "coverage",
            Project.DEMO.resolve("kit.json").toString());

    Golden.assertIs("kit-coverage.txt", run.out());
  }

  @Test
  void table_isReadAsTheLinesAre() throws IOException {
    Run run =
        Run.with(
            "validate",
            "--demo",
            "--depth",
            "fit",
            "--out",
            out(),
            Project.DEMO.resolve("kits.csv").toString());

    assertThat(run.exitCode()).isEqualTo(1);
    List<String> results = Files.readAllLines(Path.of(out()));
    assertThat(results).hasSize(4);
    assertThat(results.get(0)).startsWith("{\"line\":2,\"validation\":{\"schemaVersion\":1,");
    assertThat(results.get(3)).contains("kit-float-valve-flow");
  }

  @Test
  void linesThatAreNoKits_areToldByNumberAndTheRestGoesOn() throws IOException {
    Run run = Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err().lines())
        .hasSize(2)
        .satisfiesExactly(
            first -> assertThat(first).startsWith("kit-desk: " + KITS + ", line 5: $.parts[9]: "),
            second ->
                assertThat(second)
                    .startsWith("kit-desk: " + KITS + ", line 9: $.recommendations[0].clip: "));
    List<String> results = Files.readAllLines(Path.of(out()));
    assertThat(results).hasSize(12);
    assertThat(results.get(4)).startsWith("{\"line\":5,\"problem\":\"$.parts[9]: ");
    String validation = results.get(0).substring("{\"line\":1,\"validation\":".length());
    assertThat(KitValidationJson.read(validation.substring(0, validation.length() - 1)).passes())
        .isTrue();
  }

  /** Stopped anywhere, even in the middle of a character, and gone on with. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 50, 400, 1000, 2501, 4000})
  void resumed_endsAsIfItHadNotBeenStopped(int bytes) throws IOException {
    Run whole = Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);
    byte[] results = Files.readAllBytes(Path.of(out()));
    Path stopped = directory.resolve("stopped.jsonl");
    Files.write(stopped, java.util.Arrays.copyOf(results, Math.min(bytes, results.length)));

    Run resumed =
        Run.with(
            "validate", "--demo", "--depth", "fit", "--out", stopped.toString(), "--resume", KITS);

    assertThat(Files.readAllBytes(stopped)).isEqualTo(results);
    assertThat(resumed.out()).isEqualTo(whole.out());
    assertThat(resumed.exitCode()).isEqualTo(whole.exitCode());
  }

  @Test
  void resumedWhenAllIsDone_doesNothingMore() throws IOException {
    Run whole = Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);
    byte[] results = Files.readAllBytes(Path.of(out()));

    Run again = Run.with("validate", "--demo", "--depth", "fit", "--out", out(), "--resume", KITS);

    assertThat(again.out()).isEqualTo(whole.out());
    assertThat(again.err()).isEmpty();
    assertThat(Files.readAllBytes(Path.of(out()))).isEqualTo(results);
  }

  @Test
  void resumedAtAnotherDepth_isRefused() {
    Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);

    assertRefused(
        Run.with("validate", "--demo", "--depth", "setting", "--out", out(), "--resume", KITS),
        "was made at another depth");
  }

  @Test
  void outThatIsThereAlready_isNotOverwritten() throws IOException {
    Files.writeString(Path.of(out()), "mine");

    assertRefused(Run.with("validate", "--demo", "--out", out(), KITS), "is there already");
    assertThat(Path.of(out())).hasContent("mine");
  }

  @Test
  void resumedFromAFileOfSomethingElse_isRefused() throws IOException {
    Files.writeString(Path.of(out()), "mine\n");

    assertRefused(
        Run.with("validate", "--demo", "--out", out(), "--resume", KITS), "line 1: is no result");
  }

  /** Whatever number of threads, the results stand in the order of the lines. */
  @Test
  void results_areTheSameOnAnyNumberOfThreads() throws IOException {
    Path one = directory.resolve("one.jsonl");
    Path many = directory.resolve("many.jsonl");

    Run.with("validate", "--demo", "--threads", "1", "--out", one.toString(), KITS);
    Run.with("validate", "--demo", "--threads", "7", "--out", many.toString(), KITS);

    assertThat(many).hasSameTextualContentAs(one);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ar-EG-u-nu-arab", "tr-TR"})
  void anyLocale_printsTheSameBytes(String language) {
    Run here = Run.with("validate", "--demo", "--depth", "fit");
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      assertThat(Run.with("validate", "--demo", "--depth", "fit")).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void standardInput_isReadLineByLine() throws IOException {
    String first = Files.readAllLines(Path.of(KITS)).get(0);

    Run run = Run.reading(first + "\n\n\n", "validate", "--demo", "--depth", "fit", "-");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).startsWith("standard input, depth fit");
  }

  @Test
  void moreLinesThanABatch_areAllJudged() throws IOException {
    String first = Files.readAllLines(Path.of(KITS)).get(0);

    Run run = Run.reading((first + "\n").repeat(700), "validate", "--demo", "--depth", "fit", "-");

    assertThat(run.out()).containsPattern("pass +700\n");
  }

  @Test
  void progress_isShownOnATerminalOnly() {
    Run run = Run.onATerminal("validate", "--demo", "--depth", "fit");

    assertThat(run.err()).contains("kits");
    assertThat(run.out()).isEqualTo(Run.with("validate", "--demo", "--depth", "fit").out());
    assertThat(Run.with("validate", "--demo", "--depth", "fit").err()).doesNotContain("\r");
  }

  /** A quotation mark that is left open spoils its own line. */
  @Test
  void spoiltLineOfATable_spoilsNoOther() throws IOException {
    List<String> lines = Files.readAllLines(Project.DEMO.resolve("kits.csv"));
    Path table =
        Files.writeString(
            directory.resolve("spoilt.csv"),
            String.join(
                "\n",
                lines.get(0),
                "\"" + lines.get(1),
                lines.get(2),
                lines.get(3) + ",more",
                lines.get(1)));

    Run run = Run.with("validate", "--demo", "--depth", "fit", table.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).containsPattern("pass +2\n").containsPattern("bad lines +2\n");
    assertThat(run.err()).contains("line 2: not a line of a table", "line 4: 18 cells: allowed");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          validate => no catalogue: allowed one of the two
          validate --demo --catalogue x => --catalogue and --demo: allowed one of the two
          validate --catalogue nowhere.json - => "nowhere.json": no such file
          validate --demo nowhere.jsonl => "nowhere.jsonl": no such file
          validate --demo . => ".": is a directory: allowed a file
          validate --demo --depth deep => --depth deep: allowed one of fit, setting, coverage
          validate --demo --format xml => --format xml: allowed one of json, jsonl, csv
          validate --demo --threads 0 => --threads 0: allowed 1 to 64
          validate --demo --resume => --resume without --out
          validate --demo --nonsense => Unknown option: '--nonsense'; see --help
          '' => no command: allowed validate or search; see --help
          """)
  void wrongArguments_areRefusedInOneLine(String args, String message) {
    assertRefused(Run.with(args.isEmpty() ? new String[0] : args.split(" ")), message);
  }

  @Test
  void catalogueThatIsNone_isRefusedWithThePlace() throws IOException {
    Path file = Files.writeString(directory.resolve("c.json"), "{\"format\": \"poem\"}");

    assertRefused(
        Run.with("validate", "--catalogue", file.toString(), KITS),
        "$.format: \"poem\": allowed \"jetting catalogue\"");
  }

  @Test
  void partsListWithABadLine_isRefusedWithThePlace() throws IOException {
    Path list =
        Files.writeString(directory.resolve("list.csv"), "id,series,bore\nmain x,mains long,120\n");

    assertRefused(
        Run.with(
            "validate",
            "--catalogue",
            Project.DEMO.resolve("catalogue.json").toString(),
            "--parts",
            list.toString(),
            KITS),
        "line 2, column bore: jet bore \"120\" cannot be read");
  }

  @Test
  void help_tellsUsageAndExitCodes() {
    Run run = Run.with("--help");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Usage: kit-desk", "validate", "search", "Exit code");
    for (String command : List.of("validate", "search")) {
      Run of = Run.with(command, "--help");
      assertThat(of.exitCode()).isZero();
      assertThat(of.out().lines()).allMatch(line -> line.length() <= 80);
    }
    assertThat(Run.with("--version").out()).matches("kit-desk \\d\\S*\\R");
  }

  private static void assertRefused(Run run, String message) {
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("kit-desk: ").contains(message);
    assertThat(run.err().lines()).hasSize(1);
  }

  private String out() {
    return directory.resolve("results.jsonl").toString();
  }
}
