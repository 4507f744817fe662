package dev.jetting.rules.standard;

import dev.jetting.core.air.Air;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A setting must hold on the coldest day and on the hottest that the owner rides in. */
final class AirSwing {

  static final Rule RULE =
      Rule.named("air-density-swing")
          .title("Too lean on another day that the owner rides in")
          .rationale(
              "Cold, dense air leans the mixture: a setting made on a warm afternoon may be too lean"
                  + " on a frosty morning. Just where the needle begins to feed, thin hot air can be"
                  + " the leaner one.")
          .severity(Severity.DANGER)
          .judging(AirSwing::judge);

  private AirSwing() {}

  private static Outcome judge(AssessedSetting setting) {
    List<Finding> findings =
        Stream.of(
                day("coldest", setting.coldest(), setting.sheet().riding().coldest(), setting),
                day("hottest", setting.hottest(), setting.sheet().riding().hottest(), setting))
            .flatMap(Optional::stream)
            .toList();
    return Outcome.of(findings);
  }

  private static Optional<Finding> day(
      String name, RiskProfile profile, Air air, AssessedSetting setting) {
    Probability accepted = setting.sheet().riding().acceptedRisk();
    RiskPoint worst = profile.worst();
    // Leaner than today, or it is not the day's doing: then lean-anywhere says it.
    boolean worseThanToday = worst.leanRisk().compareTo(setting.profile().worst().leanRisk()) > 0;
    if (worst.leanRisk().compareTo(accepted) <= 0 || !worseThanToday) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.above(
                LeanAnywhere.subject(worst.inCharge()),
                Measure.ratio(worst.leanRisk().value()),
                Measure.ratio(accepted.value()),
                ThrottleBand.at(worst.mixture().throttle()))
            .with("day", name)
            .with("temperature", TradeStyle.temperature(air.temperature()))
            .with("pressure", TradeStyle.pressure(air.pressure()))
            .with("throttle", TradeStyle.throttle(worst.mixture().throttle()))
            .with("lambda", Remedies.lambda(worst.lambda()))
            .with("limit", Remedies.lambda(worst.leanLimit()))
            .with("risk", TradeStyle.probability(worst.leanRisk(), accepted))
            .says(
                "On the {day} day ({temperature}, {pressure}) the mixture is {lambda} at {throttle}"
                    + " against a limit of {limit}: {risk} risk.",
                Remedies.richer(worst, setting.setting(), LeanAnywhere.need(worst, accepted))));
  }
}
