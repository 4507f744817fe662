package dev.jetting.examples.shopcounter.bench;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Locale;

/**
 * What a report comes to, in one word and one sentence.
 *
 * @param kind the verdict
 * @param word its word, for people
 * @param sentence why, for people
 */
public record Verdict(Kind kind, String word, String sentence) {

  /** Stop, take care, or go on; each has a shape and a word, never a colour alone. */
  public enum Kind {
    /** The report speaks against riding. */
    STOP,
    /** Nothing speaks against a careful first ride, but something is to be looked at. */
    CARE,
    /** Nothing speaks against a careful first ride. */
    GO;

    /** {@return its name in style sheets} */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static Verdict of(Report report, Words words) {
    WorstSpot worst = report.worst();
    Message risk =
        Words.message(
            "verdict." + worst.day().name().toLowerCase(Locale.ROOT),
            "risk",
            Argument.risk(worst.leanRisk(), report.sheet().riding().acceptedRisk()),
            "throttle",
            Argument.throttle(worst.throttle()),
            "speed",
            Argument.speed(worst.speed()));
    Kind kind = kind(report);
    String key = "verdict." + kind.key();
    return new Verdict(
        kind, words.say(key), words.say(Words.sentences(risk, Words.message(key + ".then"))));
  }

  private static Kind kind(Report report) {
    boolean warned = report.findings().stream().anyMatch(f -> f.severity() == Severity.WARNING);
    return !report.passes() ? Kind.STOP : warned ? Kind.CARE : Kind.GO;
  }
}
