package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;

/** A screw near its seat or near falling out is doing the work of the pilot jet. */
final class ScrewRange {

  private static final ThrottleBand SMALL = ThrottleBand.eighths(0, 2);

  static final Rule RULE =
      RulePages.draft("screw-range", "parts")
          .within(SMALL)
          .limit(RuleLimits.LEAST_TURNS.name(), RuleLimits.LEAST_TURNS.number())
          .judgingBy(ScrewRange::judge);

  private static final Remedy BACK =
      Remedy.Aim.other(ThrottleOpening.CLOSED, Message.of("rule.screw-range.remedy"));

  private ScrewRange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    double turns = setting.setting().screw().turns().turns();
    double most = setting.setting().carburettor().pilot().mostTurns().turns();
    double least = RuleLimits.LEAST_TURNS.in(limits);
    Measure measured = new Measure(turns, "turns");
    Margin out = Margin.atMost("setting.screw", measured, new Measure(most, "turns"), SMALL);
    if (out.fails()) {
      return Outcome.failed(
          texts(out.finding(), setting).says(Message.of("rule.screw-range.finding.out"), BACK));
    }
    Margin in = Margin.atLeast("setting.screw", measured, new Measure(least, "turns"), SMALL);
    if (in.fails()) {
      return Outcome.failed(
          texts(in.finding(), setting).says(Message.of("rule.screw-range.finding.in"), BACK));
    }
    return Outcome.passed(List.of(out, in));
  }

  private static Finding.Texts texts(Finding.Texts texts, AssessedSetting setting) {
    return texts.with("turns", Argument.turns(setting.setting().screw().turns()));
  }
}
