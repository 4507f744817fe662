package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.EachLanguage;
import dev.jetting.units.Area;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What rules from a file say of settings. */
class RuleFileTest {

  private static final RuleFile FILE = RuleFile.read(Documents.read("example-rules.json"));
  private static final AssessedSetting ALL_ROUND =
      TwoHundred.assessed(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);

  @Test
  void read_givesWhatTheFileSays() {
    Rule first = FILE.rules().get(0);

    assertThat(FILE).hasToString("bench kit 2");
    assertThat(FILE.rules())
        .extracting(Rule::id)
        .containsExactly(
            "kit-main-jet", "pilot-by-main", "lean-low-down", "filter-area", "right-screw");
    assertThat(first.answersTo("kit-main")).isTrue();
    assertThat(first.title()).isEqualTo("Main jet beyond the kit");
    assertThat(first.rationale()).startsWith("The kit was tried");
    assertThat(first.severity()).isEqualTo(Severity.WARNING);
    assertThat(first.band()).isEqualTo(ThrottleBand.eighths(6, 8));
    assertThat(FILE.rules().get(1).band()).isEqualTo(ThrottleBand.WHOLE);
  }

  @Test
  void tagsAndLink_areThoseOfTheRule_andOfItsResults() {
    RuleFile file = RuleFile.read(tagged("https://shop.example/rules#main"));
    Rulebook book = Rulebook.of("shop", "1", file.rules());

    assertThat(file.rules().get(0).tags()).containsExactly("kit", "main-jet");
    assertThat(book.tagged("kit").rules()).hasSize(1);
    assertThat(book.evaluate(ALL_ROUND).results())
        .filteredOn(result -> result.ruleId().equals("kit-main-jet"))
        .singleElement()
        .satisfies(
            result -> {
              assertThat(result.tags()).containsExactly("kit", "main-jet");
              assertThat(result.link()).isEqualTo("https://shop.example/rules#main");
            });
    assertThat(RuleFile.read(file.toJson())).isEqualTo(file);
  }

