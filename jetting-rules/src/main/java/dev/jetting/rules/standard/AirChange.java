package dev.jetting.rules.standard;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;

/** A setting is proven on a day, not for ever. */
final class AirChange {

  static final Rule RULE =
      RulePages.draft("air-change", "change", "weather")
          .limit(RuleLimits.CHANGE.name(), RuleLimits.CHANGE.number())
          .judgingBy(AirChange::judge)
          .when(
              setting -> setting.sheet().provenance().air().isPresent(),
              Message.of("rule.air-change.unknown"));

  private AirChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Air proven = setting.sheet().provenance().air().orElseThrow();
    return new Change("air", words(proven), words(setup.air()))
        .judgeSinceProven(setting, limits, () -> setup.withAir(proven));
  }

  private static Message words(Air air) {
    return Message.of("rule.air-change.state")
        .with("temperature", Argument.temperature(air.temperature()))
        .with("pressure", Argument.pressure(air.pressure()));
  }
}
