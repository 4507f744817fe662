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
    String sheet = sheet("seat", "2 mm", "1.34 mm");

    Run run = Run.with("search", "--demo", "--sheet", sheet, "--keep", "screw", "--top", "1");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(" right ")
        .doesNotContain(" danger ")
        .containsPattern("  [0-9]+ of the best are passed over; against them: float-valve-flow\n");
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
    Run run = Run.with("search", "--demo", "--buy", "0", "--keep", "screw");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).containsPattern(" 96 +42 +1½ +30 +202 slow/2.15 +3/5 +right .* 0 +0.00");
  }

  /** Also those that the catalogue does not have. */
  @Test
  void needleThatTheCatalogueDoesNotHave_isOwned() throws IOException {
    String sheet = sheet("cylinder", "2.02 mm", "2.021 mm");

    Run run = Run.with("search", "--demo", "--sheet", sheet, "--buy", "0", "--keep", "screw");

    assertThat(run.out()).containsPattern(" 96 +42 +1½ +30 +2.02 middle/2.15 .* 0 +0.00");
  }

  @Test
  void partToKeepThatIsOnTheEngine_isNotBought() {
    Run run = Run.with("search", "--demo", "--keep", "slide", "--buy", "2", "--keep", "screw");

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

  private static String[] with(String... more) {
    return java.util.stream.Stream.concat(
            java.util.Arrays.stream(OWNED), java.util.Arrays.stream(more))
        .toArray(String[]::new);
  }
}
