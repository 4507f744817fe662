package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class RulebookTest {

  private static final AssessedSetting SETTING = TwoHundred.assessed(STANDARD, ALL_ROUND);

  private static final Rule NOTE = failing("a-note", Severity.NOTE, 9);
  private static final Rule SMALL = failing("small-danger", Severity.DANGER, 2);
  private static final Rule GREAT = failing("great-danger", Severity.DANGER, 3);
  private static final Rule PASS = Rule.named("pass").judging(setting -> Outcome.passed());

  @Test
  void of_sameIdTwice_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rulebook.of("book", "1", List.of(PASS, NOTE, PASS)))
        .withMessageContaining("pass")
        .withMessageContaining("book");
  }

  @Test
  void without_unknownId_isRefusedAndTheKnownAreNamed() {
    Rulebook book = Rulebook.of("book", "1", List.of(PASS, NOTE));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> book.without("pas"))
        .withMessageContaining("pas")
        .withMessageContaining("a-note");
    assertThat(book.without("pass").rules()).containsExactly(NOTE);
    assertThat(book.without("pass").with(SMALL).rule("small-danger")).contains(SMALL);
  }

  @Test
  void of_formerIdOfOneIsIdOfAnother_isRefused() {
    Rule renamed = Rule.named("new-name").formerly("pass").judging(setting -> Outcome.passed());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rulebook.of("book", "1", List.of(PASS, renamed)))
        .withMessageContaining("pass");
    assertThat(Rulebook.of("book", "1", List.of(renamed)).rule("pass")).contains(renamed);
  }

  @Test
  void replacing_putsTheRuleInTheOldOnesPlace() {
    Rule harmless = Rule.named("a-note").judging(setting -> Outcome.passed());
    Rulebook book = Rulebook.of("book", "1", List.of(PASS, NOTE, SMALL)).replacing(harmless);
    assertThat(book.rules()).containsExactly(PASS, harmless, SMALL);
    assertThatIllegalArgumentException().isThrownBy(() -> book.replacing(GREAT));
  }

  @Test
  void mergedWith_sameIdInBoth_isRefused() {
    Rulebook one = Rulebook.of("one", "1", List.of(PASS, NOTE));
    Rulebook two = Rulebook.of("two", "1", List.of(SMALL));
    assertThat(one.mergedWith(two, "both", "7").rules()).containsExactly(PASS, NOTE, SMALL);
    assertThat(one.mergedWith(two, "both", "7").version()).isEqualTo("7");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> one.mergedWith(one.without("a-note"), "both", "7"))
        .withMessageContaining("pass");
  }

  @Test
  void evaluate_ordersFindingsByDanger() {
    Report report = Rulebook.of("book", "1", List.of(NOTE, SMALL, PASS, GREAT)).evaluate(SETTING);
    assertThat(report.findings())
        .extracting(RankedFinding::ruleId)
        .containsExactly("great-danger", "small-danger", "a-note");
    assertThat(report.results()).hasSize(4);
    assertThat(report.passes()).isFalse();
  }

  @Test
  void evaluate_anyOrderOfRules_sameReport() {
    List<Rule> rules = new ArrayList<>(List.of(NOTE, SMALL, PASS, GREAT));
    Report report = Rulebook.of("book", "1", rules).evaluate(SETTING);
    Collections.reverse(rules);
    assertThat(Rulebook.of("book", "1", rules).evaluate(SETTING)).isEqualTo(report);
  }

  @Test
  void passes_brokenNote_fails() {
    Rule broken =
        Rule.named("broken")
            .severity(Severity.NOTE)
            .judging(
                setting -> {
                  throw new IllegalStateException("oh");
                });
    assertThat(Rulebook.of("book", "1", List.of(broken)).evaluate(SETTING).passes()).isFalse();
    assertThat(Rulebook.of("book", "1", List.of(NOTE, PASS)).evaluate(SETTING).passes()).isTrue();
  }

  @Test
  void passes_dangerNotEvaluated_fails() {
    Rule open =
        Rule.named("open")
            .severity(Severity.DANGER)
            .judging(setting -> Outcome.notEvaluated("a number"));
    assertThat(Rulebook.of("book", "1", List.of(open, PASS)).evaluate(SETTING).passes()).isFalse();
    assertThat(
            Rulebook.of("book", "1", List.of(open.withSeverity(Severity.WARNING), PASS))
                .evaluate(SETTING)
                .passes())
        .isTrue();
  }

  @Test
  void passes_nothingJudged_isNoPass() {
    assertThat(Rulebook.of("book", "1", List.of()).evaluate(SETTING).passes()).isFalse();
  }

  @Test
  void report_carriesCautionsAndAssumptions() {
    Report report = Rulebook.of("book", "1", List.of()).evaluate(SETTING);
    assertThat(report.cautions())
        .anyMatch(text -> text.contains("lock the wheel"))
        .anyMatch(text -> text.contains("closed throttle"))
        .anyMatch(text -> text.contains("public roads"))
        .anyMatch(text -> text.contains("vapour"))
        .anyMatch(text -> text.contains("hot"))
        .anyMatch(text -> text.contains("builder"));
    assertThat(report.assumptions()).containsKey("lean limit by λ wanted");
    assertThat(report.rulebook()).isEqualTo("book 1");
  }

  private static Rule failing(String id, Severity severity, double measured) {
    return Rule.named(id)
        .severity(severity)
        .judging(
            setting ->
                Outcome.failed(
                    Finding.above(
                            "setting.x",
                            Measure.ratio(measured),
                            Measure.ratio(1),
                            ThrottleBand.WHOLE)
                        .says("Wrong.", "Mend it.")));
  }
}
