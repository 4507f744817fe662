package dev.jetting.examples.shopcounter.store;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the clock on the shop's wall shows them. */
final class WallClock {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private WallClock() {}

  static String minute(Instant at) {
    return MINUTE.format(at.atZone(ZoneId.systemDefault()));
  }

  static String day(Instant at) {
    return minute(at).substring(0, 10);
  }
}
