package dev.jetting.rules.standard;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/** The leanest needle in the leanest needle jet: each may serve, the two together are dangerous. */
final class LeanestMidRange {

  private static final ThrottleBand MIDDLE =
      new ThrottleBand(ThrottleOpening.ofShare(1 / 16.0), ThrottleOpening.ofEighths(5));

  static final Rule RULE =
      RulePages.draft("two-leanest-mid-range-parts", "mixture", "parts")
          .severity(Severity.DANGER)
          .within(MIDDLE)
          .judging(LeanestMidRange::judge);

  private LeanestMidRange() {}

  private static Outcome judge(AssessedSetting assessed) {
    Probability accepted = assessed.sheet().riding().acceptedRisk();
    RiskPoint worst = assessed.profile().worst();
    if (worst.leanRisk().compareTo(accepted) <= 0) {
      return Outcome.passed(margin(worst, accepted));
    }
    PartsAtHand parts = assessed.sheet().parts();
    Setting setting = assessed.setting();
    if (parts.needleJets().size() < 2 || parts.needles().size() < 2) {
      return Outcome.notEvaluated(Message.of("rule.two-leanest-mid-range-parts.missing"));
    }
    if (!leanestJet(setting, parts.needleJets()) || !leanestNeedle(setting, parts.needles())) {
      return Outcome.notApplicable(Message.of("rule.two-leanest-mid-range-parts.leaner-at-hand"));
    }
    return Outcome.failed(
        margin(worst, accepted)
            .finding()
            .with("needle", setting.needle().id())
            .with("needleJet", Argument.diameter(setting.needleJet().bore()))
            .worstAt(worst)
            .with("throttle", Argument.throttle(worst.mixture().throttle()))
            .with("risk", Argument.risk(worst.leanRisk(), accepted))
            .says(
                Message.of("rule.two-leanest-mid-range-parts.finding"),
                Remedy.Aim.richer(worst.mixture().throttle(), LeanAnywhere.need(worst, accepted))
                    .saying(Message.of("rule.two-leanest-mid-range-parts.remedy"))));
  }

  private static Margin margin(RiskPoint worst, Probability accepted) {
    return Margin.atMost(
        "setting.needleJet",
        Measure.probability(worst.leanRisk()),
        Measure.probability(accepted),
        MIDDLE);
  }

  private static boolean leanestJet(Setting setting, List<NeedleJet> jets) {
    return jets.stream().noneMatch(jet -> jet.bore().compareTo(setting.needleJet().bore()) < 0);
  }

  private static boolean leanestNeedle(Setting setting, List<Needle> needles) {
    double own = fatness(setting, setting.needle());
    return needles.stream().noneMatch(needle -> fatness(setting, needle) > own);
  }

  /** Mean area in mm² that a needle, its clip in the middle, fills from closed to half throttle. */
  private static double fatness(Setting setting, Needle needle) {
    double hung = (needle.grooves() - 1) / 2.0 * needle.groovePitch().millimetres();
    double half = setting.carburettor().bore().millimetres() / 2;
    double sum = 0;
    for (int i = 0; i <= 8; i++) {
      double diameter = needle.diameterAt(hung + half * i / 8);
      sum += Math.PI / 4 * diameter * diameter;
    }
    return sum / 9;
  }
}
