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
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/** What holds on the level road may have little left to spare on a climb. */
final class LeanUphill {

  /** As in mixture-step: below, no rider holds the grip, least of all on a climb. */
  private static final ThrottleOpening LEAST_HELD = ThrottleOpening.ofShare(1 / 16.0);

  static final Rule RULE = RulePages.draft("lean-uphill", "mixture").judging(LeanUphill::judge);

  private LeanUphill() {}

  private static Outcome judge(AssessedSetting setting) {
    Probability accepted = setting.sheet().riding().acceptedRisk();
    if (setting.profile().worst().leanRisk().isMoreThan(accepted)) {
      return Outcome.notApplicable(Message.of("rule.lean-uphill.too-lean"));
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
        Measure.probability(worst.uphill().leanRisk()),
        Measure.probability(accepted),
        band);
  }

  private static Finding finding(List<RiskPoint> run, Probability accepted) {
    RiskPoint worst = worst(run);
    return margin(worst, accepted, Bands.of(run))
        .finding()
        .worstAt(worst.mixture().throttle(), worst.uphill().speed())
        .with("throttle", Argument.throttle(worst.mixture().throttle()))
        .with("speed", new Measure(Math.rint(worst.uphill().speed().rpm()), "rpm"))
        .with("risk", Argument.risk(worst.uphill().leanRisk(), accepted))
        .with("level", Argument.risk(worst.leanRisk(), accepted))
        .with("accepted", Argument.risk(accepted))
        .says(
            Message.of("rule.lean-uphill.finding"),
            new Remedy.Advice(Message.of("rule.lean-uphill.remedy")));
  }
}
