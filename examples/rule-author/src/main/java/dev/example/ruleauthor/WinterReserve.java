package dev.example.ruleauthor;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;

/** This shop lets nobody out who would be leaner than wanted at full throttle in the frost. */
final class WinterReserve {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  static final Rule RULE =
      Rule.named("winter-reserve")
          .title("No reserve at full throttle on the coldest day")
          .rationale(
              "Full throttle is where an engine makes most heat, and cold air leans it. This shop"
                  + " wants no worse than the mixture that the engine needs, even then.")
          .severity(Severity.DANGER)
          .within(FULL)
          .judging(WinterReserve::judge);

  private WinterReserve() {}

  private static Outcome judge(AssessedSetting setting) {
    RiskPoint coldest = setting.coldest().nearest(ThrottleOpening.FULL);
    double lambda = coldest.mixture().lambda().value();
    double needed = setting.setup().engine().need().at(ThrottleOpening.FULL).value();
    Margin margin =
        Margin.atMost("setting.mainJet", Measure.ratio(lambda), Measure.ratio(needed), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("lambda", TradeStyle.lambda(coldest.mixture().lambda()))
            .with("main", TradeStyle.main(setting.setting().mainJet()))
            .says(
                "With {main} full throttle is at {lambda} on the coldest day, leaner than needed.",
                "Fit a bigger main jet before the winter."));
  }
}
