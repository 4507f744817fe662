package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.TradeStyle;
import java.util.List;

/** A clip in the last groove leaves no room to trim. */
final class ClipAtEnd {

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(1, 6);

  static final Rule RULE =
      RulePages.draft("clip-at-end", "parts")
          .title("Clip in the last groove")
          .rationale(
              "A setting that needs the first or the last groove has the wrong needle or needle"
                  + " jet; the next cold day has no groove left.")
          .severity(Severity.NOTE)
          .within(MIDDLE)
          .judging(ClipAtEnd::judge)
          .unless(
              setting -> setting.setting().needle().grooves() < 3,
              "the needle has no inner groove");

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
              .with("clip", TradeStyle.clip(clip))
              .says(
                  "The {clip} leaves no leaner groove.",
                  "Leave it while it is not too rich. Else a thicker needle or a smaller needle"
                      + " jet, with the clip set near the middle, from the rich side."));
    }
    Margin richer =
        Margin.atMost(
            "setting.clip", groove, new Measure(clip.grooves() - 1, "groove from top"), MIDDLE);
    if (richer.fails()) {
      return Outcome.failed(
          richer
              .finding()
              .with("clip", TradeStyle.clip(clip))
              .says(
                  "The {clip} leaves no richer groove.",
                  "Get a thinner needle or a bigger needle jet before it has to be richer; only"
                      + " with that in does the clip go back near the middle."));
    }
    return Outcome.passed(List.of(leaner, richer));
  }
}
