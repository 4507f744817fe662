package dev.jetting.examples.shopcounter.bench;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.TradeStyle;
import java.util.Locale;

/**
 * A finding as the page shows it.
 *
 * @param number its number in the list and in the picture
 * @param severity how much it matters, as a word
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

  static Found of(int number, RankedFinding ranked) {
    ThrottleBand band = ranked.finding().band();
    return new Found(
        number,
        ranked.severity().name().toLowerCase(Locale.ROOT),
        where(band),
        band.from().percent(),
        band.to().percent(),
        ranked.finding().text(),
        ranked.finding().remedy().text(),
        ranked.ruleId());
  }

  private static String where(ThrottleBand band) {
    if (band.equals(ThrottleBand.WHOLE)) {
      return "whole throttle range";
    }
    String from = TradeStyle.throttle(band.from());
    String to = TradeStyle.throttle(band.to());
    return from.equals(to) ? at(from) : from + " to " + at(to);
  }

  private static String at(String where) {
    return where.endsWith("throttle") ? where : where + " throttle";
  }
}
