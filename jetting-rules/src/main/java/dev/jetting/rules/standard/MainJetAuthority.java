package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** Of two passages in series the smaller one meters. */
final class MainJetAuthority {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  static final Rule RULE =
      RulePages.draft("main-jet-authority", "parts")
          .within(FULL)
          .limit(RuleLimits.RING_BY_MAIN.name(), RuleLimits.RING_BY_MAIN.number())
          .judgingBy(MainJetAuthority::judge);

  private MainJetAuthority() {}

  private static Outcome judge(AssessedSetting assessed, Map<String, Coefficient> limits) {
    Setting setting = assessed.setting();
    double down =
        setting.carburettor().bore().millimetres()
            + (setting.clip().grooveFromTop() - 1) * setting.needle().groovePitch().millimetres();
    double ring =
        circle(setting.needleJet().bore().millimetres())
            - circle(setting.needle().diameterAt(down));
    double main = circle(setting.mainJet().millimetres());
    double limit = RuleLimits.RING_BY_MAIN.in(limits) * main;
    Margin margin =
        Margin.atLeast(
            "setting.mainJet", new Measure(ring, "mm²"), new Measure(limit, "mm²"), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("main", Argument.mainJet(setting.mainJet()))
            .with("ring", new Measure(ring, "mm²"))
            .with("hole", new Measure(main, "mm²"))
            .says(
                Message.of("rule.main-jet-authority.finding"),
                Remedy.Aim.other(
                    ThrottleOpening.FULL, Message.of("rule.main-jet-authority.remedy"))));
  }

  private static double circle(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
