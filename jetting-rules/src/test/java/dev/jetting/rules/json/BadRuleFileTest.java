package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.jetting.rules.text.EachLanguage;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The errors of documents that are no rule files. The example file is spoilt in one place each. */
class BadRuleFileTest {

  /** Files that break the schema as well. */
  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of("\"format\": \"jetting rule file\"", "\"format\": \"rules\""),
        Arguments.of("\"schemaVersion\": 1", "\"schemaVersion\": 2"),
        Arguments.of("\"version\": \"2\"", "\"version\": 2"),
        Arguments.of("\"severity\": \"note\"", "\"severity\": \"grave\""),
        Arguments.of("\"title\": \"Filter", "\"titel\": \"Filter"),
        Arguments.of(
            "\"require\": {\"measure\": \"setting.int", "\"when\": {\"measure\": \"setting.int"),
        Arguments.of("[\"kit-main\", \"big-main\"]", "[\"kit-main\", 5]"),
        Arguments.of("[\"kit-main\", \"big-main\"]", "\"kit-main\""),
        Arguments.of("\"600 mm²\"", "\"600 °C\""),
        Arguments.of("\"600 mm²\"", "600"),
        Arguments.of("\"600 mm²\"", "null"),
        Arguments.of("\"600 mm²\"", "[\"600 mm²\"]"),
        Arguments.of("\"times\": 0.5", "\"times\": \"0.5\""),
        Arguments.of("\"times\": 0.5", "\"time\": 0.5"),
        Arguments.of(
            "\"measure\": \"setting.mainJet\", \"atLeast",
            "\"measure\": \"setting.mainjet\", \"atLeast"),
        Arguments.of("\"take\": \"highest\"", "\"take\": \"worst\""),
        Arguments.of("\"take\": \"highest\", ", ""),
        Arguments.of("\"is\": \"mixture\"", "\"atMost\": \"mixture\""),
        Arguments.of("\"atLeast\": \"600 mm²\"", "\"is\": \"600 mm²\""),
        Arguments.of("\"atLeast\": \"600 mm²\"", "\"take\": \"highest\", \"atLeast\": \"600 mm²\""),
        Arguments.of(", \"atLeast\": \"600 mm²\"", ""),
        Arguments.of("\"measure\": \"setting.intake.effectiveArea\", ", ""),
        Arguments.of("\"not\": {", "\"any\": [], \"not\": {"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void brokenFile_isRefused(String piece, String spoilt) {
    String file = Documents.edited("example-rules.json", piece, spoilt);

    assertThatExceptionOfType(JsonInputException.class).isThrownBy(() -> RuleFile.read(file));
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "format": "jetting rule file" => "format": "rules" => $.format: "rules": allowed "jetting rule file"
          "title": "Filter => "titel": "Filter => $.rules[3].titel: unknown field "titel", perhaps "title": allowed id, formerIds, title, rationale, severity, tags, link, band, when, require, message, remedy, subject, examples, texts
          "atMost": "130 hundredths" => "atmost": "130 hundredths" => $.rules[0].require.atmost: unknown field "atmost", perhaps "atMost": allowed all, any, not, measure, take, within, atMost, atLeast, is, oneOf
          "times": 0.5 => "time": 0.5 => $.rules[1].require.all[0].atMost.time: unknown field "time", perhaps "times": allowed measure, take, within, times
          "times": 0.5 => "times": "0.5" => $.rules[1].require.all[0].atMost.times: "0.5": allowed a finite number
          "severity": "note" => "severity": "grave" => $.rules[1].severity: "grave": allowed "note", "warning", "danger"
          "is": "mixture" => "is": 5 => $.rules[4].require.is: 5: allowed a text
          "600 mm²" => null => $.rules[3].require.atLeast: null: allowed a quantity with its unit or an object with measure, take, within, times
          "600 mm²" => true => $.rules[3].require.atLeast: true: allowed a quantity with its unit or an object with measure, take, within, times
          "big-main"] => null] => $.rules[0].formerIds[1]: null: allowed a text
          """)
  void wrongField_isToldWithWhatIsAllowed(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "600 mm²" => "600 °C" => $.rules[3].require.atLeast: area "600 °C" cannot be read: allowed a decimal number with mm², mm2
          "600 mm²" => 600 => $.rules[3].require.atLeast: area "600" cannot be read: allowed a decimal number with mm², mm2
          "130 hundredths" => "130" => $.rules[0].require.atMost: jet bore "130" cannot be read: allowed a decimal number with mm, hundredths, 1/100 mm
          "130 hundredths" => "130 mm" => $.rules[0].require.atMost: jet bore 130 mm: allowed above 0 up to 10 mm
          "atMost": 0.98 => "atMost": "0,98" => $.rules[2].require.any[1].atMost: ratio "0,98" cannot be read: allowed a decimal number, alone or with %
          {"measure": "riding.acceptedRisk"} => "2 mm" => $.rules[2].require.any[0].atMost: probability "2 mm" cannot be read: allowed a decimal number, alone or with %
          {"measure": "riding.acceptedRisk"} => {"measure": "air.humidity"} => $.rules[2].require.any[0].atMost.measure: mixture.leanRisk held against air.humidity: allowed a measure of the same quantity: probability, a decimal number, alone or with %
          {"measure": "setting.mainJet", "times": 0.5} => {"measure": "air.pressure"} => $.rules[1].require.all[0].atMost.measure: setting.pilotJet held against air.pressure: allowed a measure of the same quantity: a measure in mm
          {"measure": "setting.mainJet", "times": 0.5} => {"measure": "engine.id"} => $.rules[1].require.all[0].atMost.measure: engine.id is a text: allowed a measure that is a number
          "times": 0.5 => "times": 0 => $.rules[1].require.all[0].atMost.times: factor: allowed more than 0 and at most 1000
          """)
  void thresholdOfAnotherQuantity_isRefusedWithTheUnits(
      String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "setting.mainJet", "atLeast => "setting.mainjet", "atLeast => $.rules[0].require.measure: unknown measure "setting.mainjet", perhaps "setting.mainJet": allowed the measures of the schema, such as setting.mainJet, setting.pilotJet, setting.cutaway, setting.idleLift
          "take": "highest",  => '' => $.rules[2].require.any[0].take: mixture.leanRisk has a number at each throttle opening: allowed lowest, highest, mean
          "atLeast": "600 mm²" => "take": "mean", "atLeast": "600 mm²" => $.rules[3].require: take or within on setting.intake.effectiveArea, which is one number: allowed neither of them
          "within": {"from": "1/4", => "within": {"from": 0, => $.rules[2].require.any[1].within: band beyond the rule's own, which is all that it sees: allowed from 0.125 to 0.75
          "within": {"from": "1/4", => "within": {"from": "3/4", => $.rules[2].require.any[1].within: throttle band from 0.75: allowed at most its wide end, 0.5
          "is": "mixture" => "atMost": "mixture" => $.rules[4].require: condition on setting.carburettor.pilot.screwKind, which is a text: allowed one of is and oneOf
          "atLeast": "600 mm²" => "is": "600 mm²" => $.rules[3].require: condition on setting.intake.effectiveArea, which is a number: allowed atMost and atLeast
          , "atLeast": "600 mm²" => '' => $.rules[3].require: condition without a limit: allowed atMost, atLeast or both
          "measure": "setting.intake.effectiveArea", => '' => $.rules[3].require: condition with none of all, any, not, measure: allowed one of them
          "measure": "setting.intake.effectiveArea", => "any": [], "measure": "air.density", => $.rules[3].require: condition with several of all, any, not, measure: allowed one of them
          "any": [ => "any": [], "not": {}, "x": [ => $.rules[2].require.x: unknown field "x": allowed all, any, not, measure, take, within, atMost, atLeast, is, oneOf
          {"measure": "setting.intake.effectiveArea", "atLeast": "600 mm²"} => {"any": []} => $.rules[3].require.any: 0 conditions: allowed 1 to 100
          {"measure": "setting.intake.effectiveArea", "atLeast": "600 mm²"} => {"not": {"measure": "air.density", "atMost": "1 kg/m³"}, "take": "mean"} => $.rules[3].require: condition of other conditions with more: allowed take, within, atMost, atLeast, is and oneOf beside measure alone
          """)
  void conditionThatIsNone_isRefused(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "id": "filter-area" => "id": "Filter" => $.rules[3].id: rule id "Filter": allowed lower-case words joined by hyphens, as in lean-anywhere
          "id": "filter-area" => "id": "kit-main" => $.rules[3].id: rule id "kit-main" twice: allowed each id once
          "big-main"] => "a b"] => $.rules[0].formerIds[1]: rule id "a b": allowed lower-case words joined by hyphens, as in lean-anywhere
          "big-main"] => "kit-main-jet"] => $.rules[0].formerIds[1]: rule id "kit-main-jet" twice: allowed each id once
          than {limit} => than {limits} => $.rules[2].message: placeholder "{limits}", perhaps "limit": allowed {limit}, {measure}, {measured}, {throttle} and no other braces
          nearer to it. => nearer {to it. => $.rules[1].remedy: placeholder "{": allowed {limit}, {measure}, {measured}, {throttle} and no other braces
          A bigger filter. => A bigger\\nfilter. => $.rules[3].remedy: "A bigger\\u000afilter.": allowed one line of 1 to 1000 characters
          "title": "Filter too small" => "title": " " => $.rules[3].title: " ": allowed one line of 1 to 1000 characters
          "subject": "setting.mainJet" => "subject": "the main jet" => $.rules[0].subject: subject "the main jet": allowed a path of names joined by dots, as in setting.needleJet
          """)
  void textThatIsNone_isRefused(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @Test
  void conditionsNestedTooDeep_areRefusedAtTheDepth() {
    String leaf = "{\"measure\": \"setting.intake.effectiveArea\", \"atLeast\": \"600 mm²\"}";

    String message = refusal(leaf, "{\"not\": ".repeat(8) + leaf + "}".repeat(8)).getMessage();

    assertThat(message)
        .isEqualTo(
            "$.rules[3].require"
                + ".not".repeat(8)
                + ": condition nested 9 deep: allowed at most 8");
    RuleFile.read(
        Documents.edited(
            "example-rules.json", leaf, "{\"not\": ".repeat(7) + leaf + "}".repeat(7)));
  }

  @Test
  void tooManyConditions_areRefused() {
    String leaf = "{\"measure\": \"setting.intake.effectiveArea\", \"atLeast\": \"600 mm²\"}";
    // The list, two lists in it and 60 conditions are 63 before the second list's own.
    String half = "{\"all\": [" + leaf + ("," + leaf).repeat(59) + "]}";

    assertThat(refusal(leaf, "{\"all\": [" + half + "," + half + "]}"))
        .hasMessage(
            "$.rules[3].require.all[1].all[37]: condition 101 of one rule: allowed 1 to 100");
  }

  @Test
  void tooManyRules_areRefused() {
    String empty = Documents.read("example-rules.json").replaceAll("(?s)\"rules\": .*", "");
    String rule =
        "{\"id\": \"r%d\", \"title\": \"t\", \"rationale\": \"r\", \"severity\": \"note\","
            + " \"require\": {\"measure\": \"engine.id\", \"is\": \"e\"},"
            + " \"message\": \"m\", \"remedy\": \"r\"}";
    StringBuilder rules = new StringBuilder(rule.formatted(0));
    for (int i = 1; i < 200; i++) {
      rules.append(',').append(rule.formatted(i));
    }

    assertThat(RuleFile.read(empty + "\"rules\": [" + rules + "]}").rules()).hasSize(200);
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () -> RuleFile.read(empty + "\"rules\": [" + rules + "," + rule.formatted(200) + "]}"))
        .withMessage("$.rules: 201 rules: allowed 1 to 200");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(empty + "\"rules\": []}"))
        .withMessage("$.rules: 0 rules: allowed 1 to 200");
  }

  private static void assertRefused(String piece, String spoilt, String message) {
    JsonInputException refusal = refusal(piece, spoilt);
    assertThat(refusal).hasMessage(message);
    EachLanguage.of(refusal);
  }

  static JsonInputException refusal(String piece, String spoilt) {
    String file = Documents.edited("example-rules.json", piece, spoilt);
    JsonInputException refusal =
        catchThrowableOfType(JsonInputException.class, () -> RuleFile.read(file));
    assertThat(refusal).as(spoilt).isNotNull();
    return refusal;
  }
}
