package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;

/** Rich does no harm to the piston, but the engine must run. */
final class TooRich {

  static final Rule RULE = RulePages.draft("too-rich", "mixture").judging(TooRich::judge);

  private TooRich() {}

  private static Outcome judge(AssessedSetting setting) {
    List<RiskPoint> points = setting.profile().points();
    return Outcome.of(
        Bands.where(points, TooRich::rich).stream().map(TooRich::finding).toList(),
        List.of(margin(worst(points), ThrottleBand.at(worst(points).mixture().throttle()))));
  }

  private static boolean rich(RiskPoint point) {
    return point.lambda().compareTo(point.richLimit()) < 0;
  }

  private static Finding finding(List<RiskPoint> run) {
    RiskPoint worst = worst(run);
    return margin(worst, Bands.of(run))
        .finding()
        .worstAt(worst)
        .with("throttle", Argument.throttle(worst.mixture().throttle()))
        .with("lambda", Argument.lambda(worst.lambda(), worst.richLimit()))
        .with("limit", Argument.lambda(worst.richLimit(), worst.lambda()))
        .says(
            Message.of("rule.too-rich.finding"),
            Remedy.Aim.leaner(worst.mixture().throttle(), depth(worst)));
  }

  private static RiskPoint worst(List<RiskPoint> run) {
    RiskPoint worst = run.get(0);
    for (RiskPoint point : run) {
      worst = beyond(point) > beyond(worst) ? point : worst;
    }
    return worst;
  }

  private static Margin margin(RiskPoint point, ThrottleBand band) {
    return Margin.atLeast(
        LeanAnywhere.subject(point.inCharge()),
        Measure.ratio(point.lambda().value()),
        Measure.ratio(point.richLimit().value()),
        band);
  }

  /** What the finding shows as its margin: by another measure a richer part could better it. */
  private static double beyond(RiskPoint point) {
    return point.richLimit().value() - point.lambda().value();
  }

  private static double depth(RiskPoint point) {
    return StrictMath.log(point.richLimit().value() / point.lambda().value());
  }
}
