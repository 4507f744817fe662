package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.kit.Shop;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What documents at their limits cost, in bytes that are allocated. A second of the processor
 * allocates half a gigabyte or more here, so a quarter of one stays within it. Each bound is twice
 * what was measured.
 */
class BudgetTest {

  private static final double MOST_MEGABYTES = 250;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Loads the classes and fills the caches, with small documents. */
  @BeforeAll
  static void warmUp() {
    SetupSheet sheet = SheetJson.read(Documents.read("example-sheet.json"));
    RuleFile file = RuleFile.read(Documents.read("example-rules.json"));
    Rulebook book = StandardRulebook.rulebook().with(file.rules());
    Report report = book.evaluate(AssessedSetting.of(sheet));
    assertThat(SheetJson.write(sheet)).isNotEmpty();
    assertThat(file.review()).isEmpty();
    assertThat(file.check(Map.of("plain", sheet))).isNotEmpty();
    assertThat(ReportText.of(report)).isNotEmpty();
    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
    assertThat(ReportDifference.between(report, report).isNone()).isTrue();
    assertThat(CatalogueJson.read(CatalogueJson.write(Shop.CATALOGUE))).isEqualTo(Shop.CATALOGUE);
    assertThat(WaiversJson.read(WaiversJsonTest.DOCUMENT)).isNotEmpty();
    KitValidator validator = KitValidator.of(Shop.CATALOGUE);
    assertThat(
            validator.validate(KitJson.read(KitJson.write(Shop.kit())), KitDepth.SETTING).passes())
        .isTrue();
  }

  private static void assertCosts(String what, double most, Supplier<?> work) {
    assertThat(most).isLessThanOrEqualTo(MOST_MEGABYTES);
    assertThat(Allocation.megabytes(work)).as(what + ", megabytes").isBetween(0.0, most);
  }

