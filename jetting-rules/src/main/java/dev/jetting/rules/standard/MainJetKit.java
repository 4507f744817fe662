package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;

/** A kit of jets must reach beyond the jet in use, on the rich side. */
final class MainJetKit {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  static final Rule RULE =
      RulePages.draft("main-jet-kit", "parts-at-hand")
          .within(FULL)
          .limit(RuleLimits.RICHER_MAINS.name(), RuleLimits.RICHER_MAINS.number())
          .judgingBy(MainJetKit::judge);

  private MainJetKit() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    List<JetBore> kit = setting.sheet().parts().mainJets();
    if (kit.isEmpty()) {
      return Outcome.notEvaluated(Message.of("rule.main-jet-kit.missing"));
    }
    JetBore main = setting.setting().mainJet();
    long richer = kit.stream().distinct().filter(jet -> jet.compareTo(main) > 0).count();
    double limit = RuleLimits.RICHER_MAINS.in(limits);
    Margin margin =
        Margin.atLeast(
            "parts.mainJets", new Measure(richer, "sizes"), new Measure(limit, "sizes"), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("main", Argument.mainJet(main))
            .with(
                "left",
                Argument.word(
                    richer == 0 ? "rule.main-jet-kit.left.none" : "rule.main-jet-kit.left.one"))
            .says(
                Message.of("rule.main-jet-kit.finding"),
                new Remedy.Advice(
                    Message.of("rule.main-jet-kit.remedy").with("main", Argument.mainJet(main)))));
  }
}
