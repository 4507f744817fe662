package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.TradeStyle;
import java.util.Locale;

/** Advice for one kind of screw does the opposite on the other. */
final class ScrewKindMismatch {

  private static final ThrottleBand SMALL = ThrottleBand.eighths(0, 2);

  static final Rule RULE =
      RulePages.draft("screw-kind", "parts")
          .title("Turns meant for the other kind of screw")
          .rationale(
              "A screw on the engine side of the slide meters mixture, and out is richer; one on"
                  + " the filter side meters air, and out is leaner. Advice for one turns the other"
                  + " the wrong way.")
          .severity(Severity.DANGER)
          .within(SMALL)
          .judging(ScrewKindMismatch::judge);

  private ScrewKindMismatch() {}

  private static Outcome judge(AssessedSetting setting) {
    ScrewKind meant = setting.setting().screw().kind();
    ScrewKind has = setting.setting().carburettor().pilot().screwKind();
    if (meant == has) {
      return Outcome.passed();
    }
    return Outcome.failed(
        Finding.above("setting.screw", Measure.ratio(1), Measure.ratio(0), SMALL)
            .with("setting", TradeStyle.screw(meant, setting.setting().screw().turns()))
            .with("kind", has.name().toLowerCase(Locale.ROOT))
            .says(
                "The setting is meant for another screw ({setting}); this carburettor has a {kind}"
                    + " screw.",
                "Find advice for a carburettor of this family; until then start from the rich"
                    + " side."));
  }
}
