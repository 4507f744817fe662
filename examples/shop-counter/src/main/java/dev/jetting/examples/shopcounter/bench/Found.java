package dev.jetting.examples.shopcounter.bench;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.ThrottleBand;
import java.util.Locale;

/**
 * A finding as the page shows it.
 *
 * @param number its number in the list and in the picture
 * @param severity how much it matters, as a name in style sheets
 * @param where the throttle range, for people
 * @param from where it begins, percent throttle
 * @param to where it ends, percent throttle
 * @param text what was found
 * @param remedy what to do
 * @param rule the rule that found it
 */
public record Found(
    int number,
    String severity,
    String where,
    double from,
    double to,
    String text,
    String remedy,
    String rule) {

  static Found of(int number, RankedFinding ranked, Words words) {
    ThrottleBand band = ranked.finding().band();
    return new Found(
        number,
        ranked.severity().name().toLowerCase(Locale.ROOT),
        words.say(band.words()),
        band.from().percent(),
        band.to().percent(),
        words.say(ranked.finding().words()),
        words.say(ranked.finding().remedy().message()),
        ranked.ruleId());
  }
}
