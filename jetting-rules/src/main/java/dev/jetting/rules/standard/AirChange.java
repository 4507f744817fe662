package dev.jetting.rules.standard;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.units.TradeStyle;
import java.util.Map;

/** A setting is proven on a day, not for ever. */
final class AirChange {

  static final Rule RULE =
      RulePages.draft("air-change", "change", "weather")
          .title("Another air than the setting was proven in")
          .rationale(
              "A plug chop speaks of the day it was made on. On a colder day, or lower down, the"
                  + " air is denser and the same jets are leaner; that the setting was proven does"
                  + " not carry over.")
          .limit(Limits.CHANGE.name(), Limits.CHANGE.number())
          .judgingBy(AirChange::judge)
          .when(
              setting -> setting.sheet().provenance().air().isPresent(),
              "the air in which it was proven is unknown");

  private AirChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Air proven = setting.sheet().provenance().air().orElseThrow();
    return new Change("air", words(proven), words(setup.air()))
        .judgeSinceProven(setting, limits, () -> setup.withAir(proven));
  }

  private static String words(Air air) {
    return "at "
        + TradeStyle.temperature(air.temperature())
        + " and "
        + TradeStyle.pressure(air.pressure());
  }
}
