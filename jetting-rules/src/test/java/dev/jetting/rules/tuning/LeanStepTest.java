package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Altitude;
import dev.jetting.units.JetBore;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LeanStepTest {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final Setting RICHER = ALL_ROUND.withMainJet(JetBore.ofHundredths(130));
  private static final Setting LEANER = ALL_ROUND.withMainJet(JetBore.ofHundredths(128));

  @Test
  void allows_theNextSizeTowardsLean_thatNobodyTried() {
    assertThat(allows(session(RICHER, 20), LEANER)).isTrue();
    assertThat(allows(session(RICHER, 20), LEANER.withMainJet(JetBore.ofHundredths(126))))
        .isFalse();
  }

  /** Or two readings that contradict each other would send a rider to and fro for ever. */
  @Test
  void allows_towardsLean_noSettingThatWasLeft() {
    TuningSession session = changed(session(LEANER, 20), RICHER, 20);
    assertThat(allows(session, LEANER)).isFalse();
  }

  /** One size too far is taken back. */
  @Test
  void allows_towardsRich_aSettingThatWasLeft() {
    TuningSession session = changed(session(RICHER, 20), LEANER, 20);
    assertThat(allows(session, RICHER)).isTrue();
  }

  /**
   * What was too lean in frost may be right in summer; the air of the next hour is no other air.
   */
  @Test
  void allows_inOtherAir_whatWasLeftInFrost() {
    TuningSession summer = changed(session(LEANER, -10), RICHER, 25);
    TuningSession nextHour = changed(session(LEANER, 20), RICHER, 21);
    assertThat(allows(summer, LEANER)).isTrue();
    assertThat(allows(nextHour, LEANER)).isFalse();
  }

  private static boolean allows(TuningSession session, Setting to) {
    Findings findings = new Findings(TUNER, session);
    SetupSheet now = session.now();
    SettingScorer scorer = new SettingScorer(now, TUNER.riskModel(), findings.calibration());
    return new LeanStep(now, scorer, findings).allows(to);
  }

  private static TuningSession session(Setting setting, double celsius) {
    SetupSheet sheet = Workshop.sheet(setting);
    return TuningSession.beginning(sheet.withSetup(sheet.setup().withAir(air(celsius))));
  }

  private static TuningSession changed(TuningSession session, Setting to, double celsius) {
    return session.changing(session.now().setup().withSetting(to).withAir(air(celsius)));
  }

  private static Air air(double celsius) {
    return Air.at(
        Altitude.ofMetres(0), Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(50));
  }
}
