package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ClipPosition;
import java.util.List;

/** A clip in the last groove leaves no room to trim. */
final class ClipAtEnd {

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(1, 6);

  static final Rule RULE =
      RulePages.draft("clip-at-end", "parts")
          .severity(Severity.NOTE)
          .within(MIDDLE)
          .judging(ClipAtEnd::judge)
          .unless(
              setting -> setting.setting().needle().grooves() < 3,
              Message.of("rule.clip-at-end.no-groove"));

  private ClipAtEnd() {}

  private static Outcome judge(AssessedSetting setting) {
    ClipPosition clip = setting.setting().clip();
    Measure groove = new Measure(clip.grooveFromTop(), "groove from top");
    Margin leaner =
        Margin.atLeast("setting.clip", groove, new Measure(2, "groove from top"), MIDDLE);
    if (leaner.fails()) {
      return Outcome.failed(
          leaner
              .finding()
              .with("clip", Argument.clip(clip))
              .says(
                  Message.of("rule.clip-at-end.finding.leaner"),
                  new Remedy.Advice(Message.of("rule.clip-at-end.remedy.leaner"))));
    }
    Margin richer =
        Margin.atMost(
            "setting.clip", groove, new Measure(clip.grooves() - 1, "groove from top"), MIDDLE);
    if (richer.fails()) {
      return Outcome.failed(
          richer
              .finding()
              .with("clip", Argument.clip(clip))
              .says(
                  Message.of("rule.clip-at-end.finding.richer"),
                  new Remedy.Advice(Message.of("rule.clip-at-end.remedy.richer"))));
    }
    return Outcome.passed(List.of(leaner, richer));
  }
}
