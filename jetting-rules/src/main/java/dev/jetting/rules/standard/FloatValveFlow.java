package dev.jetting.rules.standard;

import dev.jetting.core.mixture.FullThrottleDraw;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.VolumeFlow;
import java.util.Map;

/** What the jets pass must first pass the float valve. */
final class FloatValveFlow {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  /** Standard acceleration of free fall, m/s². */
  static final double GRAVITY = 9.80665;

  static final Rule RULE =
      RulePages.draft("float-valve-flow", "fuel-supply")
          .title("Float valve too small for full throttle")
          .rationale(
              "Where the float valve passes less than the jets, the level falls on a long open run."
                  + " The engine starts rich enough and goes lean after some seconds, at full"
                  + " load.")
          .severity(Severity.DANGER)
          .within(FULL)
          .limit(Limits.FLOAT_VALVE_RESERVE.name(), Limits.FLOAT_VALVE_RESERVE.number())
          .judgingBy(FloatValveFlow::judge);

  private FloatValveFlow() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    double litresPerHour =
        setting.sheet().days().stream()
            .map(air -> FullThrottleDraw.of(setting.setup().withAir(air)))
            .mapToDouble(VolumeFlow::litresPerHour)
            .max()
            .orElseThrow();
    FloatValve valve = setting.setting().carburettor().floatValve();
    double capacity = valve.greatestFlow().litresPerHour();
    double limit = capacity / Limits.FLOAT_VALVE_RESERVE.in(limits);
    Margin margin =
        Margin.atMost(
            "setting.carburettor.floatValve",
            new Measure(litresPerHour, "L/h"),
            new Measure(limit, "L/h"),
            FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("seat", TradeStyle.diameter(valve.seat()))
            .with("flow", new Measure(litresPerHour, "L/h"))
            .with("capacity", new Measure(capacity, "L/h"))
            .says(
                "Full throttle draws {flow}; the float valve of {seat} passes {capacity} from an"
                    + " almost empty tank, too little reserve.",
                "Fit a bigger float valve, and check tap, filter and hose; until then no long open"
                    + " runs."));
  }
}
