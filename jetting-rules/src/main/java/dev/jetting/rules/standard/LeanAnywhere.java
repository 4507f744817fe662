package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Probability;
import java.util.List;
import java.util.Objects;

/** The first question of all: is the mixture too lean at any throttle opening? */
final class LeanAnywhere {

  static final Rule RULE =
      RulePages.draft("lean-anywhere", "mixture")
          .severity(Severity.DANGER)
          .judging(LeanAnywhere::judge);

  private LeanAnywhere() {}

  private static Outcome judge(AssessedSetting setting) {
    Probability accepted = setting.sheet().riding().acceptedRisk();
    List<RiskPoint> points = setting.profile().points();
    return Outcome.of(
        Bands.where(points, point -> point.leanRisk().compareTo(accepted) > 0).stream()
            .map(run -> finding(run, accepted))
            .toList(),
        List.of(margin(worst(points), accepted)));
  }

  private static Finding finding(List<RiskPoint> run, Probability accepted) {
    RiskPoint worst = worst(run);
    return Finding.above(
            subject(worst.inCharge()),
            Measure.leanRisk(worst.leanRisk()),
            Measure.leanRisk(accepted),
            Bands.of(run))
        .worstAt(worst)
        .with("throttle", Argument.throttle(worst.mixture().throttle()))
        .with("lambda", Argument.lambda(worst.lambda()))
        .with("limit", Argument.lambda(worst.leanLimit()))
        .with("risk", Argument.risk(worst.leanRisk(), accepted))
        .with("accepted", Argument.risk(accepted))
        .says(
            Message.of("rule.lean-anywhere.finding"),
            Remedy.Aim.richer(worst.mixture().throttle(), need(worst, accepted)));
  }

  /** Of a risk that is accepted at every opening. */
  static Margin margin(RiskPoint worst, Probability accepted) {
    return Margin.atMost(
        subject(worst.inCharge()),
        Measure.leanRisk(worst.leanRisk()),
        Measure.leanRisk(accepted),
        ThrottleBand.at(worst.mixture().throttle()));
  }

  static RiskPoint worst(List<RiskPoint> run) {
    RiskPoint worst = run.get(0);
    for (RiskPoint point : run) {
      worst = point.leanRisk().compareTo(worst.leanRisk()) > 0 ? point : worst;
    }
    return worst;
  }

  static double need(RiskPoint point, Probability accepted) {
    return point.leanBeyond(accepted);
  }

  static String subject(Circuit circuit) {
    return switch (Objects.requireNonNull(circuit)) {
      case PILOT -> "setting.pilotJet";
      case CUTAWAY -> "setting.cutaway";
      case NEEDLE -> "setting.needle";
      case MAIN -> "setting.mainJet";
    };
  }
}
