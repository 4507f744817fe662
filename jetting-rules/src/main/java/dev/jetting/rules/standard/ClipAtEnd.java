package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.TradeStyle;

/** A clip in the last groove leaves no room to trim. */
final class ClipAtEnd {

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(1, 6);

  static final Rule RULE =
      Rule.named("clip-at-end")
          .title("Clip in the last groove")
          .rationale(
              "A setting that needs the first or the last groove has the wrong needle or needle jet;"
                  + " the next cold day has no groove left.")
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
    if (clip.grooveFromTop() == 1) {
      return Outcome.failed(
          Finding.below("setting.clip", groove, new Measure(2, "groove from top"), MIDDLE)
              .with("clip", TradeStyle.clip(clip))
              .says(
                  "The {clip} leaves no leaner groove.",
                  "Leave it while it is not too rich. Else a thicker needle or a smaller needle jet,"
                      + " with the clip set near the middle, from the rich side."));
    }
    if (clip.grooveFromBottom() == 1) {
      return Outcome.failed(
          Finding.above(
                  "setting.clip",
                  groove,
                  new Measure(clip.grooves() - 1, "groove from top"),
                  MIDDLE)
              .with("clip", TradeStyle.clip(clip))
              .says(
                  "The {clip} leaves no richer groove.",
                  "Get a thinner needle or a bigger needle jet before it has to be richer; only with"
                      + " that in does the clip go back near the middle."));
    }
    return Outcome.passed();
  }
}
