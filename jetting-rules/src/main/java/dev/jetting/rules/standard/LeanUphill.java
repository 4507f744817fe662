package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
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
      Rule.named("lean-uphill")
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
    return Outcome.of(
        Bands.where(setting.profile().points(), point -> tooLeanUphill(point, accepted)).stream()
            .map(run -> finding(run, accepted))
            .toList());
  }

  private static boolean tooLeanUphill(RiskPoint point, Probability accepted) {
    return !point.mixture().throttle().isLessThan(LEAST_HELD)
        && point.uphill().leanRisk().isMoreThan(accepted);
  }

  private static Finding finding(List<RiskPoint> run, Probability accepted) {
    RiskPoint worst = run.get(0);
    for (RiskPoint point : run) {
      worst = point.uphill().leanRisk().isMoreThan(worst.uphill().leanRisk()) ? point : worst;
    }
    return Finding.above(
            LeanAnywhere.subject(worst.inCharge()),
            Measure.ratio(worst.uphill().leanRisk().value()),
            Measure.ratio(accepted.value()),
            Bands.of(run))
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
