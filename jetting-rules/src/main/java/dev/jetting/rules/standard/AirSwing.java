package dev.jetting.rules.standard;

import dev.jetting.core.air.Air;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Probability;
import java.util.ArrayList;
import java.util.List;

/** A setting must hold on the coldest day and on the hottest that the owner rides in. */
final class AirSwing {

  static final Rule RULE =
      RulePages.draft("air-density-swing", "mixture", "weather")
          .severity(Severity.DANGER)
          .judging(AirSwing::judge);

  private AirSwing() {}

  private static Outcome judge(AssessedSetting setting) {
    Riding riding = setting.sheet().riding();
    Probability accepted = riding.acceptedRisk();
    List<Finding> findings =
        new ArrayList<>(day("coldest", setting.coldest(), riding.coldest(), setting));
    if (!riding.hottest().equals(riding.coldest())) {
      findings.addAll(day("hottest", setting.hottest(), riding.hottest(), setting));
    }
    Margin coldest = LeanAnywhere.margin(setting.coldest().worst(), accepted);
    Margin hottest = LeanAnywhere.margin(setting.hottest().worst(), accepted);
    return findings.isEmpty() && (coldest.fails() || hottest.fails())
        ? Outcome.notApplicable(Message.of("rule.air-density-swing.no-leaner"))
        : Outcome.of(findings, List.of(coldest, hottest));
  }

  private static List<Finding> day(
      String name, RiskProfile profile, Air air, AssessedSetting setting) {
    return Bands.where(profile.points(), point -> isTheDays(point, setting)).stream()
        .map(run -> finding(name, LeanAnywhere.worst(run), Bands.of(run), air, setting))
        .toList();
  }

  /** Too lean, and leaner there than today, or it is not the day's doing: lean-anywhere says it. */
  private static boolean isTheDays(RiskPoint point, AssessedSetting setting) {
    return point.leanRisk().isMoreThan(setting.sheet().riding().acceptedRisk())
        && point.leanRisk().isMoreThan(today(point, setting).leanRisk());
  }

  private static RiskPoint today(RiskPoint point, AssessedSetting setting) {
    return setting.profile().nearest(point.mixture().throttle());
  }

  private static Finding finding(
      String name, RiskPoint worst, ThrottleBand band, Air air, AssessedSetting setting) {
    Probability accepted = setting.sheet().riding().acceptedRisk();
    return Finding.above(
            LeanAnywhere.subject(worst.inCharge()),
            Measure.leanRisk(worst.leanRisk()),
            Measure.leanRisk(accepted),
            band)
        .with("day", Argument.word("rule.air-density-swing.day." + name))
        .with("temperature", Argument.temperature(air.temperature()))
        .with("pressure", Argument.pressure(air.pressure()))
        .worstAt(worst)
        .with("throttle", Argument.throttle(worst.mixture().throttle()))
        .with("lambda", Argument.lambda(worst.lambda()))
        .with("limit", Argument.lambda(worst.leanLimit()))
        .with("risk", Argument.risk(worst.leanRisk(), accepted))
        .says(
            Message.of("rule.air-density-swing.finding"),
            Remedy.Aim.richer(worst.mixture().throttle(), LeanAnywhere.need(worst, accepted)));
  }
}
