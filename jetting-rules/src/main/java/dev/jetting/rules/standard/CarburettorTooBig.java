package dev.jetting.rules.standard;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
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
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** A wide bore has no suction to lift the fuel with until the engine turns fast. */
final class CarburettorTooBig {

  private static final ThrottleBand FULL = ThrottleBand.at(ThrottleOpening.FULL);

  private static final int STEPS = 100;

  static final Rule RULE =
      RulePages.draft("carburettor-too-big", "carburettor")
          .severity(Severity.NOTE)
          .within(FULL)
          .limit(RuleLimits.LOW_SPEED.name(), RuleLimits.LOW_SPEED.number())
          .limit(RuleLimits.ON_THE_PIPE.name(), RuleLimits.ON_THE_PIPE.number())
          .judgingBy(CarburettorTooBig::judge);

  private CarburettorTooBig() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    double room = StrictMath.exp(Headroom.forLeaning(setting.profile().worst(), setting));
    double lift = lift(setting);
    if (room == 1 || lift == 0) {
      return Outcome.notApplicable(Message.of("rule.carburettor-too-big.no-lift"));
    }
    // Fuel goes with the root of suction less lift: at this suction the lift alone costs the room.
    double limit = lift / (1 - 1 / (room * room));
    EngineSpeed low = pullsFrom(setting.setup().engine(), limits);
    MixturePoint pulling = MixtureModel.of(setting.setup()).at(ThrottleOpening.FULL, low);
    double suction = pulling.meanNeedleJetSuction().pascals();
    Margin margin =
        Margin.atLeast(
            "setting.carburettor", new Measure(suction, "Pa"), new Measure(limit, "Pa"), FULL);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("bore", Argument.diameter(setting.setting().carburettor().bore()))
            .with("speed", new Measure(low.rpm(), "rpm"))
            .with("suction", new Measure(suction, "Pa"))
            .with("lift", new Measure(lift, "Pa"))
            .says(
                Message.of("rule.carburettor-too-big.finding"),
                new Remedy.Advice(Message.of("rule.carburettor-too-big.remedy"))));
  }

  /**
   * The lowest speed at which the throttle is opened fully: a third of the peak speed, or where the
   * engine has come on its pipe. Between the points of its curve the delivery is a product of
   * straight lines, so the speed is sought in steps of a hundredth.
   */
  private static EngineSpeed pullsFrom(Engine engine, Map<String, Coefficient> limits) {
    double peak = engine.loadLine().peak().rpm();
    double best = 0;
    for (int i = STEPS; i > 0; i--) {
      best = Math.max(best, engine.deliveryRatioAt(EngineSpeed.ofRpm(peak * i / STEPS)));
    }
    double low = peak;
    for (int i = STEPS; i > 0; i--) {
      EngineSpeed speed = EngineSpeed.ofRpm(peak * i / STEPS);
      if (engine.deliveryRatioAt(speed) < RuleLimits.ON_THE_PIPE.in(limits) * best) {
        break;
      }
      low = speed.rpm();
    }
    return EngineSpeed.ofRpm(Math.max(low, peak * RuleLimits.LOW_SPEED.in(limits)));
  }

  /** Pressure in Pa that lifts the fuel to the needle jet's mouth. */
  private static double lift(AssessedSetting assessed) {
    Setting setting = assessed.setting();
    double density = assessed.setup().fuelDensity().kilogramsPerCubicMetre();
    double head = setting.carburettor().needleJetHead().millimetres() + setting.fuelLowerBy();
    return density * FloatValveFlow.GRAVITY * Math.max(0, head) * 1e-3;
  }
}
