package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarginTest {

  private static final AssessedSetting PLAIN = AssessedSetting.of(LawKit.plainSheet());

  private static Margin main(double measured, double limit) {
    return Margin.atMost(
        "setting.mainJet",
        new Measure(measured, "mm"),
        new Measure(limit, "mm"),
        ThrottleBand.WHOLE);
  }

  private static Rule upTo(String id, double limit) {
    return Rule.named(id)
        .judging(
            setting -> {
              Margin margin = main(setting.setting().mainJet().millimetres(), limit);
              return margin.fails()
                  ? Outcome.failed(margin.finding().says("too big", "smaller"))
                  : Outcome.passed(margin);
            });
  }

  @Test
  void left_isWhatIsLeftToTheLimit_onEitherSide() {
    Measure two = new Measure(2, "mm");
    Measure three = new Measure(3, "mm");

    assertThat(Margin.atMost("setting", two, three, ThrottleBand.WHOLE).left())
        .isEqualTo(new Measure(1, "mm"));
    assertThat(Margin.atLeast("setting", two, three, ThrottleBand.WHOLE).left())
        .isEqualTo(new Measure(-1, "mm"));
    assertThat(main(2, 2).fails()).isFalse();
    assertThat(main(2.5, 2).share()).isEqualTo(-0.25);
    assertThat(main(-3, 0).share()).isEqualTo(3);
  }

  @Test
  void passed_keepsTheMarginNearestToFailing() {
    Outcome outcome = Outcome.passed(List.of(main(1, 2), main(1.5, 2), main(10, 100)));

    assertThat(outcome.nearest()).contains(main(1.5, 2));
    assertThat(Outcome.passed().nearest()).isEmpty();
  }

  @Test
  void nearest_ofAFailedRule_isThatOfItsWorstFinding() {
    Outcome outcome =
        Outcome.failed(main(2.1, 2).finding().says("a", "b"), main(3, 2).finding().says("a", "b"));

    assertThat(outcome.margin()).isEmpty();
    assertThat(outcome.nearest()).contains(main(3, 2));
  }

  /** The rule that decides a composed one gives its number, on both sides of its limit. */
  @Test
  void composed_carriesTheMarginOfTheBranchThatDecides() {
    double main = PLAIN.setting().mainJet().millimetres();
    Rule near = upTo("near", main * 1.1);
    Rule far = upTo("far", main * 2);
    Rule beyond = upTo("beyond", main / 2);

    assertThat(all(near, far).nearest()).contains(main(main, main * 1.1));
    assertThat(any(near, far).nearest()).contains(main(main, main * 2));
    assertThat(all(near, beyond).nearest()).contains(main(main, main / 2));
    Outcome denied = Rule.not(Rule.named("not"), near).evaluate(PLAIN);
    assertThat(denied.status()).isEqualTo(Status.FAILED);
    assertThat(denied.nearest().orElseThrow().left().value()).isNegative();
  }

  private static Outcome all(Rule... rules) {
    return Rule.allOf(Rule.named("all"), List.of(rules)).evaluate(PLAIN);
  }

  private static Outcome any(Rule... rules) {
    return Rule.anyOf(Rule.named("any"), List.of(rules)).evaluate(PLAIN);
  }

  @Test
  void margins_ofAReport_beginWithTheNearestToFailing() {
    double main = PLAIN.setting().mainJet().millimetres();
    Rule silent = Rule.named("silent").judging(setting -> Outcome.passed());
    Report report =
        Rulebook.of(
                "shop",
                "1",
                List.of(
                    upTo("far", main * 2),
                    silent,
                    upTo("beyond", main / 2),
                    upTo("near", main * 1.1)))
            .evaluate(PLAIN);

    assertThat(report.margins())
        .extracting(RuleMargin::ruleId)
        .containsExactly("beyond", "near", "far");
  }

  /** Of the standard rules that pass only those that judge by yes and no state no number. */
  @Test
  void standardRules_thatPass_stateANumber() {
    Report report = StandardRulebook.rulebook().evaluate(PLAIN);

    assertThat(report.results())
        .filteredOn(result -> result.outcome().status() == Status.PASSED)
        .filteredOn(result -> result.outcome().nearest().isEmpty())
        .extracting(RuleResult::ruleId)
        .containsExactly("screw-kind");
  }

  @Test
  void limitInAnotherUnit_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Margin.atMost(
                    "setting.mainJet",
                    new Measure(1.2, "mm"),
                    Measure.ratio(2),
                    ThrottleBand.WHOLE))
        .withMessage(
            "limit 2.000 of something measured as 1.200 mm: allowed a limit in the unit \"mm\"");
  }
}
