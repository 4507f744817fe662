package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.RulebookChange.Kind;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits that a rulebook replaces by name, and tags by which it is filtered. */
class LimitsAndTagsTest {

  private static final Rulebook STANDARD = StandardRulebook.rulebook();
  private static final String TURNS = "least turns of a pilot screw";
  private static final Coefficient ONE_TURN = Coefficient.assumed(1, "turns", "our screws shake");
  private static final AssessedSetting PLAIN = AssessedSetting.of(LawKit.plainSheet());

  @Test
  void withLimit_movesTheLimitOfTheRule_andTheReportShowsIt() {
    double turns = PLAIN.setting().screw().turns().turns();
    Coefficient more = Coefficient.assumed(turns + 0.25, "turns", "our screws shake");

    Report report = STANDARD.withLimit(TURNS, more).evaluate(PLAIN);

    assertThat(STANDARD.evaluate(PLAIN).findings())
        .noneMatch(finding -> finding.ruleId().equals("screw-range"));
    assertThat(report.findings())
        .filteredOn(finding -> finding.ruleId().equals("screw-range"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.finding().limit())
                    .isEqualTo(new Measure(turns + 0.25, "turns")));
    assertThat(report.assumptions()).containsEntry(TURNS, more);
    assertThat(report.rulebook().changes())
        .containsExactly(new RulebookChange(Kind.OTHER_LIMITS, "screw-range", Severity.WARNING));
    assertThat(report.rulebook().toString())
        .endsWith(", changed: given other limits screw-range (warning)");
    assertThat(ReportText.inFull(report))
        .containsPattern("of\\s+a\\s+pilot\\s+screw\\s+2\\s+turns")
        .containsPattern("given\\s+other\\s+limits\\s+screw-range");
  }

  @Test
  void withLimit_ofALimitOfSeveralRules_movesItInEach() {
    Rulebook book =
        STANDARD.withLimit(
            "change since proven by the room for leaning", Coefficient.assumed(0.1, "1", "ours"));

    assertThat(book.edition().changes())
        .extracting(RulebookChange::ruleId)
        .containsExactly(
            "air-change", "float-level", "fuel-change", "intake-change", "jets-moved-over");
    assertThat(book.edition().digest()).isNotEqualTo(STANDARD.edition().digest());
  }

  @Test
  void withLimit_putBack_isNoChange() {
    Rulebook book =
        STANDARD.withLimit(TURNS, ONE_TURN).withLimit(TURNS, STANDARD.assumptions().get(TURNS));

    assertThat(book.edition()).isEqualTo(STANDARD.edition());
  }

  @Test
  void withLimit_thatCannotBe_isRefused() {
    assertThatThrownBy(() -> STANDARD.withLimit("most turns", ONE_TURN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("limit \"most turns\"")
        .hasMessageContaining(TURNS);
    assertThatThrownBy(() -> STANDARD.withLimit(TURNS, Coefficient.assumed(1, "mm", "x")))
        .hasMessageContaining("1 mm: allowed a number from 0.025 to 10 in the unit turns");
    assertThatThrownBy(() -> STANDARD.withLimit(TURNS, Coefficient.assumed(0, "turns", "x")))
        .hasMessageContaining("from 0.025 to 10");
  }

  /** 25 % is 0.25; as 25 the rule would never fail again. */
  @Test
  void withLimit_ofPercentForAShare_isRefused() {
    String share = "share of the charge that a carburettor may cost";
    assertThatThrownBy(() -> STANDARD.withLimit(share, Coefficient.assumed(25, "1", "x")))
        .hasMessage("limit " + share + " 25 1: allowed a number from 0.0125 to 5 in the unit 1");
  }

  @Test
  void tagged_keepsTheRulesOfATag_andTheReportSaysWhatWasLeftOut() {
    Rulebook changes = STANDARD.tagged("change", "weather");

    assertThat(changes.rules())
        .extracting(Rule::id)
        .contains("proven-room", "air-change", "air-density-swing")
        .doesNotContain("lean-anywhere");
    assertThat(changes.edition().changes())
        .contains(new RulebookChange(Kind.LEFT_OUT, "lean-anywhere", Severity.DANGER));
  }

  @Test
  void standardRules_haveATagAndALinkToTheirPage() {
    for (Rule rule : STANDARD.rules()) {
      assertThat(rule.tags()).as(rule.id()).isNotEmpty();
      assertThat(Files.exists(Path.of("src/main/java").resolve(rule.link())))
          .as(rule.link())
          .isTrue();
    }
  }

  @Test
  void draft_ofAnImpossibleTagOrLink_isRefused() {
    Rule.Draft draft = Rule.named("one");

    assertThatThrownBy(() -> draft.tagged("Two Words")).hasMessageContaining("Two Words");
    assertThatThrownBy(() -> draft.link("a\nb")).isInstanceOf(IllegalArgumentException.class);
  }

  /** Every limit of the standard rules does something: another number, another digest. */
  @Test
  void everyLimit_isOneOfARule() {
    List<String> unused =
        STANDARD.assumptions().keySet().stream()
            .filter(name -> STANDARD.rules().stream().noneMatch(r -> r.limits().containsKey(name)))
            .toList();

    assertThat(unused).isEmpty();
  }
}
