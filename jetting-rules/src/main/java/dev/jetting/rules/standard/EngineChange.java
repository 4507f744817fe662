package dev.jetting.rules.standard;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.Map;

/** After a bigger cylinder or another exhaust the old jets prove nothing. */
final class EngineChange {

  static final Rule RULE =
      RulePages.draft("engine-change", "change")
          .title("Another engine on jets that were proven before")
          .rationale(
              "Another cylinder, other porting, another induction or another exhaust make another"
                  + " engine, and the jets that served the old one prove nothing. It is the"
                  + " commonest cause of a seizure. The practice is to start from the rich side:"
                  + " the main jet goes up first.")
          .severity(Severity.DANGER)
          .limit(Limits.MAIN_UP.name(), Limits.MAIN_UP.number())
          .judgingBy(EngineChange::judge)
          .when(
              setting -> setting.sheet().provenance().namesEngine(),
              "the engine on which the setting was proven is unknown");

  private EngineChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Provenance provenance = setting.sheet().provenance();
    if (!provenance.isVoidOn(setting.setup().engine())) {
      return Outcome.passed();
    }
    JetBore proven = provenance.provenMainJet(setting.setting());
    double step = setting.riskModel().steps().of(MeteringPart.MAIN_JET);
    // To a tenth of a micrometre: no jet is drilled finer, and sums of decimals have rounding.
    double least = Math.rint((proven.millimetres() + Limits.MAIN_UP.in(limits) * step) * 1e4) / 1e4;
    JetBore now = setting.setting().mainJet();
    Margin margin =
        Margin.atLeast(
            "setting.mainJet",
            new Measure(now.millimetres(), "mm"),
            new Measure(least, "mm"),
            ThrottleBand.WHOLE);
    return margin.fails()
        ? Outcome.failed(
            finding(
                margin, proven, JetBore.ofMillimetres(least), setting, Limits.MAIN_UP.in(limits)))
        : Outcome.passed(margin);
  }

  private static Finding finding(
      Margin margin, JetBore proven, JetBore least, AssessedSetting setting, double sizes) {
    JetBore now = setting.setting().mainJet();
    return margin
        .finding()
        .with("proven", TradeStyle.main(proven))
        .with("now", TradeStyle.main(now))
        .says(
            "The engine was changed since {proven} was proven on it, and {now} is in: on this"
                + " engine that proves nothing.",
            Remedy.Aim.richer(ThrottleOpening.FULL, sizes * ofASize(setting))
                .saying(
                    "Do not ride on it. From the rich side: "
                        + TradeStyle.main(least)
                        + " or bigger first, then clip and pilot jet a step richer. Then read full"
                        + " throttle, and write down what was read as the new proof."));
  }

  /** By how much a size of main jet lowers ln λ at full throttle. */
  private static double ofASize(AssessedSetting setting) {
    return setting.profile().nearest(ThrottleOpening.FULL).effects().stream()
        .filter(effect -> effect.part() == MeteringPart.MAIN_JET)
        .mapToDouble(effect -> -effect.richer())
        .sum();
  }
}
