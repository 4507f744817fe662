package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo's catalogue searched for the demo's engine. */
class SearchTest {

  private static final String[] OWNED = {
    "search",
    "--demo",
    "--own",
    "main 96",
    "--own",
    "pilot 42",
    "--own",
    "slide 24-30",
    "--own",
    "needle jet 215",
    "--own",
    "needle 202 slow"
  };

  @TempDir private Path directory;

  @Test
  void withTwoPartsToBuy_printsTheGoldenTable() throws IOException {
    Run run = Run.with(with("--buy", "2", "--top", "5", "--keep", "screw"));

    Golden.assertIs("search-buy.txt", run.out());
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
  }

  @Test
  void frontByPrice_printsTheGoldenTable() throws IOException {
    Run run = Run.with(with("--front", "price", "--keep", "screw", "--keep", "clip"));

    Golden.assertIs("search-front.txt", run.out());
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void withNothingToBuy_knowsOnlyWhatIsOwned() {
    Run run = Run.with(with("--buy", "0", "--keep", "screw", "--keep", "clip"));

    assertThat(run.out()).doesNotContain("      buy ");
    assertThat(run.out().lines().filter(line -> line.contains("/2."))).hasSize(1);
    assertThat(run.out()).containsPattern(" 96 +42 +1½ +30 +202 slow/2.15 ");
  }

  @Test
  void results_areTheSameOnAnyNumberOfThreads() {
    assertThat(Run.with(with("--keep", "screw", "--threads", "5")))
        .isEqualTo(Run.with(with("--keep", "screw", "--threads", "1")));
  }

  /** The milk cart's needle and needle jet as they are, on a slide with the highest cutaway. */
  @Test
  void noRightSetting_isTheExitCode() {
    Run run =
        Run.with(with("--own", "slide 24-40", "--buy", "0", "--keep", "screw", "--keep", "clip"));

    assertThat(run.out()).contains(" lean ");
    assertThat(run.exitCode()).isEqualTo(run.out().contains(" right ") ? 0 : 1);
  }

  /** The search looks at the mixture alone; the valve is the rulebook's to judge. */
  @Test
  void floatValveThatIsTooSmall_isRightNowhere() throws IOException {
    String sheet = sheet("seat", "2 mm", "1 mm");

    Run run = Run.with("search", "--demo", "--sheet", sheet, "--keep", "screw", "--top", "3");

    Golden.assertIs("search-danger.txt", run.out());
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains(" danger ").doesNotContain(" right ");
  }

  /** A valve that is enough for a smaller main jet than that of the best mixture. */
  @Test
  void floatValveThatIsTooSmallForTheBest_isRightFurtherDown() throws IOException {
    String sheet = sheet("seat", "2 mm", "1.336 mm");

    Run run =
        Run.with("search", "--demo", "--read", "--sheet", sheet, "--keep", "screw", "--top", "1");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(" right ")
        .doesNotContain(" danger ")
        .containsPattern("  [0-9]+ of the best are passed over; against them: float-valve-flow\n");
  }

  /**
   * Read as a bore, the flow's number would be another jet; so would the bore's, 106, as a flow.
   */
  @Test
  void jetsByFlow_areShownByTheirFlow() throws IOException {
    Run run = Run.with("search", "--demo", "--family", "slide 28", "--keep", "screw", "--top", "3");

    Golden.assertIs("search-flow.txt", run.out());
    assertThat(run.out())
        .containsPattern("  [0-9]+f .* r(ight|ich) ")
        .containsPattern(",\\s+main flow ");
  }

  /** Two jets with the same hole: the row's price is that of the one to buy. */
  @Test
  void ofEqualParts_theCheaperIsToBuy() throws IOException {
    Files.writeString(
        directory.resolve("more.csv"),
        """
        id,series,price,bore
        dear 90,mains long,9,90 hundredths
        cheap 90,mains long,1.25,90 hundredths
        """);

    Run run =
        Run.with(
            onCopies("", "", "--parts", file("more.csv"), "--read", "--buy", "1", "--top", "1"));

    assertThat(run.out()).contains("\n      buy cheap 90 at 1.25\n").contains(" 1   1.25\n");
  }

  /** A valve that is enough for some of the front only. */
  @Test
  void frontThatTheRulebookIsPartlyAgainst_saysWhatIsPassedOver() throws IOException {
    String sheet = sheet("seat", "2 mm", "1.34 mm");

    Run run =
        Run.with(
            "search", "--demo", "--read", "--sheet", sheet, "--keep", "screw", "--front", "parts");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(" right ")
        .doesNotContain(" danger ")
        .containsPattern(
            " of the front are passed over, and with them what they alone beat; against\\s+them:"
                + " float-valve-flow\n");
  }

  @Test
  void outFile_hasTheSettingsOfThePage() throws IOException {
    Path out = directory.resolve("found.jsonl");

    Run run =
        Run.with(with("--buy", "2", "--top", "5", "--keep", "screw", "--out", out.toString()));

    assertThat(run).isEqualTo(Run.with(with("--buy", "2", "--top", "5", "--keep", "screw")));
    Golden.assertHolds("search-found.jsonl", Files.readString(out));
  }

  @Test
  void outFileOfAFront_hasAllOfIt() throws IOException {
    Path out = directory.resolve("found.jsonl");

    Run run = Run.with(with("--keep", "screw", "--front", "parts", "--out", out.toString()));

    long more = Long.parseLong(run.out().replaceAll("(?s).*  and ([0-9]+) more\n.*", "$1"));
    assertThat(Files.readAllLines(out)).hasSize((int) (1 + 10 + more));
  }

  /** Not even where nothing comes of the search. */
  @Test
  void outFile_isANewOne() throws IOException {
    Path out = Files.writeString(directory.resolve("found.jsonl"), "mine");

    Run run = Run.with(with("--keep", "screw", "--out", out.toString()));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo("kit-desk: --out " + out + ": is there already: allowed a new file\n");
    assertThat(out).hasContent("mine");

    Path none = directory.resolve("none.jsonl");
    Run refused = Run.with(with("--threads", "0", "--out", none.toString()));
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(none).doesNotExist();
  }

  @Test
  void partsWithoutAPrice_areNamed() throws IOException {
    Run one = Run.with(onCopies("main 92,(.*?),2.40,", "main 92,$1,,", "--front", "price"));
    Run many = Run.with(onCopies("mains long,2.40,", "mains long,,", "--pay", "20"));
    Run kept =
        Run.with(
            onCopies("main 92,(.*?),2.40,", "main 92,$1,,", "--pay", "20", "--own", "main 92"));

    assertThat(one.err())
        .isEqualTo(
            "kit-desk: --front price: allowed only where every part to buy has a price; without"
                + " one: main 92\n");
    assertThat(many.err())
        .isEqualTo(
            "kit-desk: --pay 20: allowed only where every part to buy has a price; without one:"
                + " main 70, main 72, main 74 and 36 more\n");
    assertThat(kept.exitCode()).isZero();
  }

  @Test
  void bodyThatIsNotTheFamilys_isRefused() throws IOException {
    Run run = Run.with("search", "--demo", "--sheet", sheet("bore", "24 mm", "25 mm"));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("its bore 25 mm is not that of family slide 24: allowed 24 mm, or another name");
  }

  @Test
  void anotherFamily_isSaid() {
    Run run = Run.with("search", "--demo", "--family", "slide 26", "--keep", "screw");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("On the family's carburettor, in place of 24 mm slide carburettor, air screw");
  }

  @Test
  void partsOfTheSheet_areOwned() {
    Run run = Run.with("search", "--demo", "--read", "--buy", "0", "--keep", "screw");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).containsPattern(" 96 +42 +1½ +30 +202 slow/2.15 +3/5 +right .* 0 +0.00");
  }

