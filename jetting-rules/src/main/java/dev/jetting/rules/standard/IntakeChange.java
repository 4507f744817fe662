package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;
import java.util.Optional;

/** A filter belongs to the jetting. */
final class IntakeChange {

  static final Rule RULE =
      RulePages.draft("intake-change", "change")
          .limit(RuleLimits.CHANGE.name(), RuleLimits.CHANGE.number())
          .judgingBy(IntakeChange::judge)
          .when(setting -> proven(setting).isPresent(), Message.of("rule.intake-change.unknown"));

  private IntakeChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Intake proven = proven(setting).orElseThrow();
    return new Change("setting.intake", words(proven), words(setting.setting().intake()))
        .judgeSinceProven(
            setting, limits, () -> setup.withSetting(setup.setting().withIntake(proven)));
  }

  private static Optional<Intake> proven(AssessedSetting setting) {
    Provenance then = setting.sheet().provenance();
    return then.intake().or(() -> then.setting().map(Setting::intake));
  }

  private static Message words(Intake intake) {
    return Message.of("rule.intake-change.state").with("intake", Argument.name(intake.id()));
  }
}
