package dev.jetting.examples.shopcounter.store;

import java.time.Instant;

/**
 * A line of a machine's log.
 *
 * @param at when
 * @param kind what kind of thing was done
 * @param text what was done, for people
 */
public record Entry(Instant at, Kind kind, String text) {

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
    ENTERED("entered"),
    /** A part or a turn was changed. */
    CHANGED("changed"),
    /** The machine was looked over before a ride. */
    CHECKED("checked"),
    /** A value was measured. */
    MEASURED("measured"),
    /** Something was seen or felt. */
    READ("read"),
    /** A note of the visitor's. */
    NOTED("noted");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** {@return what people read} */
    public String words() {
      return words;
    }
  }
}
