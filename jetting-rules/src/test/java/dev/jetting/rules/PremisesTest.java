package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import java.util.List;
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
        new Riding(riding.acceptedRisk(), riding.profile(), frost, riding.hottest()));
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
            new Riding(Probability.of(0.4), riding.profile(), riding.coldest(), riding.hottest()));
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
        new Riding(
            riding.acceptedRisk(), riding.profile(), SHEET.setup().air(), SHEET.setup().air());
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
}
