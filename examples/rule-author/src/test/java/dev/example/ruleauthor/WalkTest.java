package dev.example.ruleauthor;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.ReportDifference.Side;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.json.LimitsJson;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.RuleFile;
import dev.jetting.rules.json.RuleRemark;
import dev.jetting.rules.json.SheetEdits;
import dev.jetting.rules.json.SheetImpactJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Trial;
import dev.jetting.rules.standard.StandardRulebook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
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

/** WALK.md and the pages of the guide show what is run here. */
class WalkTest {

  private static final Path DIRECTORY = Path.of(System.getProperty("basedir", ""));
  private static final Path GUIDE = DIRECTORY.resolve("../../jetting-rules/guide");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```java\\n(.*?)^```$");
  private static final Pattern STEP = Pattern.compile("(?ms)^ *// step\\n(.*?)^ *// end of step$");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);
  private static final String VALVE = "float valve capacity by full-throttle flow";

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);

  private static List<String> steps() throws IOException {
    return parts(STEP, DIRECTORY.resolve("src/test/java/dev/example/ruleauthor/Walk.java")).stream()
        .map(step -> step.stripTrailing().stripIndent() + "\n")
        .toList();
  }

  @Test
  void walk_showsTheStepsThatAreRunHere() throws IOException {
    assertThat(parts(BLOCK, DIRECTORY.resolve("WALK.md"))).isEqualTo(steps());
  }

  /** Each concept has a page, and each page an example that is run. */
  @Test
  void guide_showsNoCodeThatIsNotRunHere_andEachStepOnAPage() throws IOException {
    List<Path> pages;
    try (Stream<Path> files = Files.list(GUIDE)) {
      pages = files.sorted().toList();
    }
    List<String> shown = pages.stream().flatMap(page -> blocks(page).stream()).toList();

    assertThat(pages).allSatisfy(page -> assertThat(blocks(page)).isNotEmpty());
    assertThat(shown).containsExactlyInAnyOrderElementsOf(steps());
    String index = Files.readString(GUIDE.resolve("../RULES.md"));
    assertThat(pages)
        .allSatisfy(page -> assertThat(index).contains("(guide/" + page.getFileName() + ")"));
  }

  @Test
  void ruleFile_isReviewed_andAMisspeltCarburettorIsFound() throws IOException {
    String misspelt =
        kitRules()
            .replaceFirst(
                "\"require\"",
                "\"when\": {\"measure\": \"setting.carburettor.id\", \"is\": \"slide-30\"},"
                    + " \"require\"");

    assertThat(Walk.review(kitRules(), catalogue())).isEmpty();
    assertThat(Walk.review(misspelt, catalogue()))
        .extracting(RuleRemark::kind)
        .containsExactly(RuleRemark.Kind.UNKNOWN_TEXT);
  }

  @Test
  void examples_findAMistypedLimit() throws IOException {
    String mistyped = kitRules().replaceFirst("\"atMost\": \"1.40", "\"atMost\": \"1.45");

    assertThat(Walk.examples(RuleFile.read(kitRules()))).isEmpty();
    assertThat(Walk.examples(RuleFile.read(mistyped))).isNotEmpty();
  }

  @Test
  void rule_isCheckedOnEdits() throws IOException {
    Walk.check(RuleFile.read(kitRules()).rules().get(0));
  }

  @Test
  void rules_joinTheStandardOnes_andTheNearestToFailingIsPrintedFirst() throws IOException {
    Rulebook shop = Walk.join(kitRules(), mainJet("1.40 mm"), to);

    assertThat(shop.rule("kit-main-jet")).isPresent();
    assertThat(printed().lines()).hasSize(3);
  }

  /** Without a trial nothing can be violated, and nothing has been tested. */
  @Test
  void laws_nameTheRulesThatNoTrialTested() throws IOException {
    LawReport laws = Walk.laws(shop(), Stream.empty(), to);

    assertThat(laws.holds()).isTrue();
    assertThat(printed())
        .contains("never passed or never failed: kit-main-jet")
        .contains("never tried: margins");
  }

  @Test
  void remedies_ofTheShopsRulebook_helpAndEnd() throws IOException {
    LawReport remedies = Walk.remedies(shop(), Stream.of(Trial.of(mainJet("1.06 mm"))));

    assertThat(remedies.results().get(0).wasTriedAndHeld()).as(remedies.toString()).isTrue();
  }

  @Test
  void limits_areReplacedByADocument_andTheReportShowsWhoseTheyAre() throws IOException {
    Rulebook stricter =
        Walk.limits(shop(), stricterLimits(), AssessedSetting.of(mainJet("1.40 mm")), to);

    assertThat(stricter.edition().digest()).isNotEqualTo(shop().edition().digest());
    assertThat(printed())
        .contains("1.5")
        .contains("our hoses are long")
        .contains("given other limits float-valve-flow");
  }

  @Test
  void tags_chooseRules_andTheDigestSaysWhetherTheyAreTheSame() throws IOException {
    AssessedSetting setting = AssessedSetting.of(mainJet("1.40 mm"));
    Rulebook changes = Walk.tags(shop(), shop().evaluate(setting), setting, to);

    assertThat(printed()).contains("air-change.md").doesNotContain("lean-anywhere.md");
    assertThat(printed()).endsWith("false\n");
    Walk.tags(shop(), changes.evaluate(setting), setting, to);
    assertThat(printed()).endsWith("true\n");
  }

  @Test
  void otherLimit_isTriedOnTheShopsSheets() throws IOException {
    Rulebook stricter = shop().withLimits(LimitsJson.read(stricterLimits()));
    List<String> sheets =
        IntStream.rangeClosed(10, 24)
            .mapToObj(tenths -> SheetJson.write(valve(tenths / 10.0)))
            .toList();

    Walk.impact(shop(), stricter, sheets.stream(), to);

    assertThat(printed().lines().count()).isBetween(1L, 14L);
    printed().lines().forEach(line -> assertThat(SheetImpactJson.read(line).differs()).isTrue());
  }

  /** As after a new version: the report that was kept is of the rulebook before. */
  @Test
  void keptReport_isComparedWithThatOfTheRulesOfNow() throws IOException {
    Report kept = StandardRulebook.rulebook().evaluate(AssessedSetting.of(mainJet("1.41 mm")));

    ReportDifference difference = Walk.difference(ReportJson.write(kept), shop(), to);

    assertThat(difference.sides()).containsExactly(Side.RULEBOOK);
    assertThat(printed()).contains("NEW kit-main-jet, setting.mainJet: ");
  }

  @Test
  void waivedDanger_isNotCoveredOnceItIsWorse_andTheReportSaysBoth() throws IOException {
    SetupSheet lean = mainJet("1.06 mm");
    String kept = Walk.waive(shop(), AssessedSetting.of(lean), TODAY);

    Report same = Walk.waived(shop(), AssessedSetting.of(lean), kept, TODAY, to);
    assertThat(same.findings().get(0).severity()).isEqualTo(Severity.DANGER);
    assertThat(same.findings().get(0).waiver()).isPresent();
    assertThat(printed()).isEmpty();
    Report worse = Walk.waived(shop(), AssessedSetting.of(mainJet("1.04 mm")), kept, TODAY, to);
    assertThat(worse.findings().get(0).waiver()).isEmpty();
    assertThat(printed()).matches("accepted to .* %.*, now .* %.*\n");
  }

  @Test
  void kitIsWaivedByMachine_upToWhatWasAccepted() throws IOException {
    KitValidator validator = KitValidator.of(catalogue());
    Kit kit = KitJson.read(resource("kit.json"));
    KitValidation waived = Walk.waiveKit(validator, kit, TODAY);

    assertThat(validator.validate(kit, KitDepth.SETTING).passes()).isFalse();
    assertThat(waived.passes()).isTrue();
    assertThat(waived.unusedWaivers()).isEmpty();
  }

  private static Rulebook shop() throws IOException {
    return StandardRulebook.rulebook().with(RuleFile.read(kitRules()).rules());
  }

  private static String stricterLimits() {
    return LimitsJson.write(Map.of(VALVE, Coefficient.assumed(1.5, "1", "our hoses are long")));
  }

  private static Catalogue catalogue() throws IOException {
    return CatalogueJson.read(resource("catalogue.json"));
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
    return text(KitPack.class.getResourceAsStream("kit-rules.json"));
  }

  private static String resource(String name) throws IOException {
    return text(WalkTest.class.getResourceAsStream(name));
  }

  private static String text(InputStream in) throws IOException {
    try (in) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private static List<String> blocks(Path page) {
    try {
      return parts(BLOCK, page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> parts(Pattern pattern, Path file) throws IOException {
    String text = Files.readString(file);
    return pattern.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
  }
}
