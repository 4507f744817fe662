package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.units.ScrewKind;
import java.util.Map;
import java.util.Optional;

/** A setting belongs to its carburettor. */
final class JetsMovedOver {

  static final Rule RULE =
      RulePages.draft("jets-moved-over", "change")
          .title("Jets moved over from another carburettor")
          .rationale(
              "Jets of one number do different things in two carburettors: bore, heads, bleeds,"
                  + " pilot screw and the mouth of the needle jet all have their say. A setting"
                  + " belongs to the carburettor it was found on.")
          .limit(Limits.CHANGE.name(), Limits.CHANGE.number())
          .judgingBy(JetsMovedOver::judge)
          .when(
              setting -> proven(setting).isPresent(),
              "the carburettor in which it was proven is unknown");

  private JetsMovedOver() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Carburettor proven = proven(setting).orElseThrow();
    if (proven.equals(setting.setting().carburettor())) {
      return Outcome.passed();
    }
    return new Change(
            "setting.carburettor",
            "in " + words(proven),
            "in " + words(setting.setting().carburettor()))
        .judgeSinceProven(
            setting, limits, () -> setup.withSetting(setup.setting().withCarburettor(proven)));
  }

  private static Optional<Carburettor> proven(AssessedSetting setting) {
    Provenance then = setting.sheet().provenance();
    return then.carburettor().or(() -> then.setting().map(Setting::carburettor));
  }

  private static String words(Carburettor carburettor) {
    boolean air = carburettor.pilot().screwKind() == ScrewKind.AIR;
    return carburettor.id() + (air ? " (air screw)" : " (mixture screw)");
  }
}
