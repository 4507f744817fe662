package dev.jetting.rules.json;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.text.EachLanguage;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Examples inside a rule file. */
class RuleExamplesTest {

  private static final Map<String, SetupSheet> SHEETS = Map.of("plain", LawKit.plainSheet());

  private static final String PASSES =
      "{'on': 'plain', 'edits': {'/setting/mainJet': '1.20 mm'}, 'expect': 'passed',"
          + " 'limit': '1.20 mm'}";
  private static final String FAILS =
      "{'on': 'plain', 'edits': {'/setting/mainJet': '1.21 mm'}, 'expect': 'failed',"
          + " 'subject': 'setting.mainJet', 'limit': '120 hundredths'}";

  @Test
  void examplesThatHold_getNoRemark() {
    assertThat(checked(PASSES, FAILS)).isEmpty();
  }

  @Test
  void ruleThatDoesNotApplyOrHasNoNumber_isAnExampleToo() {
    String elsewhere =
        "{'on': 'plain', 'edits': {'/setting/carburettor/id': 'another'}, 'expect':"
            + " 'not-applicable'}";

    assertThat(checked(PASSES, FAILS, elsewhere)).isEmpty();
    assertThat(
            RuleFile.read(
                    file(
                        "'require': {'measure': 'parts.mainJets.biggest', 'atMost': '9 mm'}",
                        "{'on': 'plain', 'edits': {'/parts': {}}, 'expect': 'not-evaluated'}"))
                .check(SHEETS))
        .extracting(RuleRemark::kind)
        .containsOnly(Kind.NO_EXAMPLE);
  }

  @Test
  void wrongOutcome_isLocatedAndSaysWhatTheRuleFound() {
    String wrong = FAILS.replace("1.21 mm", "1.19 mm");

    RuleRemark remark = checked(PASSES, wrong).get(0);

    assertThat(remark.kind()).isEqualTo(Kind.EXAMPLE_FAILS);
    assertThat(remark.ruleId()).isEqualTo("kit-main-jet");
    assertThat(remark.pointer()).isEqualTo("/rules/0/examples/1");
    assertThat(remark.line()).isEqualTo(3);
    assertThat(remark.message()).isEqualTo("expected failed, but it is passed");
    assertThat(checked(PASSES.replace("1.20 mm'}, ", "1.30 mm'}, "), FAILS).get(0).message())
        .isEqualTo("expected passed, but it is failed: 1.30 mm is too much (on setting.mainJet)");
  }

  @Test
  void wrongLimit_isNamed() {
    assertThat(checked(PASSES.replace("'limit': '1.20 mm'", "'limit': '1.2001 mm'"), FAILS))
        .extracting(RuleRemark::message)
        .contains("expected the limit 1.2001 mm, but it is 1.200 mm");
  }

