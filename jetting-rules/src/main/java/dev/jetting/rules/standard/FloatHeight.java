package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import java.util.Map;
import java.util.Optional;

/** The floats come before any jet. */
final class FloatHeight {

  static final Rule RULE =
      RulePages.draft("float-level", "fuel-supply")
          .title("Floats not set as the carburettor is meant to have them")
          .rationale(
              "Suction must lift the fuel from its level to the jet's mouth before any flows. A low"
                  + " level is leaner everywhere, most where the suction is small; a high one is"
                  + " richer. No jet puts that right at every opening.")
          .limit(Limits.CHANGE.name(), Limits.CHANGE.number())
          .judgingBy(FloatHeight::judge);

  private FloatHeight() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Optional<Floats> stated = setting.setting().floats();
    if (stated.isEmpty()) {
      return Outcome.notEvaluated("setting.floats: how they are set and how they are meant to be");
    }
    Floats floats = stated.get();
    if (-floats.lowerBy() > FuelOverMouth.lowestMouth(setting.setting().carburettor())) {
      return Outcome.notApplicable("the fuel stands above a mouth: see fuel-over-mouth");
    }
    Setup setup = setting.setup();
    Floats nominal = new Floats(floats.nominal(), floats.nominal());
    // A jet would cure it at one throttle opening only.
    return new Change(
            "setting.floats",
            "with floats at " + floats.nominal(),
            "with floats at " + floats.set(),
            Optional.of("Set the floats to " + floats.nominal() + " before any jet is changed."))
        .judge(setting, limits, () -> setup.withSetting(setup.setting().withFloats(nominal)));
  }
}
