package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Map;

/** A kit of jets must reach beyond the jet in use, on the rich side. */
final class MainJetKit {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  static final Rule RULE =
      RulePages.draft("main-jet-kit", "parts-at-hand")
          .title("Main jet too close to the rich end of the kit")
          .rationale(
              "Who has no richer main jet in his box cannot answer a cold day or a bad plug. A kit"
                  + " should have two sizes left above the one in use.")
          .within(FULL)
          .limit(Limits.RICHER_MAINS.name(), Limits.RICHER_MAINS.number())
          .judgingBy(MainJetKit::judge);

  private MainJetKit() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    List<JetBore> kit = setting.sheet().parts().mainJets();
    if (kit.isEmpty()) {
      return Outcome.notEvaluated("parts.mainJets: which ones there are");
    }
    JetBore main = setting.setting().mainJet();
    long richer = kit.stream().distinct().filter(jet -> jet.compareTo(main) > 0).count();
    double limit = Limits.RICHER_MAINS.in(limits);
    Margin margin =
        Margin.atLeast(
            "parts.mainJets", new Measure(richer, "sizes"), new Measure(limit, "sizes"), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("main", TradeStyle.main(main))
            .with("left", richer == 0 ? "no richer main jet" : "only one richer main jet")
            .says(
                "The kit has {left} than {main}.",
                "Get bigger main jets, two sizes above " + TradeStyle.main(main) + " at least."));
  }
}
