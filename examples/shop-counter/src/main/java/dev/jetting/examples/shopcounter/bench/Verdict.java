package dev.jetting.examples.shopcounter.bench;

import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.Locale;

/**
 * What a report comes to, in one word and one sentence.
 *
 * @param kind the word
 * @param sentence why, for people
 */
public record Verdict(Kind kind, String sentence) {

  /** Stop, take care, or go on; each has a shape and a word, never a colour alone. */
  public enum Kind {
    /** The report speaks against riding. */
    STOP("Do not ride"),
    /** Nothing speaks against a careful first ride, but something is to be looked at. */
    CARE("Ride with care"),
    /** Nothing speaks against a careful first ride. */
    GO("Ready for a careful first ride");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** {@return what people read} */
    public String words() {
      return words;
    }

    /** {@return its name in style sheets} */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static Verdict of(Report report) {
    WorstSpot worst = report.worst();
    String risk =
        "The lean risk is "
            + TradeStyle.probability(worst.leanRisk(), report.sheet().riding().acceptedRisk())
            + " at most, at "
            + throttle(worst.throttle())
            + " and "
            + Math.round(worst.speed().rpm())
            + " rpm "
            + when(worst.day())
            + ".";
    boolean warned = report.findings().stream().anyMatch(f -> f.severity() == Severity.WARNING);
    if (!report.passes()) {
      return new Verdict(Kind.STOP, risk + " Change the setting before you ride.");
    }
    return warned
        ? new Verdict(Kind.CARE, risk + " Read the findings first.")
        : new Verdict(Kind.GO, risk + " Confirm it with a plug chop.");
  }

  static String throttle(ThrottleOpening opening) {
    String where = TradeStyle.throttle(opening);
    return where.endsWith("throttle") ? where : where + " throttle";
  }

  private static String when(WorstSpot.Day day) {
    return switch (day) {
      case TODAY -> "today";
      case COLDEST -> "on the coldest day";
      case HOTTEST -> "on the hottest day";
    };
  }
}
