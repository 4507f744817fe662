package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.units.RiderInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

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
    assertThat(parts(BLOCK, "WALK.md")).isEqualTo(steps);
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
    String[] full = lines.get(8).replaceAll(".*λ ", "").split(" → ", 2);
    assertThat(Double.parseDouble(full[1])).isLessThan(Double.parseDouble(full[0]));
  }

  @Test
  void session_afterABlackPlug_goesOn() {
    NextStep next = Walk.session(sheet);
    assertThat(next.isEnd()).isFalse();
    assertThat(next).isNotInstanceOf(NextStep.TickOff.class);
  }

  @Test
  void request_isAnsweredWithTheShopsOwnRule() {
    Walk.Answer answer = Walk.report(SheetJson.write(with("#90")));
    assertThat(answer.status()).isEqualTo(200);
    assertThat(ReportJson.read(answer.body()).findings())
        .anyMatch(found -> found.ruleId().equals("shop-reserve"));
    assertThat(ReportJson.read(Walk.report(SheetJson.write(with("#150"))).body()).findings())
        .noneMatch(found -> found.ruleId().equals("shop-reserve"));
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
