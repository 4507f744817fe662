package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.air.Air;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.List;

/**
 * The riskiest opening of a day.
 *
 * @param key today, coldest or hottest
 * @param name the day, for people
 * @param air its air
 * @param where the riskiest opening
 * @param risk the lean risk there
 * @param tooMuch whether it is more than is accepted
 */
public record DayLine(
    String key, String name, String air, String where, String risk, boolean tooMuch) {

  static List<DayLine> all(AssessedSetting setting) {
    SetupSheet sheet = setting.sheet();
    Riding riding = sheet.riding();
    Probability accepted = riding.acceptedRisk();
    return List.of(
        of("today", "Today", sheet.setup().air(), setting.profile(), accepted),
        of("coldest", "Coldest day", riding.coldest(), setting.coldest(), accepted),
        of("hottest", "Hottest day", riding.hottest(), setting.hottest(), accepted));
  }

  private static DayLine of(
      String key, String name, Air air, RiskProfile day, Probability accepted) {
    RiskPoint worst = day.worst();
    return new DayLine(
        key,
        name,
        TradeStyle.temperature(air.temperature()) + ", " + TradeStyle.pressure(air.pressure()),
        Verdict.throttle(worst.mixture().throttle()),
        TradeStyle.probability(worst.leanRisk(), accepted),
        worst.leanRisk().isMoreThan(accepted));
  }
}