  /** A program may make it a link that a person follows. */
  @ParameterizedTest
  @ValueSource(
      strings = {"javascript:alert(1)", "file:///etc/passwd", "a b", "", "data:text/html,x"})
  void link_thatIsNoPageOrPath_isRefused(String link) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(tagged(link)))
        .withMessageStartingWith("$.rules[0].link: link \"" + link + "\": allowed one that begins")
        .satisfies(EachLanguage::of);
  }

  @Test
  void tag_thatIsNoWord_isRefusedWithItsPlace() {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(tagged("page.md").replace("\"main-jet\"", "\"Main jet\"")))
        .withMessageStartingWith("$.rules[0].tags[1]: ");
  }

  private static String tagged(String link) {
    return Documents.edited(
        "example-rules.json",
        "\"title\": \"Main jet beyond the kit\"",
        "\"tags\": [\"kit\", \"main-jet\"], \"link\": \"" + link + "\", \"title\": \"Main\"");
  }

  @Test
  void read_ofReaderAndStream_givesTheSame() throws IOException {
    String json = Documents.read("example-rules.json");

    assertThat(RuleFile.read(new StringReader(json))).isEqualTo(FILE).hasSameHashCodeAs(FILE);
    assertThat(RuleFile.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8))))
        .isEqualTo(FILE);
  }

  @Test
  void toJson_readsBackToAnEqualFile() {
    RuleFile read = RuleFile.read(FILE.toJson());

    assertThat(read).isEqualTo(FILE);
    assertThat(read.toJson()).isEqualTo(FILE.toJson());
    assertThat(RuleFile.read(FILE.toJson().replace("bench kit", "other kit"))).isNotEqualTo(FILE);
  }

  @Test
  void rulebook_holdsRulesFromFilesAndFromJava() {
    Rulebook both = StandardRulebook.rulebook().with(FILE.rules());

    assertThat(both.evaluate(ALL_ROUND).results())
        .hasSize(StandardRulebook.rulebook().rules().size() + 5)
        .noneMatch(result -> result.outcome().status() == Status.BROKEN);
  }

  @Test
  void finding_carriesMeasuredLimitMarginAndUnits() {
    Outcome outcome = judged("kit-main-jet", TwoHundred.ALL_ROUND.withMainJet(jet(1.34)));

    assertThat(outcome.status()).isEqualTo(Status.FAILED);
    Finding finding = outcome.findings().get(0);
    assertThat(outcome.findings()).hasSize(1);
    assertThat(finding.subject()).isEqualTo("setting.mainJet");
    assertThat(finding.measured()).isEqualTo(new Measure(1.34, "mm"));
    assertThat(finding.limit()).isEqualTo(new Measure(1.3, "mm"));
    assertThat(finding.margin().value()).isCloseTo(-0.04, within(1e-12));
    assertThat(finding.band()).isEqualTo(ThrottleBand.eighths(6, 8));
    assertThat(finding.text())
        .isEqualTo("The main jet of 1.34 mm is not within the kit's 1.30 mm.");
    assertThat(finding.remedy().text())
        .isEqualTo("Fit a main jet up to 1.30 mm, from the rich side.");
  }

  @Test
  void limits_areIncluded() {
    assertThat(judged("kit-main-jet", TwoHundred.ALL_ROUND.withMainJet(jet(1.30))).status())
        .isEqualTo(Status.PASSED);
    assertThat(judged("kit-main-jet", TwoHundred.ALL_ROUND.withMainJet(jet(1.20))).status())
        .isEqualTo(Status.PASSED);
    assertThat(
            judged("kit-main-jet", TwoHundred.ALL_ROUND.withMainJet(jet(1.19)))
                .findings()
                .get(0)
                .limit())
        .isEqualTo(new Measure(1.2, "mm"));
  }

  @Test
  void when_thatDoesNotHold_makesTheRuleNotApplicable() {
    Rule elsewhere =
        rule("kit-main-jet", "[\"30 mm slide carburettor\", \"slide-30\"]", "[\"slide-24\"]");

    Outcome outcome = elsewhere.evaluate(ALL_ROUND);
    assertThat(outcome.status()).isEqualTo(Status.NOT_APPLICABLE);
    assertThat(outcome.reason()).isEqualTo("only where carburettor is slide-24");
  }

  @Test
  void when_onWhatIsMissing_leavesTheRuleOpen() {
    Rule open =
        rule(
            "kit-main-jet",
            "{\"measure\": \"setting.carburettor.id\", \"oneOf\":"
                + " [\"30 mm slide carburettor\", \"slide-30\"]}",
            "{\"measure\": \"setting.intake.effectiveArea\", \"atLeast\": \"600 mm²\"}");

    assertThat(open.evaluate(ALL_ROUND))
        .isEqualTo(Outcome.notEvaluated("setting.intake.effectiveArea"));
  }

  @Test
  void missing_isNamed() {
    assertThat(judged("filter-area", TwoHundred.ALL_ROUND))
        .isEqualTo(Outcome.notEvaluated("setting.intake.effectiveArea"));
    assertThat(judged("filter-area", behind(700)).status()).isEqualTo(Status.PASSED);
    assertThat(judged("filter-area", behind(500)).findings())
        .extracting(Finding::text)
        .containsExactly("The filter passes as much as 500.00 mm², less than 600.00 mm².");
  }

  @Test
  void comparison_isWithAnotherMeasure() {
    Finding big =
        judged("pilot-by-main", TwoHundred.ALL_ROUND.withPilotJet(jet(0.7))).findings().get(0);
    Finding small =
        judged("pilot-by-main", TwoHundred.ALL_ROUND.withPilotJet(jet(0.3))).findings().get(0);

    assertThat(judged("pilot-by-main", TwoHundred.ALL_ROUND).status()).isEqualTo(Status.PASSED);
    assertThat(big.limit().value()).isCloseTo(0.63, within(1e-12));
    assertThat(big.margin().value()).isCloseTo(-0.07, within(1e-12));
    // Denied: more than 0.25 times the main jet.
    assertThat(small.limit().value()).isCloseTo(0.315, within(1e-12));
    assertThat(small.margin().value()).isCloseTo(-0.015, within(1e-12));
    assertThat(small.subject()).isEqualTo("setting.pilotJet");
  }

  @Test
  void overThrottle_findsWhereItIsWorst_insideTheBandAlone() {
    AssessedSetting lean =
        TwoHundred.assessed(
            TwoHundred.STANDARD, TwoHundred.ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.60)));
    double worst =
        lean.profile().points().stream()
            .filter(p -> ThrottleBand.eighths(1, 6).contains(p.mixture().throttle()))
            .mapToDouble(p -> p.leanRisk().value())
            .max()
            .orElseThrow();

    String rule =
        require(
            "{\"measure\": \"mixture.leanRisk\", \"take\": \"highest\","
                + " \"within\": {\"from\": \"1/8\", \"to\": \"3/4\"},"
                + " \"atMost\": {\"measure\": \"riding.acceptedRisk\"}}");

    Finding finding = only(rule).evaluate(lean).findings().get(0);

    assertThat(finding.measured()).isEqualTo(Measure.leanRisk(Probability.of(worst)));
    assertThat(finding.limit()).isEqualTo(Measure.leanRisk(Probability.of(0.1)));
    assertThat(lean.mixture(finding.band().from()).throttle()).isEqualTo(finding.band().from());
    assertThat(lean.profile().nearest(finding.band().from()).leanRisk().value()).isEqualTo(worst);
    assertThat(only(rule).evaluate(ALL_ROUND).status()).isEqualTo(Status.PASSED);
    assertThat(named("lean-low-down").evaluate(ALL_ROUND).status()).isEqualTo(Status.PASSED);
  }

  @Test
  void any_tellsTheNearestMiss() {
    String rule =
        require(
            "{\"any\": [{\"measure\": \"setting.mainJet\", \"atMost\": \"1 mm\"},"
                + "{\"measure\": \"setting.mainJet\", \"atMost\": \"1.2 mm\"},"
                + "{\"measure\": \"setting.mainJet\", \"atMost\": \"0.9 mm\"}]}");

    assertThat(only(rule).evaluate(ALL_ROUND).findings())
        .extracting(Finding::limit)
        .containsExactly(new Measure(1.2, "mm"));
  }

  @Test
  void all_tellsEachThatDoesNotHold_evenBesideWhatIsMissing() {
    String rule =
        require(
            "{\"all\": [{\"measure\": \"setting.mainJet\", \"atMost\": \"1 mm\"},"
                + "{\"measure\": \"setting.intake.effectiveArea\", \"atLeast\": \"1 mm²\"},"
                + "{\"measure\": \"setting.pilotJet\", \"atMost\": \"0.5 mm\"}]}");

    assertThat(only(rule).evaluate(ALL_ROUND).findings())
        .extracting(Finding::subject)
        .containsExactly("setting.mainJet", "setting.pilotJet");
  }

  @Test
  void any_withOneThatHolds_passesBesideWhatIsMissing() {
    String area = "{\"measure\": \"setting.intake.effectiveArea\", \"atLeast\": \"1 mm²\"}";
    String big = "{\"measure\": \"setting.mainJet\", \"atLeast\": \"1 mm\"}";
    String small = "{\"measure\": \"setting.mainJet\", \"atMost\": \"1 mm\"}";

    assertThat(only(require("{\"any\": [" + area + "," + big + "]}")).evaluate(ALL_ROUND).status())
        .isEqualTo(Status.PASSED);
    assertThat(only(require("{\"any\": [" + area + "," + small + "]}")).evaluate(ALL_ROUND))
        .isEqualTo(Outcome.notEvaluated("setting.intake.effectiveArea"));
  }

  @Test
  void text_isComparedAsItIs() {
    Setting airScrew =
        Setting.builder()
            .carburettor(TwoHundred.carburettor(ScrewKind.AIR, 2.5))
            .intake(Intake.openMouth())
            .pilotJet(jet(0.55))
            .screw(TwoHundred.ALL_ROUND.screw())
            .cutaway(TwoHundred.ALL_ROUND.cutaway())
            .idleLift(TwoHundred.ALL_ROUND.idleLift())
            .needleJet(TwoHundred.ALL_ROUND.needleJet())
            .needle(TwoHundred.NEEDLE)
            .clip(TwoHundred.ALL_ROUND.clip())
            .mainJet(jet(1.26))
            .build();

    assertThat(judged("right-screw", TwoHundred.ALL_ROUND).status()).isEqualTo(Status.PASSED);
    assertThat(judged("right-screw", airScrew).findings())
        .extracting(Finding::text)
        .containsExactly("The screw is air, not mixture.");
  }

  @Test
  void bandWithoutAssessedOpenings_leavesTheRuleOpen() {
    String rule =
        require(
            "{\"measure\": \"mixture.lambda\", \"take\": \"lowest\","
                + " \"within\": {\"from\": \"51 %\", \"to\": \"52 %\"}, \"atLeast\": 0.5}");

    assertThat(only(rule).evaluate(ALL_ROUND)).isEqualTo(Outcome.notEvaluated("mixture.lambda"));
  }

  @Test
  void take_isOfTheOpeningsInTheBand() {
    for (Take take : Take.values()) {
      String rule =
          require(
              "{\"measure\": \"mixture.needleJetSuction\", \"take\": \""
                  + Enums.name(take)
                  + "\", \"within\": {\"from\": 0.25, \"to\": 0.5}, \"atLeast\": \"20000 Pa\"}");
      double[] suctions =
          ALL_ROUND.profile().points().stream()
              .filter(p -> p.mixture().throttle().share() >= 0.25)
              .filter(p -> p.mixture().throttle().share() <= 0.5)
              .mapToDouble(p -> p.mixture().needleJetSuction().pascals())
              .toArray();
      double expected =
          switch (take) {
            case LOWEST -> java.util.Arrays.stream(suctions).min().orElseThrow();
            case HIGHEST -> java.util.Arrays.stream(suctions).max().orElseThrow();
            case MEAN -> { // evenly spaced there, so both ends count by half
              double ends = suctions[0] + suctions[suctions.length - 1];
              double sum = java.util.Arrays.stream(suctions).sum();
              yield (sum - ends / 2) / (suctions.length - 1);
            }
          };

      Finding finding = only(rule).evaluate(ALL_ROUND).findings().get(0);

      assertThat(finding.measured().value()).isCloseTo(expected, within(1e-9 * expected));
      assertThat(finding.measured().unit()).isEqualTo("Pa");
    }
  }

  @Test
  void everyMeasure_canBeReadOnASetting() {
    for (MeasureDefinition definition : MeasureDefinitions.all()) {
      String condition =
          definition instanceof MeasureDefinition.Word
              ? "{\"measure\": \"%s\", \"is\": \"x\"}"
              : definition instanceof MeasureDefinition.Swept
                  ? "{\"measure\": \"%s\", \"take\": \"mean\", \"atMost\":"
                      + " {\"measure\": \"%<s\", \"take\": \"highest\"}}"
                  : "{\"measure\": \"%s\", \"atMost\": {\"measure\": \"%<s\"}}";

      Outcome outcome = only(require(condition.formatted(definition.name()))).evaluate(ALL_ROUND);

      assertThat(outcome.status())
          .as(definition.name())
          .isNotIn(Status.BROKEN, Status.NOT_APPLICABLE);
    }
  }

  @Test
  void rule_narrowedFromOutside_seesTheNarrowBandAlone() {
    String rule =
        require("{\"measure\": \"mixture.speed\", \"take\": \"highest\", \"atMost\": \"1 rpm\"}");

    Finding whole = only(rule).evaluate(ALL_ROUND).findings().get(0);
    Finding narrow =
        only(rule).within(ThrottleBand.eighths(0, 4)).evaluate(ALL_ROUND).findings().get(0);

    assertThat(whole.band()).isEqualTo(ThrottleBand.at(ThrottleOpening.FULL));
    assertThat(narrow.band()).isEqualTo(ThrottleBand.at(ThrottleOpening.ofEighths(4)));
  }

  private static Rule named(String id) {
    return FILE.rules().stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
  }

  private static Outcome judged(String id, Setting setting) {
    return named(id).evaluate(TwoHundred.assessed(TwoHundred.STANDARD, setting));
  }

  private static Rule rule(String id, String piece, String replacement) {
    return RuleFile.read(Documents.edited("example-rules.json", piece, replacement))
        .rules()
        .stream()
        .filter(rule -> rule.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** A file of one rule with a condition. */
  private static String require(String condition) {
    return """
    {"format": "jetting rule file", "schemaVersion": 1, "name": "n", "version": "1", "rules": [
    {"id": "r", "title": "t", "rationale": "r", "severity": "note", "require": %s,
    "message": "{measured}", "remedy": "none"}]}
    """
        .formatted(condition);
  }

  private static Rule only(String file) {
    return RuleFile.read(file).rules().get(0);
  }

  private static JetBore jet(double millimetres) {
    return JetBore.ofMillimetres(millimetres);
  }

  private static Setting behind(double squareMillimetres) {
    return TwoHundred.ALL_ROUND.withIntake(
        Intake.filter("filter", Area.ofSquareMillimetres(squareMillimetres)));
  }
}
