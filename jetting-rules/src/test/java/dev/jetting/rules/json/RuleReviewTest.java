package dev.jetting.rules.json;

import static java.math.RoundingMode.HALF_UP;
import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.rules.laws.LawKit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RuleReviewTest {

  private static final String MAIN = "{'measure': 'setting.mainJet', ";

  /** With a filter, and with needle parts that each can be made smaller still. */
  private static final SetupSheet SMALL =
      SheetEdits.edited(
          LawKit.plainSheet(),
          Map.of(
              "/setting/intake", "{\"id\": \"filter\", \"effectiveArea\": \"700 mm²\"}",
              "/setting/needle/tapers", "[]",
              "/setting/needle/cylinder", "\"0.4 mm\"",
              "/setting/needleJet/bore", "\"0.5 mm\""));

  private static final String RISK = "{'measure': 'mixture.leanRisk', 'take': 'highest', ";

  static Stream<Arguments> odd() {
    return Stream.of(
        odd(
            MAIN + "'atLeast': '1.40 mm', 'atMost': '1.10 mm'}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "no setting meets this, so that the rule never passes: "
                + "(main jet at most 1.10 mm and main jet at least 1.40 mm)"),
        odd(
            RISK + "'atMost': '100 %'}",
            Kind.ALWAYS_HOLDS,
            "/rules/0/require",
            "every setting meets this"),
        odd(
            "{'measure': 'riding.acceptedRisk', 'atMost': '60 %'}",
            Kind.ALWAYS_HOLDS, "/rules/0/require", "accepted risk at most 60.0 %"),
        odd(
            "{'all': [" + MAIN + "'atLeast': '1.10 mm'}, " + MAIN + "'atLeast': '1.00 mm'}]}",
            Kind.ADDS_NOTHING,
            "/rules/0/require/all/1",
            "adds nothing to the conditions beside it: main jet at least 1.00 mm"),
        odd(
            "{'any': [" + MAIN + "'atLeast': '1.10 mm'}, " + MAIN + "'atLeast': '1.20 mm'}]}",
            Kind.ADDS_NOTHING,
            "/rules/0/require/any/1",
            "main jet at least 1.20 mm"),
        odd(
            "{'any': [" + MAIN + "'atMost': '1.10 mm'}, " + MAIN + "'atLeast': '1.10 mm'}]}",
            Kind.ALWAYS_HOLDS,
            "/rules/0/require",
            "every setting meets this"),
        odd(
            "{'not': {'not': {'all': ["
                + MAIN
                + "'atMost': '1.10 mm'}, {'not': "
                + MAIN
                + "'atMost': '1.10 mm'}}]}}}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "no setting meets this"),
        odd(
            "{'all': [{'measure': 'setting.needle.id', 'is': 'one'}, "
                + "{'measure': 'setting.needle.id', 'oneOf': ['two', 'three']}]}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "needle is one and needle is two or three"),
        odd(
            "{'all': [{'measure': 'mixture.lambda', 'take': 'highest', 'atMost': '0.9'}, "
                + "{'measure': 'mixture.lambda', 'take': 'lowest', 'atLeast': '1.0'}]}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "no setting meets this"),
        odd(
            "{'measure': 'setting.pilotJet', 'atMost': {'measure': 'setting.pilotJet'}}",
            Kind.ALWAYS_HOLDS,
            "/rules/0/require",
            "every setting meets this"),
        odd(
            "{'measure': 'setting.screw.kind', 'is': 'fuel'}",
            Kind.UNKNOWN_TEXT,
            "/rules/0/require/is",
            "setting.screw.kind is never \"fuel\"; known \"air\", \"mixture\""),
        odd(
            "{'measure': 'engine.induction.kind', 'oneOf': ['reed valve', 'reed-valves']}",
            Kind.UNKNOWN_TEXT,
            "/rules/0/require/oneOf/1",
            "engine.induction.kind is never \"reed-valves\", perhaps \"reed valve\"; known"),
        odd(
            "{'measure': 'engine.displacement', 'atLeast': '5000 cm³'}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "no setting meets this"),
        odd(
            "{'measure': 'riding.coldest.temperature', 'atLeast': '-60 °C'}",
            Kind.ALWAYS_HOLDS,
            "/rules/0/require",
            "every setting meets this"),
        odd(
            "{'all': [{'measure': 'mixture.lambda', 'take': 'lowest', 'atLeast': '1.0'}, "
                + "{'measure': 'mixture.lambda', 'take': 'highest', "
                + "'within': {'from': '1/4', 'to': '1/2'}, 'atMost': '0.9'}]}",
            Kind.NEVER_HOLDS,
            "/rules/0/require",
            "no setting meets this"));
  }

  private static Arguments odd(String require, Kind kind, String pointer, String words) {
    return Arguments.of(require, kind, pointer, words);
  }

  @ParameterizedTest
  @MethodSource("odd")
  void review_ofAnOddCondition_remarksOnItAlone(
      String require, Kind kind, String pointer, String words) {
    List<RuleRemark> remarks = RuleFile.read(file(rule("one", "warning", require))).review();

    assertThat(remarks).hasSize(1);
    assertThat(remarks.get(0).kind()).isEqualTo(kind);
    assertThat(remarks.get(0).pointer()).isEqualTo(pointer);
    assertThat(remarks.get(0).message()).contains(words);
  }

  /** Each is a condition that a careful author may write. */
  static Stream<String> sound() {
    return Stream.of(
        MAIN + "'atLeast': '1.10 mm', 'atMost': '1.10 mm'}",
        MAIN + "'atLeast': '1.10 mm', 'atMost': '1.40 mm'}",
        RISK + "'atMost': '99 %'}",
        "{'measure': 'overrun.fuelShareOfOpen', 'atMost': '100 %'}",
        "{'all': [{'measure': 'mixture.lambda', 'take': 'highest', 'atMost': '1.1'}, "
            + "{'measure': 'mixture.lambda', 'take': 'mean', 'atMost': '1.0'}]}",
        "{'all': [{'measure': 'mixture.lambda', 'take': 'highest', 'atMost': '1.1'}, "
            + "{'measure': 'mixture.lambda', 'take': 'lowest', "
            + "'within': {'from': '1/4', 'to': '1/2'}, 'atLeast': '1.0'}]}",
        "{'measure': 'riding.coldest.temperature', 'atLeast': '-59 °C'}",
        "{'measure': 'engine.induction.kind', 'is': 'unknown inlet'}",
        "{'any': [" + MAIN + "'atLeast': '1.40 mm'}, " + MAIN + "'atMost': '1.10 mm'}]}",
        "{'measure': 'setting.pilotJet', 'atMost': {'measure': 'setting.mainJet', 'times': 0.5}}");
  }

  @ParameterizedTest
  @MethodSource("sound")
  void review_ofASoundCondition_keepsSilent(String require) {
    assertThat(RuleFile.read(file(rule("one", "warning", require))).review()).isEmpty();
  }

  @Test
  void review_namesLineAndColumnOfTheDocumentThatWasRead() {
    String json =
        file(rule("one", "warning", MAIN + "'atLeast': '1.40 mm', 'atMost': '1.10 mm'}"))
            .replace("\"require\": ", "\n\n  \"require\":\n    ");

    RuleRemark remark = RuleFile.read(json).review().get(0);

    assertThat(json.lines().toList().get(remark.line() - 1).substring(remark.column() - 1))
        .startsWith("{\"measure\": \"setting.mainJet\"");
    assertThat(remark).hasToString("line 4, column 5, rule one: " + remark.message());
  }

  @Test
  void review_whereTheRuleAppliesAlone() {
    String applies = "'when': " + MAIN + "'atMost': '1.10 mm'}, ";
    RuleFile never =
        RuleFile.read(file(applies + rule("one", "note", MAIN + "'atLeast': '1.20 mm'}")));
    RuleFile always =
        RuleFile.read(file(applies + rule("one", "note", MAIN + "'atMost': '1.20 mm'}")));

    assertThat(never.review())
        .singleElement()
        .extracting(RuleRemark::kind)
        .isEqualTo(Kind.NEVER_HOLDS);
    assertThat(always.review())
        .singleElement()
        .extracting(RuleRemark::kind)
        .isEqualTo(Kind.ALWAYS_HOLDS);
    assertThat(always.review().get(0).message()).contains("where the rule applies");
  }

  @Test
  void review_findsRulesThatAnotherImpliesOrDoubles() {
    String wide = MAIN + "'atMost': '1.20 mm'}";
    String narrow = MAIN + "'atMost': '1.40 mm'}";

    assertThat(remarks(rule("one", "danger", wide), rule("two", "warning", narrow)))
        .containsExactly(Kind.IMPLIED + " two: fails only where rule one fails too");
    assertThat(remarks(rule("one", "danger", narrow), rule("two", "danger", wide)))
        .containsExactly(Kind.IMPLIED + " one: fails only where rule two fails too");
    assertThat(
            remarks(rule("one", "danger", wide), rule("two", "danger", "{'all': [" + wide + "]}")))
        .containsExactly(Kind.DOUBLED + " two: fails just where rule one fails");
  }

  @Test
  void review_findsThatARuleOfAPartOfTheThrottleIsImplied() {
    String whole = "{'measure': 'mixture.lambda', 'take': 'highest', 'atMost': '0.9'}";
    String middle = "'band': {'from': '1/4', 'to': '3/4'}, ";

    assertThat(remarks(rule("one", "danger", whole), middle + rule("two", "danger", whole)))
        .containsExactly(Kind.IMPLIED + " two: fails only where rule one fails too");
    assertThat(remarks(middle + rule("one", "danger", whole), rule("two", "danger", whole)))
        .containsExactly(Kind.IMPLIED + " one: fails only where rule two fails too");
  }

  /** Each range is at least as wide as what a sheet takes, so that a remark is never wrong. */
  @ParameterizedTest
  @MethodSource("rangesOfSheets")
  void ranges_leaveOutNothingThatASheetTakes(String measure, Interval range) {
    Dimension dimension =
        ((MeasureDefinition.Numeric) MeasureDefinitions.named(measure).orElseThrow()).dimension();
    String unit = dimension == Dimension.RISK ? "" : " " + dimension.unit();
    String pointer = "/" + measure.replace('.', '/');
    double beyond = 1e-6 * (range.high() - range.low());

    for (double outside : List.of(range.low() - beyond, range.high() + beyond)) {
      String text = BigDecimal.valueOf(outside).setScale(9, HALF_UP).toPlainString() + unit;
      assertThatIllegalArgumentException()
          .as("%s of %s", measure, text)
          .isThrownBy(() -> SheetEdits.edited(SMALL, Map.of(pointer, SheetEdits.text(text))))
          .satisfies(
              refused ->
                  assertThat(refused.getMessage().replace(" ", ""))
                      .containsIgnoringCase(measure.substring(measure.lastIndexOf('.') + 1)));
    }
  }

  static Stream<Arguments> rangesOfSheets() {
    return MeasureRanges.OF_SHEETS.entrySet().stream()
        .map(range -> Arguments.of(range.getKey(), range.getValue()));
  }

  @Test
  void ranges_areOfMeasuresThatThereAre() {
    assertThat(MeasureRanges.names()).allMatch(name -> MeasureDefinitions.named(name).isPresent());
  }

  /** A warning that becomes a danger further on is no mistake. */
  @Test
  void review_ofARuleThatMattersMore_keepsSilent() {
    assertThat(
            remarks(
                rule("one", "warning", MAIN + "'atMost': '1.20 mm'}"),
                rule("two", "danger", MAIN + "'atMost': '1.40 mm'}")))
        .isEmpty();
  }

  @Test
  void review_withACatalogue_findsTextsThatOccurNowhereInIt() throws Exception {
    String catalogue;
    try (var in = getClass().getResourceAsStream("example-catalogue.json")) {
      catalogue = new String(in.readAllBytes(), UTF_8);
    }
    var read = CatalogueJson.read(catalogue);
    String known = read.families().get(0).carburettor().id();
    String carburettor = "{'measure': 'setting.carburettor.id', ";
    String json =
        file(
            "'when': "
                + carburettor
                + "'oneOf': ['"
                + known
                + "', 'slide-30']}, "
                + rule("one", "danger", MAIN + "'atMost': '1.40 mm'}"));

    assertThat(RuleFile.read(json).review()).isEmpty();
    assertThat(RuleFile.read(json).review(read))
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.kind()).isEqualTo(Kind.UNKNOWN_TEXT);
              assertThat(remark.pointer()).isEqualTo("/rules/0/when/oneOf/1");
              assertThat(remark.message())
                  .startsWith("setting.carburettor.id is never \"slide-30\"")
                  .contains("\"" + known + "\"");
            });
  }

  /** No setting meets it, but that shows only after 128 cases, more than are looked at. */
  @Test
  void review_ofTooManyCases_keepsSilent() {
    List<String> measures =
        MeasureDefinitions.all().stream()
            .filter(
                definition -> definition instanceof MeasureDefinition.Plain plain && isSmall(plain))
            .map(definition -> "{'measure': '" + definition.name() + "', 'atMost': '2 mm'}")
            .limit(8)
            .toList();
    String anys =
        IntStream.range(0, 7)
            .mapToObj(
                i ->
                    "{'any': ["
                        + measures.get(i)
                        + ", "
                        + measures.get(i + 1).replace("'2 mm'", "'1 mm'")
                        + "]}, ")
            .collect(joining());
    String never =
        "{'any': [" + MAIN + "'atMost': '1.1 mm'}]}, {'any': [" + MAIN + "'atLeast': '1.2 mm'}]}";

    assertThat(review("{'all': [" + anys + never + "]}")).isEmpty();
    assertThat(review("{'all': [" + never + "]}")).hasSize(1);
  }

  private static boolean isSmall(MeasureDefinition.Plain definition) {
    Interval range = MeasureRanges.of(definition);
    return definition.dimension().unit().equals("mm")
        && range.low() < 1
        && range.high() > 2
        && !definition.name().equals("setting.mainJet");
  }

  private static List<RuleRemark> review(String require) {
    return RuleFile.read(file(rule("one", "note", require))).review();
  }

  private static List<String> remarks(String... rules) {
    return RuleFile.read(file(rules)).review().stream()
        .map(remark -> remark.kind() + " " + remark.ruleId() + ": " + remark.message())
        .toList();
  }

  private static String rule(String id, String severity, String require) {
    return "'id': '"
        + id
        + "', 'severity': '"
        + severity
        + "', 'title': 't', 'rationale': 'r', 'require': "
        + require
        + ", 'message': 'm', 'remedy': 'r'";
  }

  private static String file(String... rules) {
    return ("{'format': 'jetting rule file', 'schemaVersion': 1, 'name': 'n', 'version': '1',"
            + " 'rules': [{"
            + String.join("}, {", rules)
            + "}]}")
        .replace('\'', '"');
  }
}
