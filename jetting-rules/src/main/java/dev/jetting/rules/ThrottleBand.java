package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;
import java.util.Optional;

/**
 * A part of the throttle range, both ends included.
 *
 * @param from smallest opening
 * @param to widest opening, not below {@code from}
 */
public record ThrottleBand(ThrottleOpening from, ThrottleOpening to) {

  /** The whole range. */
  public static final ThrottleBand WHOLE =
      new ThrottleBand(ThrottleOpening.CLOSED, ThrottleOpening.FULL);

  /**
   * Checks the order of the ends.
   *
   * @param from smallest opening
   * @param to widest opening, not below {@code from}
   * @throws IllegalArgumentException if {@code from} is the wider
   */
  public ThrottleBand {
    if (from.compareTo(to) > 0) {
      throw InvalidValueException.of(
          Sentence.of("error.name.band-from"),
          from,
          Sentence.of("error.wide-end").with("most", to));
    }
  }

  /**
   * A band between two openings.
   *
   * @param from smallest opening in eighths, 0 to 8
   * @param to widest opening in eighths, {@code from} to 8
   * @return the band
   * @throws IllegalArgumentException if one is out of range
   */
  public static ThrottleBand eighths(int from, int to) {
    return new ThrottleBand(ThrottleOpening.ofEighths(from), ThrottleOpening.ofEighths(to));
  }

  /**
   * A single opening.
   *
   * @param throttle the opening
   * @return the band that holds it alone
   */
  public static ThrottleBand at(ThrottleOpening throttle) {
    Objects.requireNonNull(throttle, "throttle");
    return new ThrottleBand(throttle, throttle);
  }

  /**
   * Says where the band is.
   *
   * @return words such as "from 1/8 to 1/2 throttle"
   */
  public Message words() {
    if (equals(WHOLE)) {
      return Message.of("band.whole");
    }
    if (from.equals(to)) {
      return Message.of("band.at").with("throttle", Argument.throttle(to));
    }
    boolean closed = from.equals(ThrottleOpening.CLOSED);
    return Message.of("band")
        .with("from", closed ? Argument.word("band.closed") : Argument.opening(from))
        .with("to", Argument.throttle(to));
  }

  /**
   * Whether the band holds an opening.
   *
   * @param throttle the opening
   * @return true if it does
   */
  public boolean contains(ThrottleOpening throttle) {
    return from.compareTo(throttle) <= 0 && throttle.compareTo(to) <= 0;
  }

  /**
   * What lies in both this band and another.
   *
   * @param other the other band
   * @return the common part; empty if they have not even an end in common
   */
  public Optional<ThrottleBand> common(ThrottleBand other) {
    ThrottleOpening later = from.compareTo(other.from) >= 0 ? from : other.from;
    ThrottleOpening earlier = to.compareTo(other.to) <= 0 ? to : other.to;
    return later.compareTo(earlier) > 0
        ? Optional.empty()
        : Optional.of(new ThrottleBand(later, earlier));
  }
}
