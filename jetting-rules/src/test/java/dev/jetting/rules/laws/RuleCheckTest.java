package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import java.util.List;
import org.junit.jupiter.api.Test;

class RuleCheckTest {

  private static final Rule UP_TO_130 =
      Rule.named("up-to-130")
          .judging(
              setting -> {
                Margin margin =
                    Margin.atMost(
                        "setting.mainJet",
                        new Measure(setting.setting().mainJet().millimetres(), "mm"),
                        new Measure(1.3, "mm"),
                        ThrottleBand.WHOLE);
                return margin.fails()
                    ? Outcome.failed(margin.finding().says("too big", "smaller"))
                    : Outcome.passed(margin);
              });

  private static final RuleCheck CHECK = RuleCheck.of(UP_TO_130).on(Odd.SHEET);

  @Test
  void checksThatHold_areSilent() {
    CHECK.passes().withMeasured(1.3).withLimit(1.3);
    CHECK.edited("/setting/mainJet", "1.31 mm").failsOn("setting.mainJet").withMeasured(1.31);
    CHECK.edited("/setting/needle/tapers/0/rate", 0.02).passes();
    RuleCheck.of(UP_TO_130.unless(setting -> true, "never")).doesNotApply();
    RuleCheck.of(Rule.named("open").judging(setting -> Outcome.notEvaluated("all")))
        .isNotEvaluated();
  }

  @Test
  void checksThatDoNotHold_throwAndSayWhatCameOut() {
    RuleCheck bigger = CHECK.edited("/setting/mainJet", "1.31 mm");

    assertThatThrownBy(bigger::passes)
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("/setting/mainJet")
        .hasMessageContaining("expected PASSED, but it came out as FAILED (too big)")
        .hasMessageContaining("1.310 mm against 1.300 mm");
    assertThatThrownBy(() -> bigger.failsOn("setting.pilotJet"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("setting.pilotJet");
    assertThatThrownBy(() -> bigger.failsOn("setting.mainJet").withLimit(1.29))
        .isInstanceOf(AssertionError.class)
        .hasMessage("rule up-to-130: expected limit 1.29, but it is 1.3");
  }

  @Test
  void edits_thatLeadNowhere_areRefused() {
    assertThatThrownBy(() -> CHECK.edited("/setting/tapers/9/rate", 1).passes())
        .hasMessageContaining("pointer \"/setting/tapers/9/rate\"");
    assertThatThrownBy(() -> CHECK.edited("mainJet", "1 mm").passes())
        .hasMessageContaining("as in /setting/mainJet");
    assertThatThrownBy(() -> CHECK.edited("/setting/mainJet", "1 kg").passes())
        .hasMessageContaining("$.setting.mainJet");
  }

  @Test
  void lawReport_saysWhichOutcomesEachRuleEverHad() {
    Rule silent = Rule.named("silent").judging(setting -> Outcome.notApplicable("never"));

    LawReport report =
        LawKit.of(List.of(Laws.neverBroken())).hold(Candidate.of(UP_TO_130, silent), Odd.trials());

    assertThat(report.seen())
        .extracting(SeenOutcomes::ruleId)
        .containsExactly("up-to-130", "silent");
    assertThat(report.seen().get(0).counts()).containsOnlyKeys(Status.PASSED, Status.FAILED);
    assertThat(report.untestedRules()).containsExactly("silent");
    assertThat(report.toString()).contains("rule silent: NOT_APPLICABLE 32 (not tested)");
  }
}
