package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import dev.jetting.rules.risk.RiskPoint;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of the report on every sheet. */
class ReportJsonProperties {

  private static final Rule LEAN =
      Rule.named("lean").severity(Severity.DANGER).judging(ReportJsonProperties::lean);
  private static final Rule BROKEN =
      Rule.named("broken")
          .judging(
              setting -> {
                throw new IllegalStateException("always");
              });
  private static final Rulebook RULEBOOK =
      Rulebook.of(
          "tests",
          "1",
          List.of(
              LEAN,
              BROKEN,
              Rule.not(Rule.named("not-lean"), LEAN),
              Rule.anyOf(Rule.named("any"), List.of(LEAN, Rule.not(Rule.named("inner"), LEAN))),
              Rule.allOf(Rule.named("all"), List.of(LEAN, BROKEN)),
              Rule.allOf(Rule.named("never"), List.of(LEAN.when(setting -> false, "never")))));

  @Property(tries = 15)
  void read_ofWritten_isEqual(@ForAll("sheets") SetupSheet sheet) {
    Report report = RULEBOOK.evaluate(AssessedSetting.of(sheet));
    String json = ReportJson.write(report);

    Report read = ReportJson.read(json);

    assertThat(read).isEqualTo(report);
    assertThat(ReportJson.write(read)).isEqualTo(json);
  }

  private static Outcome lean(AssessedSetting setting) {
    RiskPoint worst = setting.profile().worst();
    return Outcome.failed(
        Finding.above(
                "setting",
                Measure.ratio(worst.leanRisk().value()),
                Measure.ratio(0.05),
                ThrottleBand.at(worst.mixture().throttle()))
            .with("risk", worst.leanRisk())
            .says("{risk}", "richer"));
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return SheetArbitraries.sheets();
  }
}
