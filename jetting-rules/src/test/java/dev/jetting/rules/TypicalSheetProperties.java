package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.NotEmpty;

/** What holds of a sheet some of whose values nobody measured. */
class TypicalSheetProperties {

  @Property(tries = 15)
  void readBack_givesTheSameReport(
      @ForAll("sheets") SetupSheet measured, @ForAll @NotEmpty Set<MachineValue> typical) {
    SetupSheet sheet = measured.withTypical(typical);
    SetupSheet read = SheetJson.read(SheetJson.write(sheet));

    assertThat(report(read)).isEqualTo(report(sheet));
  }

  /** Without readings: how much a band teaches depends on what was expected before. */
  @Property(tries = 30)
  void unreadSpread_isNowhereSmallerThanOfTheMeasuredMachine(
      @ForAll("sheets") SetupSheet any, @ForAll @NotEmpty Set<MachineValue> typical) {
    SetupSheet sheet = any.withProvenance(Provenance.unknown());
    RiskProfile measured = AssessedSetting.of(sheet.withTypical(Set.of())).coldest();
    RiskProfile guessed = AssessedSetting.of(sheet.withTypical(typical)).coldest();

    for (int i = 0; i < measured.points().size(); i++) {
      assertThat(guessed.points().get(i).spread())
          .isGreaterThanOrEqualTo(measured.points().get(i).spread() * (1 - 1e-9));
    }
  }

  private static String report(SetupSheet sheet) {
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
    return ReportText.of(report) + ReportMarkdown.of(report) + ReportJson.write(report);
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return SheetArbitraries.sheets();
  }
}
