package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.ThrottleOpening;

/** The crispest setting is not the safest one. */
final class CrispMiddle {

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(2, 6);

  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  static final Rule RULE =
      Rule.named("crisp-but-lean-middle")
          .title("Crisp but lean in the middle")
          .rationale(
              "An engine feels best a little lean of what is good for it, in the middle of the"
                  + " throttle most of all, where one rides for hours. That nothing is wrong yet is"
                  + " no margin for a cold morning, a bad batch of fuel or a tired seal.")
          .within(MIDDLE)
          .judging(CrispMiddle::judge);

  private CrispMiddle() {}

  private static Outcome judge(AssessedSetting setting) {
    RiskPoint worst = setting.profile().worst();
    if (worst.leanRisk().compareTo(setting.sheet().riding().acceptedRisk()) > 0) {
      return Outcome.notApplicable("the middle is beyond the accepted risk: see lean-anywhere");
    }
    RiskProfile profile = setting.profile();
    RidingProfile even = RidingProfile.even();
    double mean = profile.mean(even, p -> Room.offset(p, setting)).orElse(0.0);
    double room = profile.mean(even, p -> Room.forLeaning(p, setting)).orElse(0.0);
    double limit = Limits.CRISP.value() * room;
    if (mean <= limit) {
      return Outcome.passed();
    }
    RiskPoint middle = setting.profile().nearest(HALF);
    return Outcome.failed(
        Finding.above(
                LeanAnywhere.subject(middle.inCharge()),
                Measure.ratio(mean),
                Measure.ratio(limit),
                MIDDLE)
            .with("by", Remedies.percent(StrictMath.expm1(mean)))
            .says(
                "The middle of the throttle is {by} leaner than wanted: crisp, with little left to"
                    + " the lean limit.",
                Remedy.Aim.richer(middle.mixture().throttle(), mean - limit)));
  }
}
