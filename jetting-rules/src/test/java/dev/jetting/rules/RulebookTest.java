package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.RulebookChange.Kind;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RulebookTest {

  private static final AssessedSetting SETTING = TwoHundred.assessed(STANDARD, ALL_ROUND);

  private static final Rule NOTE = failing("a-note", Severity.NOTE, 9);
  private static final Rule SMALL = failing("small-danger", Severity.DANGER, 2);
  private static final Rule GREAT = failing("great-danger", Severity.DANGER, 3);
  private static final Rule PASS = Rule.named("pass").judging(setting -> Outcome.passed());

  @Test
  void toString_namesItAndWhatWasChanged() {
    Rulebook standard = StandardRulebook.rulebook();
    assertThat(standard).hasToString("standard " + standard.version());
    assertThat(standard.without("lean-anywhere").toString())
        .startsWith("standard " + standard.version() + ", changed: ")
        .contains("lean-anywhere");
  }

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

  /** A shop's form may pass on what a visitor typed. */
  @Test
  void without_idThatSteersATerminal_isQuotedOnOneLine() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> StandardRulebook.rulebook().without("a\u202e\u001b[2J\n" + "x".repeat(200)))
        .satisfies(
            e ->
                assertThat(e.getMessage())
                    .startsWith("rule id a\\u202e\\u001b[2J\\u000axxx")
                    .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}]")
                    .doesNotContain("x".repeat(80)));
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
    assertThat(report.rulebook().toString()).isEqualTo("book 1");
  }

  @Test
  void edition_namesWhatWasChanged() {
    Rulebook book = Rulebook.of("book", "1", List.of(PASS, NOTE, SMALL, GREAT));
    Rule other = Rule.named("pass").judging(setting -> Outcome.notApplicable("another judge"));
    Rulebook changed =
        book.without("great-danger")
            .replacing(other)
            .replacing(SMALL.withSeverity(Severity.NOTE))
            .with(failing("shop", Severity.WARNING, 2));
    assertThat(changed.edition().changes())
        .containsExactly(
            new RulebookChange(Kind.ADDED, "shop", Severity.WARNING),
            new RulebookChange(Kind.LEFT_OUT, "great-danger", Severity.DANGER),
            new RulebookChange(Kind.REPLACED, "pass", Severity.WARNING),
            new RulebookChange(Kind.OTHER_SEVERITY, "small-danger", Severity.NOTE));
    String said =
        "left out great-danger (danger); replaced pass (warning); given another severity"
            + " small-danger (now note); added shop (warning)";
    assertThat(changed.edition().toString()).isEqualTo("book 1, changed: " + said);
    Report report = changed.evaluate(SETTING);
    assertThat(ReportText.of(report).replaceAll("\\s+", " "))
        .contains("The rulebook was changed: " + said + ".")
        .contains("Rulebook: book 1, changed: " + said);
    assertThat(ReportText.compact(report)).contains("The rulebook was changed: " + said + ".\n");
    assertThat(ReportMarkdown.of(report)).contains("The rulebook was changed: ");
    assertThat(report.rulebook()).isEqualTo(changed.edition());
  }

  @Test
  void edition_ofTheSameRulesAgain_isNoChange() {
    Rulebook book = Rulebook.of("book", "1", List.of(PASS, NOTE, SMALL));
    assertThat(book.without("pass").with(PASS).edition()).isEqualTo(book.edition());
    assertThat(book.replacing(NOTE.withSeverity(Severity.NOTE)).edition())
        .isEqualTo(book.edition());
    assertThat(book.edition().changed()).isFalse();
  }

  @Test
  void digest_changesWithWhatARulebookHolds() {
    Rulebook book = Rulebook.of("book", "1", List.of(PASS, NOTE, SMALL));
    Rule narrower = NOTE.within(ThrottleBand.eighths(0, 4));
    Rule retold = Rule.named("a-note").title("other").judging(setting -> Outcome.passed());
    assertThat(
            List.of(
                book,
                book.without("pass"),
                book.replacing(narrower),
                book.replacing(retold),
                book.replacing(NOTE.definedBy("a text")),
                book.replacing(NOTE.withSeverity(Severity.DANGER)),
                book.assuming(Map.of("x", Coefficient.assumed(1, "mm", "for this test"))),
                book.assuming(Map.of("x", Coefficient.assumed(2, "mm", "for this test"))),
                Rulebook.of("book", "2", List.of(PASS, NOTE, SMALL))))
        .extracting(each -> each.edition().digest())
        .doesNotHaveDuplicates()
        .allMatch(digest -> digest.matches("[0-9a-f]{64}"));
  }

  /** A name may not carry what a version or a change would say. */
  @ParameterizedTest
  @ValueSource(strings = {"", " ", "a\nb", "a\u202eb", "a\u001b[1m", "a\u2028b", "a\ud800"})
  void of_nameThatIsNotALine_isRefused(String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rulebook.of(name, "1", List.of(PASS)))
        .withMessageStartingWith("name of a rulebook ");
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
