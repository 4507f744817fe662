package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.air.Air;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Probability;
import java.util.List;
import java.util.Locale;

/**
 * The riskiest opening of a day, climbs included.
 *
 * @param key today, coldest or hottest
 * @param name the day, for people
 * @param air its air
 * @param where the riskiest opening, and whether it is that of a climb, after the risk
 * @param risk the lean risk there
 * @param tooMuch whether it is more than is accepted
 */
public record DayLine(
    String key, String name, String air, String where, String risk, boolean tooMuch) {

  static List<DayLine> all(AssessedSetting setting, Words words) {
    SetupSheet sheet = setting.sheet();
    Riding riding = sheet.riding();
    Probability accepted = riding.acceptedRisk();
    return List.of(
        of(WorstSpot.Day.TODAY, sheet.setup().air(), setting.profile(), accepted, words),
        of(WorstSpot.Day.COLDEST, riding.coldest(), setting.coldest(), accepted, words),
        of(WorstSpot.Day.HOTTEST, riding.hottest(), setting.hottest(), accepted, words));
  }

  private static DayLine of(
      WorstSpot.Day day, Air air, RiskProfile profile, Probability accepted, Words words) {
    WorstSpot worst = WorstSpot.of(day, profile);
    String key = day.name().toLowerCase(Locale.ROOT);
    return new DayLine(
        key,
        words.say("day." + key),
        words.say(air(air)),
        words.say(
            isOnAClimb(worst, profile) ? "day.climb" : "day.at",
            "throttle",
            Argument.throttle(worst.throttle())),
        words.say(Argument.risk(worst.leanRisk(), accepted)),
        worst.leanRisk().isMoreThan(accepted));
  }

  static Message air(Air air) {
    return Words.message(
        "day.air",
        "temperature",
        Argument.temperature(air.temperature()),
        "pressure",
        Argument.pressure(air.pressure()));
  }

  private static boolean isOnAClimb(WorstSpot worst, RiskProfile profile) {
    return !worst.speed().equals(profile.nearest(worst.throttle()).mixture().speed());
  }
}
