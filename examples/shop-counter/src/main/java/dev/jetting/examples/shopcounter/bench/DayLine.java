package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.air.Air;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Locale;

/**
 * The riskiest opening of a day, climbs included.
 *
 * @param key today, coldest or hottest
 * @param name the day, for people
 * @param air its air
 * @param where the riskiest opening, and whether it is that of a climb
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
        of(WorstSpot.Day.TODAY, "Today", sheet.setup().air(), setting.profile(), accepted),
        of(WorstSpot.Day.COLDEST, "Coldest day", riding.coldest(), setting.coldest(), accepted),
        of(WorstSpot.Day.HOTTEST, "Hottest day", riding.hottest(), setting.hottest(), accepted));
  }

  private static DayLine of(
      WorstSpot.Day day, String name, Air air, RiskProfile profile, Probability accepted) {
    WorstSpot worst = WorstSpot.of(day, profile);
    return new DayLine(
        day.name().toLowerCase(Locale.ROOT),
        name,
        TradeStyle.temperature(air.temperature()) + ", " + TradeStyle.pressure(air.pressure()),
        Verdict.throttle(worst.throttle()) + (isOnAClimb(worst, profile) ? " on a climb" : ""),
        TradeStyle.probability(worst.leanRisk(), accepted),
        worst.leanRisk().isMoreThan(accepted));
  }

  private static boolean isOnAClimb(WorstSpot worst, RiskProfile profile) {
    return !worst.speed().equals(profile.nearest(worst.throttle()).mixture().speed());
  }
}
