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
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** Cutaway and needle jet must ask for the same correction. */
final class CutawayBalance {

  private static final ThrottleBand LOW =
      new ThrottleBand(ThrottleOpening.ofShare(1 / 16.0), ThrottleOpening.ofShare(3 / 16.0));
  private static final ThrottleBand MIDDLE =
      new ThrottleBand(ThrottleOpening.ofShare(3 / 8.0), ThrottleOpening.ofShare(5 / 8.0));
  private static final ThrottleBand BOTH = new ThrottleBand(LOW.from(), MIDDLE.to());

  static final Rule RULE =
      RulePages.draft("cutaway-balance", "mixture")
          .limit(RuleLimits.BALANCE.name(), RuleLimits.BALANCE.number())
          .judgingBy(CutawayBalance::judge);

  private static final ThrottleOpening EIGHTH = ThrottleOpening.ofEighths(1);

  private static final Message AGAINST = Message.of("rule.cutaway-balance.remedy");

  private CutawayBalance() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    if (!setting.looksInto(LOW) || !setting.looksInto(MIDDLE)) {
      return Outcome.notApplicable(Message.of("rule.cutaway-balance.outside"));
    }
    double low = offset(setting, LOW);
    double middle = offset(setting, MIDDLE);
    double imbalance = low - middle;
    double limit = RuleLimits.BALANCE.in(limits);
    Margin margin =
        Margin.atMost(
            "setting.cutaway",
            Measure.logarithm(Math.abs(imbalance)),
            Measure.logarithm(limit),
            BOTH);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    boolean leanLow = imbalance > 0;
    return Outcome.failed(
        margin
            .finding()
            .with("cutaway", Argument.cutaway(setting.setting().cutaway()))
            .with("needleJet", Argument.diameter(setting.setting().needleJet().bore()))
            .with("by", Argument.share(StrictMath.expm1(Math.abs(imbalance))))
            .with("side", Remedies.side(leanLow))
            .says(
                Message.of("rule.cutaway-balance.finding"),
                leanLow
                    ? Remedy.Aim.richer(EIGHTH, imbalance - limit).saying(AGAINST)
                    : Remedy.Aim.leaner(EIGHTH, -imbalance - limit).saying(AGAINST)));
  }

  /** Mean of ln (λ by λ wanted) over a band. */
  private static double offset(AssessedSetting setting, ThrottleBand band) {
    return setting
        .within(band)
        .profile()
        .mean(RidingProfile.even(), point -> Headroom.offset(point, setting))
        .orElse(0.0);
  }
}
