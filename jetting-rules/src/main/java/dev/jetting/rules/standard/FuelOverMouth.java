package dev.jetting.rules.standard;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Floats;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;

/** Fuel that stands above a mouth needs no suction to leave it. */
final class FuelOverMouth {

  static final Rule RULE =
      RulePages.draft("fuel-over-mouth", "fuel-supply")
          .title("Fuel stands above a mouth and runs out")
          .rationale(
              "Above the lowest mouth the fuel runs out by itself, with the engine stopped too:"
                  + " into the crankcase, and over the hot engine, where it burns.")
          .severity(Severity.DANGER)
          .judging(FuelOverMouth::judge)
          .when(setting -> setting.setting().floats().isPresent(), "the float level is unknown");

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
            .with("set", floats.set())
            .with("nominal", floats.nominal())
            .with("mouth", new Measure(mouth, "mm"))
            .says(
                "With floats at {set} instead of {nominal} the fuel stands above the lowest mouth,"
                    + " {mouth} over its level: it runs out by itself, and can catch fire.",
                "Shut the tap. Set the floats to "
                    + floats.nominal()
                    + " before the engine is started, and look at the float valve."));
  }
}
