package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ScrewKind;
import java.util.Map;
import java.util.Optional;

/** A setting belongs to its carburettor. */
final class JetsMovedOver {

  static final Rule RULE =
      RulePages.draft("jets-moved-over", "change")
          .limit(RuleLimits.CHANGE.name(), RuleLimits.CHANGE.number())
          .judgingBy(JetsMovedOver::judge)
          .when(setting -> proven(setting).isPresent(), Message.of("rule.jets-moved-over.unknown"));

  private JetsMovedOver() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Carburettor proven = proven(setting).orElseThrow();
    if (proven.equals(setting.setting().carburettor())) {
      return Outcome.passed();
    }
    return new Change("setting.carburettor", words(proven), words(setting.setting().carburettor()))
        .judgeSinceProven(
            setting, limits, () -> setup.withSetting(setup.setting().withCarburettor(proven)));
  }

  private static Optional<Carburettor> proven(AssessedSetting setting) {
    Provenance then = setting.sheet().provenance();
    return then.carburettor().or(() -> then.setting().map(Setting::carburettor));
  }

  private static Message words(Carburettor carburettor) {
    boolean air = carburettor.pilot().screwKind() == ScrewKind.AIR;
    Message words =
        Message.of(air ? "carburettor.air" : "carburettor.mixture")
            .with("id", Argument.name(carburettor.id()));
    return Message.of("rule.jets-moved-over.state").with("carburettor", Argument.words(words));
  }
}
