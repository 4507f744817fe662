package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.List;

/** What holds on the level road may have little left to spare on a climb. */
final class LeanUphill {

  /** As in mixture-step: below, no rider holds the grip, least of all on a climb. */
  private static final ThrottleOpening LEAST_HELD = ThrottleOpening.ofShare(1 / 16.0);

  static final Rule RULE =
      RulePages.draft("lean-uphill", "mixture")
          .title("Perhaps too lean on a climb")
          .rationale(
              "On a climb the same opening turns the engine slower than on the level road, and"
                  + " stays open for longer. How the mixture moves with speed is known less well"
                  + " than the mixture on the level: a setting with little to spare there may be"
                  + " lean uphill.")
          .judging(LeanUphill::judge);

  private LeanUphill() {}

  private static Outcome judge(AssessedSetting setting) {
    Probability accepted = setting.sheet().riding().acceptedRisk();
    if (setting.profile().worst().leanRisk().isMoreThan(accepted)) {
      return Outcome.notApplicable("too lean on the level road: see lean-anywhere");
    }
    List<RiskPoint> held =
        setting.profile().points().stream()
            .filter(point -> !point.mixture().throttle().isLessThan(LEAST_HELD))
            .toList();
    return Outcome.of(
        Bands.where(held, point -> point.uphill().leanRisk().isMoreThan(accepted)).stream()
            .map(run -> finding(run, accepted))
            .toList(),
        held.isEmpty()
            ? List.of()
            : List.of(
                margin(worst(held), accepted, ThrottleBand.at(worst(held).mixture().throttle()))));
  }

  private static RiskPoint worst(List<RiskPoint> run) {
    RiskPoint worst = run.get(0);
    for (RiskPoint point : run) {
      worst = point.uphill().leanRisk().isMoreThan(worst.uphill().leanRisk()) ? point : worst;
    }
    return worst;
  }

  private static Margin margin(RiskPoint worst, Probability accepted, ThrottleBand band) {
    return Margin.atMost(
        LeanAnywhere.subject(worst.inCharge()),
        Measure.ratio(worst.uphill().leanRisk().value()),
        Measure.ratio(accepted.value()),
        band);
  }

  private static Finding finding(List<RiskPoint> run, Probability accepted) {
    RiskPoint worst = worst(run);
    return margin(worst, accepted, Bands.of(run))
        .finding()
        .with("throttle", TradeStyle.throttle(worst.mixture().throttle()))
        .with("speed", new Measure(Math.rint(worst.uphill().speed().rpm()), "rpm"))
        .with("risk", TradeStyle.probability(worst.uphill().leanRisk(), accepted))
        .with("level", TradeStyle.probability(worst.leanRisk(), accepted))
        .with("accepted", TradeStyle.probability(accepted))
        .says(
            "On a climb at {throttle}, pulled down to {speed}, the risk of being too lean is"
                + " {risk}; on the level road it is {level}, {accepted} accepted.",
            "Change down before the engine labours there, and read a plug or a sensor on a climb at"
                + " this opening before you trust it.");
  }
}
