package dev.jetting.rules.standard;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import java.util.Map;

/** The same jets are leaner on some fuels than on others. */
final class FuelChange {

  static final Rule RULE =
      RulePages.draft("fuel-change", "change")
          .title("Another fuel than the setting was proven with")
          .rationale(
              "Ethanol needs less air than petrol, and premix oil takes the place of petrol: on the"
                  + " same jets more of either is leaner. A setting that was right on one fuel can"
                  + " be far too lean on another.")
          .limit(Limits.CHANGE.name(), Limits.CHANGE.number())
          .judgingBy(FuelChange::judge)
          .when(
              setting -> setting.sheet().provenance().fuel().isPresent(),
              "the fuel with which it was proven is unknown");

  private FuelChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Fuel proven = setting.sheet().provenance().fuel().orElseThrow();
    return new Change("fuel", "with " + proven, "with " + setup.fuel())
        .judgeSinceProven(setting, limits, () -> setup.withFuel(proven));
  }
}
