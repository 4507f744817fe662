package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.number.Decimals;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Everything that assesses a sheet with typical values does so with the wider band. */
class TypicalSheetTest {

  private static final RiskModel RISK = RiskModel.assumed();

  private static final SetupSheet MEASURED =
      TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);

  private static final SetupSheet SHEET =
      MEASURED.withTypical(Set.of(MachineValue.NEEDLE_JET_HEAD, MachineValue.AREA_PER_TURN));

  @Test
  void assessment_isWiderThanOfTheMeasuredMachine() {
    assertThat(spread(AssessedSetting.of(SHEET)))
        .isGreaterThan(1.05 * spread(AssessedSetting.of(MEASURED)));
  }

  @Test
  void assessment_withAModelThatIsWiderAlready_isNotWiderTwice() {
    RiskModel wider = SHEET.riskModel(RISK);

    assertThat(SHEET.riskModel(wider)).isEqualTo(wider);
    assertThat(AssessedSetting.of(SHEET, wider).profile())
        .isEqualTo(AssessedSetting.of(SHEET).profile());
  }

  @Test
  void assessment_withTheCalibrationOfAMeasuredMachine_isAsWide() {
    Calibration narrow = RISK.untried();

    assertThat(AssessedSetting.of(SHEET, RISK, narrow)).isEqualTo(AssessedSetting.of(SHEET));
  }

  @Test
  void tuner_assessesWithTheWiderBand() {
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG));

    assertThat(tuner.assess(TuningSession.beginning(SHEET))).isEqualTo(AssessedSetting.of(SHEET));
  }

  @Test
  void search_computesTheRiskThatAnAssessmentComputes() {
    SettingSearch search = SettingSearch.of(SHEET, Choices.of(SHEET), RISK);
    FoundSetting found = search.best(1, Run.alone()).settings().get(0);
    SetupSheet its = SHEET.toBuilder().setup(SHEET.setup().withSetting(found.setting())).build();
    AssessedSetting assessed = AssessedSetting.of(its, search.riskModel(found.pick()));

    assertThat(worst(assessed)).isEqualTo(found.leanRisk().value());
    assertThat(SettingSearch.of(MEASURED, Choices.of(SHEET), RISK).riskModel(found.pick()))
        .isNotEqualTo(search.riskModel(found.pick()));
  }

  @Test
  void adviser_takesTheAssessedSheet() {
    Report report = Adviser.of(StandardRulebook.rulebook()).advise(AssessedSetting.of(SHEET));

    assertThat(report.plan()).isPresent();
    // A report has the risks with six digits, rounded down.
    assertThat(report.profile().points())
        .extracting(point -> point.leanRisk().value())
        .isEqualTo(
            AssessedSetting.of(SHEET).profile().points().stream()
                .map(point -> Decimals.roundedDown(point.leanRisk().value(), 6))
                .toList());
  }

  @Test
  void report_saysWhichValuesAreTypicalAndThatTheBandIsWider() {
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(SHEET));
    String line =
        "Typical of such machines, not measured: height of the needle jet's mouth over the fuel,"
            + " area of the pilot screw a turn. The band of λ is wider for it: measure a value to"
            + " narrow it.";

    assertThat(report.cautions().get(0)).isEqualTo(line);
    assertThat(ReportText.of(report).replaceAll("\\s+", " ")).contains(line);
    assertThat(ReportMarkdown.of(report)).contains("Typical of such machines, not measured: ");
    assertThat(ReportJson.write(report)).contains("\"" + line + "\"");
    assertThat(ReportText.compact(report))
        .contains("2 values of this machine are typical, not measured, and the band is wider");
  }

  @Test
  void report_onAMeasuredMachine_saysNothingOfIt() {
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(MEASURED));

    assertThat(ReportText.of(report)).doesNotContain("Typical of such machines");
    assertThat(ReportText.compact(report)).doesNotContain("typical, not measured");
  }

  /** An open mouth has no filter whose area anybody guessed. */
  @Test
  void report_doesNotNameAValueThatTheMachineDoesNotHave() {
    SetupSheet open =
        SHEET
            .withSetup(
                SHEET.setup().withSetting(SHEET.setup().setting().withIntake(Intake.openMouth())))
            .withTypical(Set.of(MachineValue.FILTER_AREA));
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(open));

    assertThat(report.cautions()).noneMatch(caution -> caution.contains("not measured"));
  }

  private static double spread(AssessedSetting setting) {
    return setting.profile().points().stream().mapToDouble(point -> point.spread()).sum();
  }

  private static double worst(AssessedSetting setting) {
    return Stream.of(setting.profile(), setting.coldest(), setting.hottest())
        .mapToDouble(day -> day.worst().leanRisk().value())
        .max()
        .orElseThrow();
  }
}
