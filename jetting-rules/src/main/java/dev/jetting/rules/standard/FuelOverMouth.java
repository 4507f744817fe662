package dev.jetting.rules.standard;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Floats;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Message;

/** Fuel that stands above a mouth needs no suction to leave it. */
final class FuelOverMouth {

  static final Rule RULE =
      RulePages.draft("fuel-over-mouth", "fuel-supply")
          .severity(Severity.DANGER)
          .judging(FuelOverMouth::judge)
          .when(
              setting -> setting.setting().floats().isPresent(),
              Message.of("rule.fuel-over-mouth.unknown"));

  private FuelOverMouth() {}

  /** How far in mm the fuel may rise above its level until it reaches the lowest mouth. */
  static double lowestMouth(Carburettor carburettor) {
    return Math.min(
        carburettor.pilot().head().millimetres(), carburettor.needleJetHead().millimetres());
  }

  private static Outcome judge(AssessedSetting setting) {
    Floats floats = setting.setting().floats().orElseThrow();
    double mouth = lowestMouth(setting.setting().carburettor());
    Margin margin =
        Margin.atMost(
            "setting.floats",
            new Measure(-floats.lowerBy(), "mm"),
            new Measure(mouth, "mm"),
            ThrottleBand.WHOLE);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("set", Remedies.level(floats.set()))
            .with("nominal", Remedies.level(floats.nominal()))
            .with("mouth", new Measure(mouth, "mm"))
            .says(
                Message.of("rule.fuel-over-mouth.finding"),
                new Remedy.Advice(
                    Message.of("rule.fuel-over-mouth.remedy")
                        .with("nominal", Remedies.level(floats.nominal())))));
  }
}
