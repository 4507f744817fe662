package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ScrewKind;
import java.util.Locale;

/** Advice for one kind of screw does the opposite on the other. */
final class ScrewKindMismatch {

  private static final ThrottleBand SMALL = ThrottleBand.eighths(0, 2);

  static final Rule RULE =
      RulePages.draft("screw-kind", "parts")
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
            .with("setting", Argument.screw(meant, setting.setting().screw().turns()))
            .with(
                "kind",
                Argument.word("rule.screw-kind.kind." + has.name().toLowerCase(Locale.ROOT)))
            .says(
                Message.of("rule.screw-kind.finding"),
                new Remedy.Advice(Message.of("rule.screw-kind.remedy"))));
  }
}
