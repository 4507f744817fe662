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
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Map;

/** A screw near its seat or near falling out is doing the work of the pilot jet. */
final class ScrewRange {

  private static final ThrottleBand SMALL = ThrottleBand.eighths(0, 2);

  static final Rule RULE =
      RulePages.draft("screw-range", "parts")
          .title("Pilot screw out of its range")
          .rationale(
              "The screw trims what the pilot jet gives. Almost seated or almost out it has no room"
                  + " left and may shake loose; the pilot jet is the wrong one.")
          .within(SMALL)
          .limit(Limits.LEAST_TURNS.name(), Limits.LEAST_TURNS.number())
          .judgingBy(ScrewRange::judge);

  private static final Remedy BACK =
      Remedy.Aim.other(
          ThrottleOpening.CLOSED,
          "Change the pilot jet so that the screw comes back to its middle.");

  private ScrewRange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    double turns = setting.setting().screw().turns().turns();
    double most = setting.setting().carburettor().pilot().mostTurns().turns();
    double least = Limits.LEAST_TURNS.in(limits);
    Measure measured = new Measure(turns, "turns");
    Margin out = Margin.atMost("setting.screw", measured, new Measure(most, "turns"), SMALL);
    if (out.fails()) {
      return Outcome.failed(
          texts(out.finding(), setting)
              .says("The screw is {turns}, more than it can do with.", BACK));
    }
    Margin in = Margin.atLeast("setting.screw", measured, new Measure(least, "turns"), SMALL);
    if (in.fails()) {
      return Outcome.failed(
          texts(in.finding(), setting).says("The screw is {turns}, hardly off its seat.", BACK));
    }
    return Outcome.passed(List.of(out, in));
  }

  private static Finding.Texts texts(Finding.Texts texts, AssessedSetting setting) {
    return texts.with("turns", TradeStyle.turns(setting.setting().screw().turns()));
  }
}
