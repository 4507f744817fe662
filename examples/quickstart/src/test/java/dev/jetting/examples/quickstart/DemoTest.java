package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every demo is what README.md of this module says, for the reason that it gives. */
class DemoTest {

  private static final Probability ACCEPTED = Probability.of(0.1);

  @Test
  void mildAllRound_holdsOnEveryDay() throws IOException {
    Report report = report(sheet(Demo.MILD_ALL_ROUND));
    assertThat(dangers(report)).isEmpty();
    assertThat(report.passes()).isTrue();
    assertThat(report.coldestDay().worst().leanRisk()).isLessThan(ACCEPTED);
    assertThat(report.hottestDay().worst().leanRisk()).isLessThan(ACCEPTED);
  }

  @Test
  void leanInTheMiddle_dangerWhereTheRingMeters_fineAtFullThrottle() throws IOException {
    Report report = report(sheet(Demo.LEAN_IN_THE_MIDDLE));
    assertThat(dangers(report))
        .containsExactlyInAnyOrder(
            "lean-anywhere", // from where the slide has just left its stop to where the ring meters
            "two-leanest-mid-range-parts",
            "air-density-swing");
    assertThat(bandsOf(report, "lean-anywhere"))
        .allSatisfy(lean -> assertThat(lean.to()).isLessThan(ThrottleOpening.ofEighths(2)));
    assertThat(report.profile().worst().inCharge()).isEqualTo(Circuit.NEEDLE);

    RiskPoint full = report.profile().nearest(ThrottleOpening.FULL);
    assertThat(full.inCharge()).isEqualTo(Circuit.MAIN);
    assertThat(full.leanRisk()).isLessThan(Probability.of(0.01));
  }

  @Test
  void leanInTheMiddle_eitherOfTheTwoPartsAlone_isBelowTheAcceptedRiskToday() throws IOException {
    SetupSheet allRound = sheet(Demo.MILD_ALL_ROUND);
    Setting good = allRound.setup().setting();
    Setting lean = sheet(Demo.LEAN_IN_THE_MIDDLE).setup().setting();

    assertThat(good.withNeedle(lean.needle(), good.clip()).withNeedleJet(lean.needleJet()))
        .isEqualTo(lean);
    for (Setting one :
        List.of(
            good.withNeedle(lean.needle(), good.clip()), good.withNeedleJet(lean.needleJet()))) {
      Report report = report(allRound.withSetup(allRound.setup().withSetting(one)));
      assertThat(report.profile().worst().leanRisk()).isLessThan(ACCEPTED);
    }
  }

  @Test
  void frostOnThePass_onlyTheColdestDayIsDangerous() throws IOException {
    SetupSheet frost = sheet(Demo.FROST_ON_THE_PASS);
    Report report = report(frost);
    assertThat(dangers(report)).containsExactly("air-density-swing");
    assertThat(report.profile().worst().leanRisk()).isLessThan(ACCEPTED);
    assertThat(report.hottestDay().worst().leanRisk()).isLessThan(ACCEPTED);
    assertThat(report.coldestDay().worst().leanRisk()).isGreaterThan(ACCEPTED);

    assertThat(frost.riding().coldest().pressure()).isLessThan(frost.setup().air().pressure());
    assertThat(frost.riding().coldest().density()).isGreaterThan(frost.setup().air().density());
    Setting allRound = sheet(Demo.MILD_ALL_ROUND).setup().setting();
    assertThat(allRound.withClip(frost.setup().setting().clip()))
        .isEqualTo(frost.setup().setting());
  }

  @Test
  void richStart_isTooRichEverywhereAndNowhereDangerous() throws IOException {
    Report report = report(sheet(Demo.RICH_START));
    assertThat(dangers(report)).isEmpty();
    assertThat(bandOf(report, "too-rich")).isEqualTo(ThrottleBand.WHOLE);
    assertThat(report.coldestDay().worst().leanRisk()).isLessThan(ACCEPTED);
    assertThat(report.passes()).isTrue();
  }

  @Test
  void tunedAllRound_holdsOnEveryDay() throws IOException {
    Report report = report(sheet(Demo.TUNED_ALL_ROUND));
    assertThat(dangers(report)).isEmpty();
    assertThat(report.passes()).isTrue();
  }

  @Test
  void tunedOnMildMain_leanToFullThrottle_theMainJetAloneCuresIt() throws IOException {
    SetupSheet sheet = sheet(Demo.TUNED_ON_MILD_MAIN);
    Report report = report(sheet);
    assertThat(dangers(report)).containsExactlyInAnyOrder("lean-anywhere", "air-density-swing");
    assertThat(bandOf(report, "lean-anywhere").to()).isEqualTo(ThrottleOpening.FULL);
    assertThat(report.profile().worst().inCharge()).isEqualTo(Circuit.MAIN);

    Setting setting = sheet.setup().setting();
    Setting cured = sheet(Demo.TUNED_ALL_ROUND).setup().setting();
    assertThat(setting.mainJet()).isEqualTo(sheet(Demo.MILD_ALL_ROUND).setup().setting().mainJet());
    assertThat(setting.withMainJet(cured.mainJet())).isEqualTo(cured);
  }

  private static List<String> dangers(Report report) {
    return report.findings().stream()
        .filter(found -> found.severity() == Severity.DANGER)
        .map(RankedFinding::ruleId)
        .toList();
  }

  private static ThrottleBand bandOf(Report report, String ruleId) {
    List<ThrottleBand> bands = bandsOf(report, ruleId);
    assertThat(bands).hasSize(1);
    return bands.get(0);
  }

  private static List<ThrottleBand> bandsOf(Report report, String ruleId) {
    return report.findings().stream()
        .filter(found -> found.ruleId().equals(ruleId))
        .map(found -> found.finding().band())
        .toList();
  }

  private static Report report(SetupSheet sheet) {
    return StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
  }

  private static SetupSheet sheet(Demo demo) throws IOException {
    try (InputStream in = demo.open()) {
      return SheetJson.read(in);
    }
  }
}
