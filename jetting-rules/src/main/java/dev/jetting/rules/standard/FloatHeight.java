package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Message;
import dev.jetting.units.FloatLevel;
import java.util.Map;
import java.util.Optional;

/** The floats come before any jet. */
final class FloatHeight {

  static final Rule RULE =
      RulePages.draft("float-level", "fuel-supply")
          .limit(RuleLimits.CHANGE.name(), RuleLimits.CHANGE.number())
          .judgingBy(FloatHeight::judge);

  private FloatHeight() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Optional<Floats> stated = setting.setting().floats();
    if (stated.isEmpty()) {
      return Outcome.notEvaluated(Message.of("rule.float-level.missing"));
    }
    Floats floats = stated.get();
    if (-floats.lowerBy() > FuelOverMouth.lowestMouth(setting.setting().carburettor())) {
      return Outcome.notApplicable(Message.of("rule.float-level.over-mouth"));
    }
    Setup setup = setting.setup();
    Floats nominal = Floats.builder().set(floats.nominal()).nominal(floats.nominal()).build();
    // A jet would cure it at one throttle opening only.
    return new Change(
            "setting.floats",
            at("rule.float-level.state", floats.nominal()),
            at("rule.float-level.state", floats.set()),
            Optional.of(at("rule.float-level.remedy", floats.nominal())))
        .judge(setting, limits, () -> setup.withSetting(setup.setting().withFloats(nominal)));
  }

  private static Message at(String key, FloatLevel level) {
    return Message.of(key).with("level", Remedies.level(level));
  }
}
