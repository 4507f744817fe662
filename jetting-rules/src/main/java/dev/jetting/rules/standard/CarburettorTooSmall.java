package dev.jetting.rules.standard;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** A narrow bore costs charge at peak power, and nothing else. */
final class CarburettorTooSmall {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  static final Rule RULE =
      RulePages.draft("carburettor-too-small", "carburettor")
          .severity(Severity.NOTE)
          .within(FULL)
          .limit(RuleLimits.RESTRICTION.name(), RuleLimits.RESTRICTION.number())
          .judgingBy(CarburettorTooSmall::judge);

  private CarburettorTooSmall() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup open = setting.setup().withSetting(setting.setting().withIntake(Intake.openMouth()));
    MixturePoint peak = MixtureModel.of(open).at(ThrottleOpening.FULL);
    double lost = 1 - peak.chargeShare();
    double limit = RuleLimits.RESTRICTION.in(limits);
    Margin margin =
        Margin.atMost("setting.carburettor", Measure.share(lost), Measure.share(limit), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("bore", Argument.diameter(setting.setting().carburettor().bore()))
            .with("speed", new Measure(peak.speed().rpm(), "rpm"))
            .with("lost", Argument.share(lost))
            .says(
                Message.of("rule.carburettor-too-small.finding"),
                new Remedy.Advice(Message.of("rule.carburettor-too-small.remedy"))));
  }
}
