package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.json.KitValidationJson;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
    assertThat(results).hasSize(1 + 4);
    assertThat(results.get(1)).startsWith("{\"line\":2,\"validation\":{\"schemaVersion\":1,");
    assertThat(results.get(4)).contains("kit-float-valve-flow");
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
    assertThat(results).hasSize(1 + 12);
    assertThat(results.get(0)).startsWith("{\"format\":\"jetting kit results\",");
    assertThat(results.get(5)).startsWith("{\"line\":5,\"problem\":\"$.parts[9]: ");
    String first = results.get(1);
    String validation =
        first.substring("{\"line\":1,\"validation\":".length(), first.indexOf(",\"input\":\""));
    assertThat(KitValidationJson.read(validation).passes()).isTrue();
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

  @ParameterizedTest
  @ValueSource(strings = {"mine\n", "mine, without an end", "{}\n{\"line\":1", "\n\n"})
  void resumedFromAFileOfSomethingElse_isRefusedAndLeftAlone(String mine) throws IOException {
    Files.writeString(Path.of(out()), mine);

    assertRefused(
        Run.with("validate", "--demo", "--out", out(), "--resume", KITS), "line 1: is no result");
    assertThat(Files.readString(Path.of(out()))).isEqualTo(mine);
  }

  @Test
  void outThatIsTheFileOfKits_isRefused() throws IOException {
    Path kits = Files.copy(Path.of(KITS), directory.resolve("kits.jsonl"));

    assertRefused(
        Run.with("validate", "--demo", "--out", kits.toString(), "--resume", kits.toString()),
        "is the file of kits");
    assertThat(kits).hasSameBinaryContentAs(Path.of(KITS));
  }

  /** A verdict must not count for a kit that was not judged. */
  @Test
  void resumedWithAnotherKit_isRefusedAndLeftAlone() throws IOException {
    Path kits = Files.copy(Path.of(KITS), directory.resolve("kits.jsonl"));
    Run.with("validate", "--demo", "--depth", "fit", "--out", out(), kits.toString());
    byte[] results = Files.readAllBytes(Path.of(out()));
    Files.writeString(
        kits,
        Files.readString(kits).replace("\"mainJet\": \"main 114\"", "\"mainJet\": \"main 106\""));

    assertRefused(
        Run.with("validate", "--demo", "--depth", "fit", "--out", out(), "--resume", "" + kits),
        "kits.jsonl, line 2: is not what the result in --out is of");
    assertThat(Files.readAllBytes(Path.of(out()))).isEqualTo(results);
  }

  /** The cells of a table mean what its first line says. */
  @Test
  void resumedWithOtherColumns_isRefused() throws IOException {
    Path kits = Files.copy(Project.DEMO.resolve("kits.csv"), directory.resolve("kits.csv"));
    Run.with("validate", "--demo", "--depth", "fit", "--out", out(), kits.toString());
    Files.writeString(
        kits, Files.readString(kits).replaceFirst("id,description", "description,id"));

    assertRefused(
        Run.with("validate", "--demo", "--depth", "fit", "--out", out(), "--resume", "" + kits),
        "kits.csv, line 2: is not what the result in --out is of");
  }

  @Test
  void resumedWithFewerKits_isRefused() throws IOException {
    Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);
    List<String> kits = Files.readAllLines(Path.of(KITS));

    assertRefused(
        Run.reading(
            kits.get(0), "validate", "--demo", "--depth", "fit", "--out", out(), "--resume", "-"),
        "line 2: is no kit, but --out has a result of it");
  }

  @Test
  void resumedWithMoreKits_goesOn() throws IOException {
    List<String> kits = Files.readAllLines(Path.of(KITS));
    String two = kits.get(0) + "\n" + kits.get(1) + "\n";
    String[] args = {"validate", "--demo", "--depth", "fit", "--out", out(), "--resume", "-"};
    Run.reading(kits.get(0), args);

    Run run = Run.reading(two, args);

    assertThat(run.out()).containsPattern("pass +2\n");
    assertThat(Files.readAllLines(Path.of(out()))).hasSize(1 + 2);
  }

  @Test
  void resumedWithAnotherCatalogue_isRefused() throws IOException {
    Run.with("validate", "--demo", "--depth", "fit", "--out", out(), KITS);
    String text = Files.readString(Project.DEMO.resolve("catalogue.json"));
    Path other = Files.writeString(directory.resolve("other.json"), text + "\n");
    String parts = Project.DEMO.resolve("parts.csv").toString();

    assertRefused(
        Run.with(
            "validate",
            "--catalogue",
            other.toString(),
            "--parts",
            parts,
            "--depth",
            "fit",
            "--out",
            out(),
            "--resume",
            KITS),
        "was made with another catalogue, SHA-256");
    assertRefused(
        Run.with(
            "validate",
            "--catalogue",
            Project.DEMO.resolve("catalogue.json").toString(),
            "--depth",
            "fit",
            "--out",
            out(),
            "--resume",
            KITS),
        "was made with other parts lists, SHA-256");
  }

  /** What it wrote it can read, however much it found. */
  @Test
  void resumedAfterAVeryLongResult_goesOn() throws IOException {
    List<String> lines = Files.readAllLines(Project.DEMO.resolve("kits.csv"));
    String unknown =
        IntStream.range(0, 400)
            .mapToObj(i -> "n".repeat(50) + i + "; ")
            .collect(Collectors.joining());
    String row = lines.get(1).replace("pilot 40;", unknown + "pilot 40;");
    Path kits = Files.write(directory.resolve("long.csv"), List.of(lines.get(0), row));
    String[] args = {
      "validate", "--demo", "--depth", "fit", "--out", out(), "--resume", kits.toString()
    };
    Run whole = Run.with(args);

    assertThat(Files.readString(Path.of(out()))).hasSizeGreaterThan(20_000);
    assertThat(Run.with(args)).isEqualTo(whole);
  }

  /** Half a character can be escaped in JSON, but not written in UTF-8; no id holds one. */
  @Test
  void halfACharacter_isABadLineAndTheRestGoesOn() throws IOException {
    String first = Files.readAllLines(Path.of(KITS)).get(0);
    String spoilt = first.replace("\"milk round\"", "\"\\ud800 round\"");
    String[] args = {"validate", "--demo", "--depth", "fit", "--out", out(), "--resume", "-"};

    Run run = Run.reading(spoilt + "\n" + first, args);

    assertThat(run.out()).containsPattern("pass +1\n").containsPattern("bad lines +1\n");
    assertThat(run.out()).contains("id of the kit with the character U+0D800");
    assertThat(Run.reading(spoilt + "\n" + first, args).out()).isEqualTo(run.out());
  }

  @Test
  void lineBeyondAllMeasure_isToldByNumberAndTheRestGoesOn() throws IOException {
    String first = Files.readAllLines(Path.of(KITS)).get(0);

    Run run =
        Run.reading(
            first + "\n" + "x".repeat(3_000_001) + "\r\n" + first,
            "validate",
            "--demo",
            "--depth",
            "fit",
            "-");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).containsPattern("pass +2\n");
    assertThat(run.err())
        .isEqualTo(
            "kit-desk: standard input, line 2: 3000001 bytes: allowed at most 3000000"
                + System.lineSeparator());
  }

  @Test
  void bytesThatAreNotUtf8_areABadLine() throws IOException {
    Path kits = directory.resolve("latin.jsonl");
    String text = Files.readAllLines(Path.of(KITS)).get(0).replace("milk round", "côte");
    Files.writeString(kits, text, StandardCharsets.ISO_8859_1);

    Run run = Run.with("validate", "--demo", "--depth", "fit", kits.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("line 1: bytes that are not UTF-8: allowed UTF-8");
  }

  @ParameterizedTest
  @CsvSource({"jsonl,''", "jsonl,'\n \n'", "csv,''", "csv,'id,family\n'", "json,' \n'"})
  void noKits_areNoSuccess(String format, String input) {
    assertRefused(
        Run.reading(input, "validate", "--demo", "--depth", "fit", "--format", format, "-"),
        "standard input: no kits: allowed at least one");
  }

  @Test
  void columnTwice_isRefusedByFileAndLine() throws IOException {
    String table = "\nid,family,id\n";

    assertRefused(
        Run.reading(table, "validate", "--demo", "--format", "csv", "-"),
        "standard input, line 2: column \"id\" twice: allowed once");

    Path list = Files.writeString(directory.resolve("list.csv"), "id,series,bore,bore\n");
    String catalogue = Project.DEMO.resolve("catalogue.json").toString();
    assertRefused(
        Run.with("validate", "--catalogue", catalogue, "--parts", list.toString(), KITS),
        "list.csv, line 1: column \"bore\" twice: allowed once");
  }

  @Test
  void standardInputForTwoFiles_isRefused() throws IOException {
    String catalogue = Files.readString(Project.DEMO.resolve("catalogue.json"));

    assertRefused(
        Run.reading(catalogue, "validate", "--catalogue", "-", "-"),
        "- for two files: allowed for one, for it can be read only once");
  }

  @Test
  void outThatCannotBeWritten_isRefused() {
    Path nowhere = directory.resolve("nowhere").resolve("results.jsonl");

    assertRefused(
        Run.with("validate", "--demo", "--out", nowhere.toString(), KITS),
        "results.jsonl: no such file or directory");
    assertRefused(
        Run.with("validate", "--demo", "--out", directory.toString(), "--resume", KITS),
        "cannot be gone on with: allowed a plain file");
  }

  @Test
  void pageThatCannotBeWritten_isNoSuccess() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int exitCode =
        KitDesk.run(
            new String[] {"validate", "--demo", Project.DEMO.resolve("kit.json").toString()},
            InputStream.nullInputStream(),
            new PrintStream(new FullDisk()),
            new PrintStream(err, true),
            false);

    assertThat(exitCode).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .isEqualTo("kit-desk: standard output: cannot be written" + System.lineSeparator());
  }

  private static final class FullDisk extends OutputStream {
    @Override
    public void write(int b) throws IOException {
      throw new IOException("No space left on device");
    }
  }

  /** Nothing that a caller can read is left to the virtual machine to print. */
  @Test
  void outOfMemory_isToldInALine() {
    InputStream greedy =
        new InputStream() {
          @Override
          public int read() {
            throw new OutOfMemoryError("Java heap space");
          }

          @Override
          public int read(byte[] buffer, int offset, int length) {
            return read();
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int exitCode =
        KitDesk.run(
            new String[] {"validate", "--demo", "-"},
            greedy,
            new PrintStream(OutputStream.nullOutputStream()),
            new PrintStream(err, true),
            false);

    assertThat(exitCode).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .startsWith("kit-desk: stopped: java.lang.OutOfMemoryError: Java heap space")
        .hasLineCount(1);
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
          validate --demo --parts x => --demo and --parts: allowed with --catalogue
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
