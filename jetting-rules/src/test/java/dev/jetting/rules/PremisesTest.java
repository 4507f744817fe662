package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PremisesTest {

  private static final SetupSheet SHEET = frosty(TwoHundred.sheet(STANDARD, ALL_ROUND));

  private static SetupSheet frosty(SetupSheet sheet) {
    Riding riding = sheet.riding();
    Air frost =
        Air.of(
            Pressure.ofHectopascals(1030),
            Temperature.ofCelsius(-5),
            RelativeHumidity.ofPercent(60));
    return sheet.withRiding(
        Riding.builder()
            .acceptedRisk(riding.acceptedRisk())
            .profile(riding.profile())
            .coldest(frost)
            .hottest(riding.hottest())
            .build());
  }

  @Test
  void usualSheet_hasNoNotice() {
    assertThat(Premises.of(SHEET)).isEmpty();
  }

  @Test
  void acceptedRiskAboveATenth_isNoticed() {
    Riding riding = SHEET.riding();
    SetupSheet bold =
        SHEET.withRiding(
            Riding.builder()
                .acceptedRisk(Probability.of(0.4))
                .profile(riding.profile())
                .coldest(riding.coldest())
                .hottest(riding.hottest())
                .build());
    assertThat(Premises.of(bold))
        .extracting(Message::text)
        .containsExactly("A lean risk of 40 % is accepted at every opening, more than 10 %.");
    Report report = Rulebook.of("book", "1", List.of()).evaluate(AssessedSetting.of(bold));
    assertThat(report.notices()).hasSize(1);
    assertThat(ReportText.compact(report)).contains(report.notices().get(0));
    assertThat(ReportMarkdown.of(report)).contains(report.notices().get(0));
  }

  @Test
  void singleDay_isNoticed() {
    Riding riding = SHEET.riding();
    Riding today =
        Riding.builder()
            .acceptedRisk(riding.acceptedRisk())
            .profile(riding.profile())
            .coldest(SHEET.setup().air())
            .hottest(SHEET.setup().air())
            .build();
    assertThat(Premises.of(SHEET.withRiding(today)))
        .extracting(Message::text)
        .containsExactly(
            "Only one day was assessed: coldest and hottest day are stated as today's air.");
  }

  @Test
  void lambdaWantedNearTheEdge_isNoticed() {
    MixtureNeed lean = MixtureNeed.of(MixtureNeed.Point.of(0, 1.1));
    SetupSheet sheet =
        SHEET.withSetup(TwoHundred.sheet(STANDARD.withNeed(lean), ALL_ROUND).setup());
    assertThat(Premises.of(sheet))
        .extracting(Message::text)
        .containsExactly(
            "The sheet wants λ 1.1 at closed throttle, beyond the usual λ 0.7 to 1.05: limits and"
                + " verdict rest on it.");
  }

  /** A limit far beyond what anybody wants would turn each danger into a pass. */
  @Test
  void limitsAndSpreadsThatLetMorePass_areNoticed() {
    RiskModel ours = RiskModel.assumed();
    Coefficient wide = Coefficient.sourced(1.4, "1", "a book of the caller's");
    Coefficient small = Coefficient.sourced(0.01, "1", "a book of the caller's");
    MixtureLimits lax =
        MixtureLimits.margins()
            .lean(wide)
            .rich(Coefficient.assumed(0.8, "1", "as the library"))
            .overrun(wide)
            .build();
    RiskModel caller = new RiskModel(lax, ours.uncertainty().withMain(small), ours.steps());
    SetupSheet sheet = SHEET.withRiding(SHEET.riding().withSpeeds(RiddenSpeeds.levelRoad()));
    Report report = Rulebook.of("book", "1", List.of()).evaluate(AssessedSetting.of(sheet, caller));

    String notice =
        "Verdict and risks rest on numbers that let more pass than this library's: lean limit by λ"
            + " wanted 1.4, not 1.16, overrun limit by λ wanted at closed throttle 1.4, not 1.08,"
            + " spread of the main jet 0.01, not 0.03, load uphill by that of the level road 1, not"
            + " 1.5.";
    assertThat(report.notices()).containsExactly(notice);
    assertThat(ReportText.compact(report)).contains(notice);
    assertThat(Premises.of(AssessedSetting.of(SHEET).riskModel().limits().basis())).isEmpty();
  }

  @Test
  void limitsOfAnotherKind_areNoticed() {
    assertThat(Premises.of(Map.of("limit by a sensor", Coefficient.assumed(1, "1", "by hand"))))
        .extracting(Message::text)
        .containsExactly("The limits are not those of this library.");
  }
}
