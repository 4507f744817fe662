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
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** After a bigger cylinder or another exhaust the old jets prove nothing. */
final class EngineChange {

  static final Rule RULE =
      RulePages.draft("engine-change", "change")
          .severity(Severity.DANGER)
          .limit(RuleLimits.MAIN_UP.name(), RuleLimits.MAIN_UP.number())
          .judgingBy(EngineChange::judge)
          .when(
              setting -> setting.sheet().provenance().namesEngine(),
              Message.of("rule.engine-change.unknown"));

  private EngineChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Provenance provenance = setting.sheet().provenance();
    if (!provenance.isVoidOn(setting.setup().engine())) {
      return Outcome.passed();
    }
    JetBore proven = provenance.provenMainJet(setting.setting());
    double step = setting.riskModel().steps().of(MeteringPart.MAIN_JET);
    // To a tenth of a micrometre: no jet is drilled finer, and sums of decimals have rounding.
    double least =
        Math.rint((proven.millimetres() + RuleLimits.MAIN_UP.in(limits) * step) * 1e4) / 1e4;
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
                margin,
                proven,
                JetBore.ofMillimetres(least),
                setting,
                RuleLimits.MAIN_UP.in(limits)))
        : Outcome.passed(margin);
  }

  private static Finding finding(
      Margin margin, JetBore proven, JetBore least, AssessedSetting setting, double sizes) {
    JetBore now = setting.setting().mainJet();
    return margin
        .finding()
        .with("proven", Argument.mainJet(proven))
        .with("now", Argument.mainJet(now))
        .says(
            Message.of("rule.engine-change.finding"),
            Remedy.Aim.richer(ThrottleOpening.FULL, sizes * ofASize(setting))
                .saying(
                    Message.of("rule.engine-change.remedy")
                        .with("least", Argument.mainJet(least))));
  }

  /** By how much a size of main jet lowers ln λ at full throttle. */
  private static double ofASize(AssessedSetting setting) {
    return setting.profile().nearest(ThrottleOpening.FULL).effects().stream()
        .filter(effect -> effect.part() == MeteringPart.MAIN_JET)
        .mapToDouble(effect -> -effect.richer())
        .sum();
  }
}
