package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** The crispest setting is not the safest one. */
final class CrispMiddle {

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(2, 6);

  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  static final Rule RULE =
      RulePages.draft("crisp-but-lean-middle", "mixture")
          .within(MIDDLE)
          .limit(RuleLimits.CRISP.name(), RuleLimits.CRISP.number())
          .judgingBy(CrispMiddle::judge);

  private CrispMiddle() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    RiskPoint worst = setting.profile().worst();
    if (worst.leanRisk().compareTo(setting.sheet().riding().acceptedRisk()) > 0) {
      return Outcome.notApplicable(Message.of("rule.crisp-but-lean-middle.too-lean"));
    }
    RiskProfile profile = setting.profile();
    RidingProfile even = RidingProfile.even();
    double mean = profile.mean(even, p -> Headroom.offset(p, setting)).orElse(0.0);
    double room = profile.mean(even, p -> Headroom.forLeaning(p, setting)).orElse(0.0);
    double limit = RuleLimits.CRISP.in(limits) * room;
    RiskPoint middle = setting.profile().nearest(HALF);
    Margin margin =
        Margin.atMost(
            LeanAnywhere.subject(middle.inCharge()),
            Measure.logarithm(mean),
            Measure.logarithm(limit),
            MIDDLE);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("by", Argument.share(StrictMath.expm1(mean)))
            .says(
                Message.of("rule.crisp-but-lean-middle.finding"),
                Remedy.Aim.richer(middle.mixture().throttle(), mean - limit)));
  }
}
