package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.kit.Shop;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What a stranger's document may cost is bounded by counts, not by a clock. */
class CostTest {

  private static final AssessedSetting SETTING =
      TwoHundred.assessed(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);

  @Test
  void session_ofManyObservations_isRefused() {
    TuningSession session = SessionJson.read(Documents.read("example-session.json"));
    TuningStep step =
        session.steps().stream().filter(s -> !s.observations().isEmpty()).findFirst().orElseThrow();
    List<TuningStep> steps = new ArrayList<>(session.steps());
    steps.add(
        new TuningStep(
            step.setup(), Collections.nCopies(1280, step.observations().get(0)), Set.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TuningSession(session.sheet(), Set.of(), steps))
        .withMessageContaining(" observations of a tuning session: allowed at most 80");
  }

  @Test
  void session_ofManySteps_isRefused() {
    TuningSession session = SessionJson.read(Documents.read("example-session.json"));
    List<TuningStep> steps =
        Collections.nCopies(81, new TuningStep(session.sheet().setup(), List.of(), Set.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TuningSession(session.sheet(), Set.of(), steps))
        .withMessage("81 steps of a tuning session: allowed at most 80");
  }

  /** A name of 9900 letters is compared with none of the known ones. */
  @Test
  void measure_ofAVeryLongName_isRefusedWithoutAHint() {
    String file =
        Documents.read("example-rules.json")
            .replaceFirst("\"measure\": \"[^\"]*\"", "\"measure\": \"" + "m".repeat(9900) + '"');
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(file))
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(1000));
    assertThat(Nearest.meant("m".repeat(61), List.of("m".repeat(60)))).isEmpty();
    assertThat(Nearest.meant("m".repeat(60), List.of("m".repeat(59)))).isNotEmpty();
  }

