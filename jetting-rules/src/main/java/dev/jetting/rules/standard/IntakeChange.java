package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import java.util.Map;
import java.util.Optional;

/** A filter belongs to the jetting. */
final class IntakeChange {

  static final Rule RULE =
      RulePages.draft("intake-change", "change")
          .title("Another intake than the setting was proven behind")
          .rationale(
              "A filter or box holds the air back and deepens the suction at the needle jet. Taken"
                  + " off, the engine breathes more and the same jets are leaner, from small"
                  + " throttle to full; put on, they are richer.")
          .limit(Limits.CHANGE.name(), Limits.CHANGE.number())
          .judgingBy(IntakeChange::judge)
          .when(
              setting -> proven(setting).isPresent(),
              "the intake behind which it was proven is unknown");

  private IntakeChange() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Setup setup = setting.setup();
    Intake proven = proven(setting).orElseThrow();
    return new Change(
            "setting.intake", "behind " + proven.id(), "behind " + setting.setting().intake().id())
        .judgeSinceProven(
            setting, limits, () -> setup.withSetting(setup.setting().withIntake(proven)));
  }

  private static Optional<Intake> proven(AssessedSetting setting) {
    Provenance then = setting.sheet().provenance();
    return then.intake().or(() -> then.setting().map(Setting::intake));
  }
}