  @Test
  void wrongSubject_isNamedWithTheRightOne() {
    assertThat(checked(PASSES, FAILS.replace("'setting.mainJet', 'lim", "'engine', 'lim")))
        .extracting(RuleRemark::message)
        .contains(
            "expected a finding on \"engine\", but it is failed: 1.21 mm is too much"
                + " (on setting.mainJet)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "on": "plain" => "on": "plane" => unknown sheet "plane", perhaps "plain"; known "plain"
          /setting/mainJet => /seting/mainJet => the edits give no sheet: pointer "/seting/mainJet": allowed one to a field
          /setting/mainJet => /setting/mainjet => the edits give no sheet: $.setting.mainjet: unknown field "mainjet", perhaps "mainJet"
          1.21 mm => 121 mm => the edits give no sheet: $.setting.mainJet: jet bore 121 mm
          """)
  void exampleThatCannotBeTried_saysWhy(String piece, String spoilt, String words) {
    List<RuleRemark> remarks =
        checked(PASSES, FAILS.replace(piece.replace('"', '\''), spoilt.replace('"', '\'')));

    assertThat(remarks).extracting(RuleRemark::kind).startsWith(Kind.EXAMPLE_UNUSABLE);
    assertThat(remarks.get(0).message()).startsWith(words);
  }

  @Test
  void ruleThatNeverFailedOrPassed_isNotTested() {
    assertThat(checked(FAILS))
        .extracting(RuleRemark::message)
        .containsExactly("no example holds on which the rule passes");
    assertThat(checked(PASSES))
        .extracting(RuleRemark::message)
        .containsExactly("no example holds on which the rule fails");
    assertThat(RuleFile.read(Documents.read("example-rules.json")).check(SHEETS))
        .hasSize(10)
        .extracting(RuleRemark::kind)
        .containsOnly(Kind.NO_EXAMPLE);
  }

  /** They say nothing about what the rule finds, so the rulebook stays the same. */
  @Test
  void examples_leaveTheDigest() {
    assertThat(digest(file(MAIN_JET, PASSES, FAILS))).isEqualTo(digest(file(MAIN_JET, PASSES)));
    assertThat(digest(file(MAIN_JET.replace("1.20", "1.25"), PASSES)))
        .isNotEqualTo(digest(file(MAIN_JET, PASSES)));
  }

  @Test
  void example_isWrittenAsItWasRead() {
    String edits = "'/setting': {'a': 1.10, 'b': [true, 'λ']}, '/x/mainJet': 1e-3";
    RuleFile file =
        RuleFile.read(file(MAIN_JET, "{'on': 'x', 'edits': {" + edits + "}, 'expect': 'passed'}"));

    assertThat(file.toJson()).contains("{\"a\":1.10,\"b\":[true,\"λ\"]}");
    assertThat(RuleFile.read(file.toJson())).isEqualTo(file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "expect": "passed" => "expect": "broken" => $.rules[0].examples[0].expect: "broken": allowed "passed", "failed", "not-applicable", "not-evaluated"
          "expect": "passed" => "expect": "good" => $.rules[0].examples[0].expect: "good": allowed
          "expect": "passed" => "expect": "not-evaluated" => $.rules[0].examples[0].limit: limit of a rule that judges nothing: allowed one beside "passed" or "failed"
          "expect": "passed" => "expect": "passed", "subject": "engine" => $.rules[0].examples[0].subject: subject of a rule that does not fail: allowed one beside "failed"
          "limit": "1.20 mm" => "limit": "20 °C" => $.rules[0].examples[0].limit: limit "20 °C": allowed jet bore, a decimal number with mm, hundredths, 1/100 mm
          /setting/mainJet => setting/mainJet => $.rules[0].examples[0].edits["setting/mainJet"]: pointer "setting/mainJet": allowed one as in /setting/mainJet
          "1.20 mm"} => null} => $.rules[0].examples[0].edits["/setting/mainJet"]: null: allowed a text, a number, true, false, an array or an object
          "on": "plain" => "on": "" => $.rules[0].examples[0].on: "": allowed one line of 1 to 1000 characters
          "on" => "an" => $.rules[0].examples[0].an: unknown field "an", perhaps "on": allowed on, edits, expect, subject, limit
          """)
  void badExample_isRefusedWithItsPlace(String piece, String spoilt, String message) {
    String file =
        file(MAIN_JET, PASSES.replace(piece.replace('"', '\''), spoilt.replace('"', '\'')));

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(file))
        .satisfies(e -> assertThat(e.getMessage()).startsWith(message))
        .satisfies(EachLanguage::of);
  }

  @Test
  void tooManyExamplesOrEdits_areRefused() {
    String[] many = Collections.nCopies(21, PASSES).toArray(String[]::new);
    String edits =
        IntStream.range(0, 21).mapToObj(i -> "'/setting/x" + i + "': 1").collect(joining(", "));

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> RuleFile.read(file(MAIN_JET, many)))
        .withMessageContaining("21 examples: allowed 1 to 20");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () ->
                RuleFile.read(
                    file(MAIN_JET, "{'on': 'x', 'expect': 'passed', 'edits': {" + edits + "}}")))
        .withMessageContaining("21 edits: allowed 1 to 20");
  }

  private static final String MAIN_JET =
      "'when': {'measure': 'setting.carburettor.id', 'is': 'plain 28 mm carburettor'},"
          + "'require': {'measure': 'setting.mainJet', 'atMost': '1.20 mm'}";

  private static List<RuleRemark> checked(String... examples) {
    return RuleFile.read(file(MAIN_JET, examples)).check(SHEETS);
  }

  private static String digest(String file) {
    return Rulebook.of("test", "1", RuleFile.read(file).rules()).edition().digest();
  }

  /** A file with one rule, each example on a line of its own, the first on the second line. */
  private static String file(String conditions, String... examples) {
    return ("{'format': 'jetting rule file', 'schemaVersion': 1, 'name': 'n', 'version': '1',"
            + "'rules': [{'id': 'kit-main-jet', 'title': 't', 'rationale': 'r', 'severity': 'note',"
            + conditions
            + ", 'message': '{measured} is too much', 'remedy': 'Fit another.', 'examples': [\n"
            + String.join(",\n", examples)
            + "]}]}")
        .replace('\'', '"');
  }
}