  @Test
  void template_ofManyPlaceholders_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Template("{limit}".repeat(11)))
        .withMessage("11 placeholders: allowed at most 10");
    assertThat(new Template("{limit}".repeat(10)).text()).hasSize(70);
  }

  /** Fifty texts of a thousand letters each, ten times in a message, are still a short message. */
  @Test
  void finding_ofManyLongTexts_isShort() {
    String texts = ("\"" + "x".repeat(990) + "\",").repeat(49) + "\"y\"";
    String file =
        """
        {"format": "jetting rule file", "schemaVersion": 1, "name": "n", "version": "1", "rules": [
          {"id": "long", "title": "t", "rationale": "r", "severity": "warning",
           "require": {"measure": "engine.id", "oneOf": [%s]},
           "message": "%s", "remedy": "%s"}]}
        """
            .formatted(texts, "{limit}".repeat(10), "{limit}".repeat(10));
    Rule rule = RuleFile.read(file).rules().get(0);
    assertThat(rule.evaluate(SETTING).findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.text()).hasSizeLessThan(3000));
  }

  /** What is longer than the reader of reports takes comes out as a broken rule that it reads. */
  @Test
  void findingLongerThanReportsAreRead_breaksItsRuleAndTheReportReadsBack() {
    String text = "x".repeat(10_001);
    Rule wordy =
        Rule.named("wordy")
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above(
                                "setting", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
                            .says(text, "y")));
    Rule reasoned = Rule.named("reasoned").judging(setting -> Outcome.notApplicable(text));
    Report report = Rulebook.of("book", "1", List.of(wordy, reasoned)).evaluate(SETTING);
    assertThat(report.results())
        .allMatch(result -> result.outcome().status() == Outcome.Status.BROKEN);
    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rule.named("titled").title(text))
        .withMessage("title of rule titled of 10001 characters: allowed at most 10000");
  }

  /** An id from outside goes into the message shortened and on one line. */
  @Test
  void idThatIsNone_isQuotedOnOneLine() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rule.named("a\u202e\u001b\n" + "x".repeat(1000)))
        .satisfies(
            e ->
                assertThat(e.getMessage())
                    .hasSizeLessThan(200)
                    .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}]"));
  }

  @Test
  void faultOfAJudge_isShortened() {
    Rule rule =
        Rule.named("loud")
            .judging(
                setting -> {
                  throw new IllegalStateException("x".repeat(100_000));
                });
    Outcome outcome = rule.evaluate(SETTING);
    assertThat(outcome.reason()).hasSize(501).endsWith("…");
  }

  /** What is looked through at every opening, speed or part is short. */
  @Test
  void longLists_areRefusedWithTheirField() {
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(
            () ->
                new RpmCurve(
                    IntStream.range(0, 201).mapToObj(i -> RpmCurve.Point.of(1000 + i, 1)).toList()))
        .withMessage("201 points of a curve over engine speed: allowed at most 200")
        .satisfies(e -> assertThat(e.field()).isEqualTo("points"));
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(
            () ->
                new RidingProfile(
                    IntStream.range(0, 201)
                        .mapToObj(
                            i -> new RidingProfile.Point(ThrottleOpening.ofShare(i / 200.0), 1))
                        .toList()))
        .withMessage("201 points of a riding profile: allowed at most 200");
    Kit kit = Shop.kit();
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(
            () ->
                Kit.builder()
                    .id(kit.id())
                    .description(kit.description())
                    .family(kit.family())
                    .parts(Collections.nCopies(501, "main 126"))
                    .market(kit.market())
                    .recommendations(kit.recommendations())
                    .build())
        .withMessageEndingWith(": allowed at most 500");
  }

  @Test
  void manyPartsAtHand_areRefusedWithTheFieldOfTheirKind() {
    Setting own = TwoHundred.ALL_ROUND;
    PartsAtHand none = PartsAtHand.unknown();
    Map<String, ThrowingCallable> kinds =
        Map.of(
            "pilotJets", () -> none.withPilotJets(many(own.pilotJet())),
            "cutaways", () -> none.withCutaways(many(own.cutaway())),
            "needleJets", () -> none.withNeedleJets(many(own.needleJet())),
            "needles", () -> none.withNeedles(many(own.needle())),
            "mainJets", () -> none.withMainJets(many(own.mainJet())));
    kinds.forEach(
        (field, kind) ->
            assertThatExceptionOfType(InvalidValueException.class)
                .isThrownBy(kind)
                .satisfies(e -> assertThat(e.field()).isEqualTo(field)));
  }

  private static <P> List<P> many(P part) {
    return Collections.nCopies(501, part);
  }

  /** Each part of the family stands on the sheet of each machine. */
  @Test
  void catalogueOfMoreNeedlesThanASheetTakes_isRefusedWithTheFamily() {
    Catalogue least = Shop.CATALOGUE.withParts(needles(497));
    assertThat(KitValidator.of(least).validate(Shop.kit(), KitDepth.SETTING).passes()).isTrue();
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> Shop.CATALOGUE.withParts(needles(498)))
        .withMessage("501 parts for family slide 30 of the kind needle: allowed at most 500")
        .satisfies(e -> assertThat(e.field()).isEqualTo("families[0].takes"));
  }

  private static List<Part> needles(int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                Part.builder()
                    .id("more " + i)
                    .description("one of many")
                    .series("needles")
                    .shape(new PartShape.NeedleShape(TwoHundred.NEEDLE.withId("more " + i)))
                    .build())
        .toList();
  }

  /** A remark on each text would take minutes to place, and nobody would read them. */
  @Test
  void reviewOfAFileOfUnknownTexts_stopsAt200Remarks() {
    String texts =
        IntStream.range(0, 50).mapToObj(i -> "'k" + i + "'").collect(Collectors.joining(","));
    String any = repeated(19, "{'measure': 'engine.induction.kind', 'oneOf': [" + texts + "]}");
    List<RuleRemark> remarks =
        RuleFile.read(rules(100, "'require': {'any': [" + any + "]}")).review();
    assertThat(remarks).hasSize(200);
    assertThat(remarks.get(199).pointer()).isEqualTo("/rules/0/require/any/3/oneOf/49");
    assertThat(remarks.get(199).line()).isEqualTo(1);
  }

  /** Each rule is within its limits; all of them together are not. */
  @Test
  void rulesOfManyConditionsOrExamplesTogether_areRefusedAtTheFirstTooMany() {
    String ninety = repeated(90, "{'measure': 'engine.displacement', 'atLeast': '100 cm³'}");
    String conditions = rules(23, "'require': {'all': [" + ninety + "]}");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(conditions))
        .withMessage(
            "$.rules[21]: 2002 conditions of the rules up to this one: allowed at most 2000");
    String twenty = repeated(20, "{'on': 'plain', 'expect': 'passed'}");
    String examples =
        rules(
            21,
            "'require': {'measure': 'engine.displacement', 'atLeast': '100 cm³'}, 'examples': ["
                + twenty
                + "]");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(examples))
        .withMessage("$.rules[20]: 420 examples of the rules up to this one: allowed at most 400");
    assertThat(
            RuleFile.read(examples.replace("{\"on\": \"plain\", \"expect\": \"passed\"},", ""))
                .rules())
        .hasSize(21);
  }

  private static String repeated(int times, String text) {
    return String.join(",", Collections.nCopies(times, text));
  }

  private static String rules(int count, String judging) {
    String all =
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    "{'id': 'r"
                        + i
                        + "', 'title': 't', 'rationale': 'r', 'severity': 'note', "
                        + judging
                        + ", 'message': 'm', 'remedy': 'y'}")
            .collect(Collectors.joining(",\n"));
    return ("{'format': 'jetting rule file', 'schemaVersion': 1, 'name': 'n', 'version': '1',"
            + " 'rules': ["
            + all
            + "]}")
        .replace('\'', '"');
  }

  @Test
  void outcomeOfManyFindings_isRefusedAndBreaksItsRule() {
    Finding finding =
        Finding.above("setting", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
            .says("x", "y");
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> Outcome.of(Collections.nCopies(1001, finding)))
        .withMessage("1001 findings of an outcome: allowed at most 1000");
    Rule many =
        Rule.named("many").judging(setting -> Outcome.of(Collections.nCopies(1001, finding)));
    assertThat(many.evaluate(SETTING).status()).isEqualTo(Outcome.Status.BROKEN);
  }

  /** The same finding named again and again would be compared with itself again and again. */
  @Test
  void reportThatRanksAFindingTwice_isRefused() {
    String json = Documents.read("report.golden.json");
    String ranks = json.substring(json.indexOf("\n  \"findings\": ["));
    String first = ranks.substring(ranks.indexOf('{'), ranks.indexOf('}') + 1);
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () -> ReportJson.read(json.replace(ranks, ranks.replace(first, first + "," + first))))
        .withMessageEndingWith(": allowed those of the results, each as often as there");
  }

  @Test
  void sheetOfManyPartsAtHand_isRefusedWithItsField() {
    SetupSheet sheet = SheetJson.read(Documents.read("example-sheet.json"));
    String jets = String.join(",", Collections.nCopies(501, "\"1.2 mm\""));
    String json =
        SheetJson.write(sheet.withParts(PartsAtHand.unknown()))
            .replaceFirst("\\s*}\\s*$", ", \"parts\": {\"mainJets\": [" + jets + "]}}");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read(json))
        .satisfies(e -> assertThat(e.path()).isEqualTo("$.parts.mainJets"))
        .withMessageContaining("501 main jets at hand");
  }
}