  /** Also those that the catalogue does not have. */
  @Test
  void needleThatTheCatalogueDoesNotHave_isOwned() throws IOException {
    String sheet = sheet("cylinder", "2.02 mm", "2.021 mm");
    String out = file("found.jsonl");

    Run run =
        Run.with(
            "search", "--demo", "--sheet", sheet, "--buy", "0", "--keep", "screw", "--out", out);

    assertThat(Files.readString(Path.of(out)))
        .contains("\"needle\":null", "\"mainJet\":\"main 96\"");
    assertThat(run.out()).containsPattern(" 96 +42 +1½ +30 +2.02 middle/2.15 .* 0 +0.00");
    assertThat(run.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
  }

  @Test
  void partToKeepThatIsOnTheEngine_isNotBought() {
    Run run =
        Run.with("search", "--demo", "--read", "--keep", "slide", "--buy", "2", "--keep", "screw");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains(" right ");
  }

  @Test
  void nothingFound_saysWhy() {
    Run run = Run.with("search", "--demo", "--sheet-not-owned", "--buy", "0", "--pay", "9.50");

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).endsWith("None within --buy 0 and --pay 9.50.\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          search --demo --own nothing => owned part nothing: allowed a part of the catalogue
          search --demo --keep jet => --keep jet: allowed one of pilot-jet, screw, slide, needle-jet, needle, clip, main-jet
          search --demo --family x => --family x: allowed one of slide 24, slide 26, slide 28
          search --demo --top 0 => --top 0: allowed 1 to 100
          search --demo --front weight => --front weight: allowed parts or price
          search --demo --buy -1 => most new parts -1: allowed 0 or more
          search --demo --pay 1,5 => --pay 1,5: allowed a decimal number from 0, such as 12.50, at most 4 decimals
          search --demo --pay -1 => --pay -1: allowed a decimal number from 0
          search --demo --pay 1e9999999 => --pay 1e9999999: allowed a decimal number from 0
          search --demo --sheet nowhere => "nowhere": no such file
          search --catalogue nowhere => "nowhere": no such file
          """)
  void wrongArguments_areRefusedInOneLine(String args, String message) {
    Run run = Run.with(args.split(" "));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).startsWith("kit-desk: ").contains(message);
    assertThat(run.err().lines()).hasSize(1);
  }

  /** The demo's sheet with another value where a field first has this one. */
  private String sheet(String field, String from, String to) throws IOException {
    String name = '"' + field + "\": ";
    String text = Files.readString(Project.DEMO.resolve("sheet.json"));
    String changed = text.replaceFirst(name + '"' + from, name + '"' + to);
    assertThat(changed).isNotEqualTo(text);
    return Files.writeString(directory.resolve("sheet.json"), changed).toString();
  }

  /** The demo's catalogue from files, with this in the parts list in place of that. */
  private String[] onCopies(String that, String these, String... more) throws IOException {
    String parts = Files.readString(Project.DEMO.resolve("parts.csv"));
    String changed = that.isEmpty() ? parts : parts.replaceAll(that, these);
    assertThat(changed.equals(parts)).isEqualTo(that.isEmpty());
    Files.writeString(directory.resolve("parts.csv"), changed);
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(
                "search",
                "--catalogue",
                Project.DEMO.resolve("catalogue.json").toString(),
                "--parts",
                file("parts.csv"),
                "--sheet",
                Project.DEMO.resolve("sheet.json").toString(),
                "--keep",
                "screw"),
            java.util.Arrays.stream(more))
        .toArray(String[]::new);
  }

  private String file(String name) {
    return directory.resolve(name).toString();
  }

  private static String[] with(String... more) {
    return java.util.stream.Stream.concat(
            java.util.Arrays.stream(OWNED), java.util.Arrays.stream(more))
        .toArray(String[]::new);
  }
}
