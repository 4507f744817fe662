package dev.example.ruleauthor;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetEdits;
import dev.jetting.rules.json.SheetImpactJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** WALK.md shows what is run here. */
class WalkTest {

  private static final Path DIRECTORY = Path.of(System.getProperty("basedir", ""));
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```java\\n(.*?)^```$");
  private static final Pattern STEP = Pattern.compile("(?ms)^ *// step\\n(.*?)^ *// end of step$");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);

  @Test
  void page_showsTheStepsThatAreRunHere() throws IOException {
    List<String> steps =
        parts(STEP, "src/test/java/dev/example/ruleauthor/Walk.java").stream()
            .map(step -> step.stripTrailing().stripIndent() + "\n")
            .toList();

    assertThat(steps).hasSize(6);
    assertThat(parts(BLOCK, "WALK.md")).isEqualTo(steps);
  }

  @Test
  void ruleFile_isLookedThrough_andAMistypedLimitIsFound() throws IOException {
    assertThat(Walk.look(kitRules())).isEmpty();
    assertThat(Walk.look(kitRules().replaceFirst("\"atMost\": \"1.40", "\"atMost\": \"1.45")))
        .isNotEmpty();
  }

  @Test
  void rules_joinTheStandardOnes_andTheNearestToFailingIsPrintedFirst() throws IOException {
    Rulebook shop = Walk.join(kitRules(), mainJet("1.40 mm"), to);

    assertThat(shop.rule("kit-main-jet")).isPresent();
    assertThat(printed().lines()).hasSize(3);
  }

  @Test
  void ruleInJava_isCheckedOnEdits() {
    Walk.check(WinterReserve.RULE);
  }

  /** Without a trial nothing can be violated, and nothing has been tested. */
  @Test
  void laws_nameTheRulesThatNoTrialTested() throws IOException {
    LawReport laws = Walk.laws(Walk.join(kitRules(), mainJet("1.40 mm"), to), Stream.empty(), to);

    assertThat(laws.holds()).isTrue();
    assertThat(printed()).contains("never passed or never failed: kit-main-jet");
  }

  @Test
  void otherLimit_isTriedOnTheShopsSheets() throws IOException {
    Rulebook shop = Walk.join(kitRules(), mainJet("1.40 mm"), to);
    List<String> sheets =
        IntStream.rangeClosed(10, 24)
            .mapToObj(tenths -> SheetJson.write(valve(tenths / 10.0)))
            .toList();
    out.reset();

    Rulebook stricter = Walk.impact(shop, sheets.stream(), to);

    assertThat(stricter.edition()).isNotEqualTo(shop.edition());
    assertThat(printed().lines().count()).isBetween(1L, 14L);
    printed().lines().forEach(line -> assertThat(SheetImpactJson.read(line).differs()).isTrue());
  }

  @Test
  void waivedFinding_staysInTheReport() throws IOException {
    Rulebook shop = Walk.join(kitRules(), mainJet("1.40 mm"), to);

    Report waived =
        Walk.waive(shop, AssessedSetting.of(mainJet("1.00 mm")), LocalDate.of(2026, 11, 28));

    assertThat(waived.findings().get(0).waiver()).isPresent();
    assertThat(waived.unusedWaivers()).isEmpty();
  }

  /** The valves between the old and the new limit fail anew. */
  private static SetupSheet valve(double seat) {
    return SheetEdits.edited(
        mainJet("1.40 mm"),
        Map.of("/setting/carburettor/floatValve/seat", SheetEdits.text(seat + " mm")));
  }

  private static SetupSheet mainJet(String size) {
    return SheetEdits.edited(
        LawKit.plainSheet(), Map.of("/setting/mainJet", SheetEdits.text(size)));
  }

  private static String kitRules() throws IOException {
    try (InputStream file = KitPack.class.getResourceAsStream("kit-rules.json")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private static List<String> parts(Pattern pattern, String file) throws IOException {
    String text = Files.readString(DIRECTORY.resolve(file));
    return pattern.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
  }
}
