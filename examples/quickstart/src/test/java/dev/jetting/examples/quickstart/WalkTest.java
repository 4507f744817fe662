package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.units.RiderInput;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkTest {

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```java\\n(.*?)^```$");
  private static final Pattern STEP = Pattern.compile("(?ms)^ *// step\\n(.*?)^ *// end of step$");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
  private final MachineDescription machine = Walk.machine();
  private final SetupSheet sheet = machine.sheet();

  @Test
  void page_showsTheStepsThatAreRunHere() throws IOException {
    List<String> steps =
        parts(STEP, "src/test/java/dev/jetting/examples/quickstart/Walk.java").stream()
            .map(step -> step.stripTrailing().stripIndent() + "\n")
            .toList();
    assertThat(steps).hasSize(7);
    List<String> blocks = parts(BLOCK, "WALK.md");
    assertThat(blocks.subList(2, blocks.size())).isEqualTo(steps);
  }

  /** Step 0 as it is printed, with all other steps in their places, is a program that runs. */
  @Test
  void page_isAWholeProgram(@TempDir Path directory) throws IOException, InterruptedException {
    List<String> blocks = parts(BLOCK, "WALK.md");
    String program =
        blocks
            .get(1)
            .replace("// steps 1 to 4\n", String.join("\n", blocks.subList(2, 6)))
            .replace("// steps 5 to 7\n", String.join("\n", blocks.subList(6, 9)));
    Path sources = Files.createDirectories(directory.resolve("shop/walk"));
    Files.writeString(directory.resolve("module-info.java"), blocks.get(0));
    Files.writeString(sources.resolve("Walk.java"), program);
    String path = System.getProperty("jdk.module.path", System.getProperty("java.class.path"));
    Path classes = directory.resolve("classes");
    List<String> javac =
        List.of(
            tool("javac"), "--release", "17", "-encoding", "UTF-8", "--module-path", path, "-d");
    assertThat(
            run(
                directory,
                Stream.concat(
                        javac.stream(),
                        Stream.of(
                            classes.toString(),
                            directory.resolve("module-info.java").toString(),
                            sources.resolve("Walk.java").toString()))
                    .toList()))
        .isEmpty();
    String printed =
        run(
            directory,
            List.of(
                tool("java"),
                "--module-path",
                classes + File.pathSeparator + path,
                "--module",
                "shop.walk/shop.walk.Walk"));
    assertThat(printed).contains("Passes: ", "Measure first: ", "full throttle: ", "Pump cart");
  }

  @Test
  void pom_isOneThatMavenReads() throws IOException {
    String page = Files.readString(Project.DIRECTORY.resolve("WALK.md"));
    String root = Files.readString(Project.DIRECTORY.resolve("../../pom.xml"));
    Matcher compiler =
        Pattern.compile(
                "<artifactId>maven-compiler-plugin</artifactId>\\s*<version>([^<]*)</version>")
            .matcher(root);
    assertThat(compiler.find()).isTrue();
    assertThat(page)
        .contains("<maven.compiler.release>17</maven.compiler.release>", compiler.group(1));
  }

  private static String tool(String name) {
    return Path.of(System.getProperty("java.home"), "bin", name).toString();
  }

  /** What it printed; it must end well. */
  private static String run(Path directory, List<String> command)
      throws IOException, InterruptedException {
    Path printed = directory.resolve("printed");
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .start();
    assertThat(process.waitFor()).as(() -> command + "\n" + read(printed)).isZero();
    return read(printed);
  }

  private static String read(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void machine_takesTheRestAsTypical() {
    assertThat(machine.typical()).isNotEmpty();
    assertThat(sheet.title()).isEqualTo("Pump cart");
  }

  @Test
  void report_namesTheWorstSpot_andWhatToMeasureFirst() {
    Report report = Walk.report(machine, to);
    assertThat(printed()).contains(" % at ", "Measure first: ");
    report.findings().forEach(found -> assertThat(printed()).contains(found.finding().text()));
  }

  /** A bigger main jet is richer where it meters, and no other part was touched. */
  @Test
  void comparison_isRicherAtFullThrottle() {
    Walk.compare(sheet, to);
    List<String> lines = printed().lines().toList();
    assertThat(lines).hasSize(9);
    String[] full = lines.get(8).split(" → ", 2);
    assertThat(lines.get(8)).startsWith("full throttle: λ ");
    assertThat(lambda(full[1])).isLessThan(lambda(full[0]));
  }

  private static double lambda(String text) {
    return Double.parseDouble(text.replaceAll(".*λ ", ""));
  }

  @Test
  void session_afterABlackPlug_goesOn() {
    NextStep next = Walk.session(sheet, to);
    assertThat(printed()).startsWith("Pump cart\n");
    assertThat(next.isEnd()).isFalse();
    assertThat(next).isNotInstanceOf(NextStep.TickOff.class);
  }

  @Test
  void request_isAnsweredWithTheShopsOwnRule() {
    Walk.Answer answer = Walk.report(SheetJson.write(with("#90")));
    assertThat(answer.status()).isEqualTo(200);
    assertThat(answer.body()).contains("\"ruleId\":\"shop-reserve\"");
    assertThat(Walk.report(SheetJson.write(with("#150"))).body())
        .contains("\"findings\":")
        .doesNotContain("\"ruleId\":\"shop-reserve\"");
  }

  @Test
  void request_thatCannotBeRead_isRefusedWithItsPlace() {
    String json = SheetJson.write(sheet);
    Walk.Answer answer =
        Walk.report(json.replaceAll("(\"mainJet\"\\s*:\\s*)\"[^\"]*\"", "$1\"96 furlongs\""));
    assertThat(answer.status()).isEqualTo(422);
    assertThat(answer.body()).contains("mainJet", "96 furlongs", "allowed");
  }

  @Test
  void page_isGermanWithTheWordsOfTheShop() {
    Report report = Walk.report(machine, to);
    assertThat(Walk.page(report)).startsWith("Bericht über: Pump cart\n").contains("\nURTEIL ");
    assertThat(Walk.reserve(0.04).text())
        .isEqualTo("At full throttle the mixture is 4 % short of our reserve.");
  }

  private SetupSheet with(String mainJet) {
    return sheet.withSetup(
        sheet
            .setup()
            .withSetting(sheet.setup().setting().withMainJet(RiderInput.mainJet(mainJet))));
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private static List<String> parts(Pattern pattern, String file) throws IOException {
    String text = Files.readString(Project.DIRECTORY.resolve(file));
    return pattern.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
  }
}
