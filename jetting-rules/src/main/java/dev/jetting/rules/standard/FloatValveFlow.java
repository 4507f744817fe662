package dev.jetting.rules.standard;

import dev.jetting.core.mixture.FullThrottleDraw;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.VolumeFlow;
import java.util.Map;

/** What the jets pass must first pass the float valve. */
final class FloatValveFlow {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  /** Standard acceleration of free fall, m/s². */
  static final double GRAVITY = 9.80665;

  static final Rule RULE =
      RulePages.draft("float-valve-flow", "fuel-supply")
          .severity(Severity.DANGER)
          .within(FULL)
          .limit(RuleLimits.FLOAT_VALVE_RESERVE.name(), RuleLimits.FLOAT_VALVE_RESERVE.number())
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
    double limit = capacity / RuleLimits.FLOAT_VALVE_RESERVE.in(limits);
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
            .with("seat", Argument.diameter(valve.seat()))
            .with("flow", new Measure(litresPerHour, "L/h"))
            .with("capacity", new Measure(capacity, "L/h"))
            .says(
                Message.of("rule.float-valve-flow.finding"),
                new Remedy.Advice(Message.of("rule.float-valve-flow.remedy"))));
  }
}
