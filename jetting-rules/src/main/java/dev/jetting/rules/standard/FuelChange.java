package dev.jetting.rules.standard;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;

/** The same jets are leaner on some fuels than on others. */
final class FuelChange {

  static final Rule RULE =
      RulePages.draft("fuel-change", "change")
          .limit(RuleLimits.CHANGE.name(), RuleLimits.CHANGE.number())
          .judgingBy(FuelChange::judge)
          .when(
              setting -> setting.sheet().provenance().fuel().isPresent(),
              Message.of("rule.fuel-change.unknown"));

  private FuelChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Fuel proven = setting.sheet().provenance().fuel().orElseThrow();
    return new Change("fuel", words(proven), words(setup.fuel()))
        .judgeSinceProven(setting, limits, () -> setup.withFuel(proven));
  }

  private static Message words(Fuel fuel) {
    return Message.of("rule.fuel-change.state").with("fuel", Argument.fuel(fuel));
  }
}