  private static ObjectNode tree(String json) {
    try {
      return (ObjectNode) MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e); // the examples are JSON
    }
  }

  /** Two hundred points of each curve, and five hundred parts of each kind. */
  private static String largestSheet() {
    ObjectNode sheet = tree(SheetJson.write(SheetJson.read(Documents.read("example-sheet.json"))));
    for (String curve : List.of("/engine/deliveryRatio", "/engine/exhaust/deliveryFactor")) {
      ArrayNode points = (ArrayNode) sheet.at(curve + "/points");
      ObjectNode first = (ObjectNode) points.get(0);
      points.removeAll();
      IntStream.range(0, 200)
          .forEach(i -> points.add(first.deepCopy().put("speed", 500 + 40 * i + " rpm")));
    }
    ObjectNode parts = MAPPER.createObjectNode();
    ObjectNode needle = (ObjectNode) sheet.at("/setting/needle");
    for (String kind : List.of("mainJets", "pilotJets", "cutaways", "needleJets", "needles")) {
      parts.putArray(kind);
    }
    for (int i = 0; i < 500; i++) {
      ((ArrayNode) parts.get("mainJets")).add(0.8 + i / 625.0 + " mm");
      ((ArrayNode) parts.get("pilotJets")).add(0.3 + i / 1000.0 + " mm");
      ((ArrayNode) parts.get("cutaways")).add(1 + i / 100.0 + " mm");
      ((ArrayNode) parts.get("needleJets"))
          .addObject()
          .put("bore", 2.6 + i / 2500.0 + " mm")
          .put("neck", "0 mm");
      ((ArrayNode) parts.get("needles")).add(needle.deepCopy().put("id", "needle " + i));
    }
    sheet.set("parts", parts);
    return sheet.toString();
  }

  @Test
  void largestSheet_itsReportAndPages() {
    String json = largestSheet();
    assertCosts("read", 8, () -> SheetJson.read(json));
    SetupSheet sheet = SheetJson.read(json);
    assertCosts("write", 20, () -> SheetJson.write(sheet));
    assertCosts(
        "report", 10, () -> StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet)));
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
    assertCosts("text", 7, () -> ReportText.of(report));
    assertCosts("JSON", 30, () -> ReportJson.write(report));
    String written = ReportJson.write(report);
    assertCosts("JSON read", 13, () -> ReportJson.read(written));
  }

  /** Each rule fails by each of its conditions. */
  private static String largestRuleFile() {
    String conditions =
        IntStream.range(0, 9)
            .mapToObj(
                i -> "{'measure': 'mixture.lambda', 'take': 'highest', 'atMost': 0.50" + i + "}")
            .collect(Collectors.joining(","));
    String rules =
        IntStream.range(0, 200)
            .mapToObj(
                i ->
                    "{'id': 'r"
                        + i
                        + "', 'title': 't', 'rationale': 'r', 'severity': 'note', 'require': {'all': ["
                        + conditions
                        + "]}, 'message': '{measure} {measured} {limit} {throttle}', 'remedy': 'y'}")
            .collect(Collectors.joining(","));
    return ("{'format': 'jetting rule file', 'schemaVersion': 1, 'name': 'n', 'version': '1',"
            + "'rules': ["
            + rules
            + "]}")
        .replace('\'', '"');
  }

  @Test
  void largestRuleFile_itsReviewReportAndPages() {
    String json = largestRuleFile();
    assertCosts("read", 21, () -> RuleFile.read(json));
    RuleFile file = RuleFile.read(json);
    assertCosts("review", 40, file::review);
    Rulebook book = Rulebook.of("strangers", "1", file.rules());
    AssessedSetting setting = AssessedSetting.of(LawKit.plainSheet());
    assertCosts("report", 130, () -> book.evaluate(setting));
    Report report = book.evaluate(setting);
    assertThat(report.findings()).hasSize(1800);
    assertCosts("text", 170, () -> ReportText.of(report));
    assertCosts("JSON", 230, () -> ReportJson.write(report));
  }

  /** What each of the four hundred examples costs is an assessment. */
  @Test
  void examplesOfARuleFile_costAnAssessmentEach() {
    String twenty =
        String.join(
            ",",
            Collections.nCopies(
                20,
                "{'on': 'plain', 'edits': {'/setting/mainJet': '1.3 mm'}, 'expect': 'passed'}"));
    RuleFile file =
        RuleFile.read(
            ("{'format': 'jetting rule file', 'schemaVersion': 1, 'name': 'n', 'version': '1',"
                    + "'rules': [{'id': 'r', 'title': 't', 'rationale': 'r', 'severity': 'note',"
                    + "'require': {'measure': 'mixture.leanRisk', 'take': 'highest', 'atMost': 1},"
                    + "'message': 'm', 'remedy': 'y', 'examples': ["
                    + twenty
                    + "]}]}")
                .replace('\'', '"'));
    Map<String, SetupSheet> sheets = Map.of("plain", LawKit.plainSheet());
    assertCosts("twenty examples", 47, () -> file.check(sheets));
  }

  /** A thousand findings of a rule on one subject: each is looked for among the others. */
  @Test
  void reportOfManyFindingsOfARule_itsPagesAndItsDifference() {
    Rule[] rules =
        IntStream.range(0, 5)
            .mapToObj(
                i ->
                    Rule.named("many-" + i)
                        .severity(Severity.DANGER)
                        .judging(
                            setting ->
                                Outcome.of(
                                    IntStream.range(0, 1000)
                                        .mapToObj(BudgetTest::finding)
                                        .toList())))
            .toArray(Rule[]::new);
    Report report =
        Rulebook.of("many", "1", List.of(rules)).evaluate(AssessedSetting.of(LawKit.plainSheet()));
    String json = ReportJson.write(report);
    assertThat(json).hasSizeBetween(2_000_000, 8_000_000);
    assertCosts("read", 105, () -> ReportJson.read(json));
    Report read = ReportJson.read(json);
    assertCosts("difference", 4, () -> ReportDifference.between(report, read));
  }

  private static Finding finding(int i) {
    return Finding.above("setting", Measure.ratio(2 + i), Measure.ratio(1), ThrottleBand.WHOLE)
        .says("finding " + i, "y");
  }

  @Test
  void manyWaivers_readAndTried() {
    List<Waiver> waivers =
        IntStream.range(0, 4000)
            .mapToObj(
                i ->
                    Waiver.ofRule("rule-" + i).on("setting.mainJet").by("A. Weaver").because("why"))
            .toList();
    String json = WaiversJson.write(waivers);
    assertCosts("read", 8, () -> WaiversJson.read(json));
    AssessedSetting setting = AssessedSetting.of(LawKit.plainSheet());
    assertCosts(
        "report",
        17,
        () -> StandardRulebook.rulebook().evaluate(setting, waivers, LocalDate.EPOCH));
  }

  /** Kits come by the hundred thousand, so that no check of one makes a sentence. */
  @Test
  void thousandKits_read() {
    String line = KitJson.writeLine(Shop.kit());
    assertCosts(
        "thousand kits, kilobytes each",
        8,
        () -> {
          for (int i = 0; i < 1000; i++) {
            KitJson.read(line);
          }
          return line;
        });
  }

  @Test
  void largestKitAndCatalogue() {
    Kit few = Shop.kit();
    Kit kit = few.withRecommendations(Collections.nCopies(50, few.recommendations().get(0)));
    String json = KitJson.writeLine(kit);
    assertCosts("kit read", 0.5, () -> KitJson.read(json));
    Catalogue catalogue =
        Shop.CATALOGUE.withParts(
            IntStream.range(0, 10_000)
                .mapToObj(
                    i ->
                        Part.builder()
                            .id("further main " + i)
                            .description("one of very many jets")
                            .series("mains")
                            .shape(new PartShape.JetByBore(JetBore.ofMillimetres(1 + i / 1e5)))
                            .build())
                .toList());
    String written = CatalogueJson.write(catalogue);
    assertCosts("catalogue read", 42, () -> CatalogueJson.read(written));
    KitValidator validator = KitValidator.of(catalogue);
    assertCosts("kit, fit", 1, () -> validator.validate(kit, KitDepth.FIT));
    assertCosts("kit, setting", 4, () -> validator.validate(few, KitDepth.SETTING));
    ObjectNode manyFuels = tree(CatalogueJson.write(Shop.CATALOGUE));
    ArrayNode fuels = (ArrayNode) manyFuels.at("/markets/0/fuels");
    while (fuels.size() < 10) {
      fuels.add(fuels.get(0).deepCopy());
    }
    KitValidator inManyFuels = KitValidator.of(CatalogueJson.read(manyFuels.toString()));
    assertSearches(
        "reports of the largest kit, megabytes",
        1400,
        () -> inManyFuels.validate(kit, KitDepth.SETTING));
  }

  /** Each reading is at an opening of its own, and contradicts the ones beside it. */
  @Test
  void sessionOfEightyContradictoryPlugs_itsNextStepAndItsPage() {
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG));
    TuningSession session =
        TuningSession.beginning(SheetJson.read(Documents.read("example-sheet.json")))
            .checking(Set.of(Check.values()));
    for (int i = 1; i <= 80; i++) {
      Evidence plug = new Evidence.Colour(i % 2 == 0 ? PlugColour.PALE : PlugColour.BLACK);
      session =
          session.observing(
              new Observation(
                  ThrottleOpening.ofShare(i / 80.0), EngineSpeed.ofRpm(1500 + 75 * i), plug));
    }
    TuningSession longest = session;
    assertSearches("next step, megabytes", 460, () -> tuner.next(longest));
    assertSearches("page, megabytes", 930, () -> SessionText.of(longest, tuner));
  }

  /** The most that anybody waits for: a plan that tries as many settings as it may. */
  @Test
  void planForTheLargestSheet() {
    AssessedSetting setting = AssessedSetting.of(SheetJson.read(largestSheet()));
    Adviser adviser = Adviser.of(StandardRulebook.rulebook());
    assertSearches("plan, megabytes", 2000, () -> adviser.advise(setting));
  }

  /** Arithmetic allocates a gigabyte a second; nothing of it is held. */
  private static void assertSearches(String what, double most, Supplier<?> work) {
    assertThat(Allocation.megabytes(work)).as(what).isBetween(10.0, most);
  }
}
