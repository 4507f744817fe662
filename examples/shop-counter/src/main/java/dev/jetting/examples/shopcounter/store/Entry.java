package dev.jetting.examples.shopcounter.store;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * A line of a machine's log.
 *
 * @param at when
 * @param kind what kind of thing was done
 * @param texts what was done, by the tag of the language; one text under no tag where a person
 *     wrote it
 */
public record Entry(Instant at, Kind kind, Map<String, String> texts) {

  /** The tag of a text that is the same in every language. */
  static final String PLAIN = "";

  /**
   * Returns what was done.
   *
   * @param tag the language of the reader
   * @return the text; where it has none in this language the first one
   */
  public String text(String tag) {
    return Optional.ofNullable(texts.get(tag))
        .or(() -> texts.values().stream().findFirst())
        .orElse("");
  }

  /** {@return the day and the minute by the shop's clock} */
  public String minute() {
    return WallClock.minute(at);
  }

  /** {@return the day by the shop's clock} */
  public String day() {
    return WallClock.day(at);
  }

  /** What kind of thing was done. */
  public enum Kind {
    /** The machine was entered. */
    ENTERED,
    /** A part or a turn was changed. */
    CHANGED,
    /** The machine was looked over before a ride. */
    CHECKED,
    /** A value was measured. */
    MEASURED,
    /** Something was seen or felt. */
    READ,
    /** A note of the visitor's. */
    NOTED
  }
}
