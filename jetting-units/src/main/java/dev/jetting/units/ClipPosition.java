package dev.jetting.units;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The groove of a jet needle in which its clip sits. It has the number of grooves and the end from
 * which it counts, because "the second" is richer or leaner depending on both. A groove nearer to
 * the bottom raises the needle and is richer.
 *
 * <p>Equality and order depend on the groove, not on the end from which it was counted: 2 of 5 from
 * the top equals 4 of 5 from the bottom. Each prints as it was given. Positions on needles with the
 * same number of grooves are ordered from the top groove to the bottom one, others by the number of
 * grooves.
 *
 * <p>Not the height of the needle, which takes the distance between its grooves and the washers
 * under its clip.
 */
public final class ClipPosition implements Quantity<ClipPosition> {
  /** The end of the needle that grooves are counted from. */
  public enum End {
    /** The blunt end, which the clip is pushed over. */
    TOP,

    /** The side of the tapered end. */
    BOTTOM
  }

  private static final int MOST_GROOVES = 50;
  private static final String OF = " of ";
  private static final String FROM_TOP = " from top";
  private static final String FROM_BOTTOM = " from bottom";
  private static final int MOST_DIGITS = 6;

  private final int fromTop;
  private final int grooves;
  private final End countedFrom;

  private ClipPosition(int groove, int grooves, End countedFrom) {
    if (grooves < 1 || grooves > MOST_GROOVES) {
      throw QuantityException.outOfRange(
          Sentence.of("error.name.clip.grooves"), grooves, "grooves", to(MOST_GROOVES));
    }
    if (groove < 1 || groove > grooves) {
      throw QuantityException.outOfRange(
          Sentence.of("error.name.clip-position"),
          groove,
          "of " + grooves + from(countedFrom),
          to(grooves));
    }
    this.fromTop = countedFrom == End.TOP ? groove : grooves + 1 - groove;
    this.grooves = grooves;
    this.countedFrom = countedFrom;
  }

  private static Sentence to(int grooves) {
    return Sentence.of("error.from-to").with("low", 1).with("high", grooves);
  }

  /**
   * Returns the position counted from the top, the blunt end.
   *
   * @param groove the groove, from 1 to {@code grooves}
   * @param grooves how many grooves the needle has, from 1 to 50
   * @return the clip position
   * @throws QuantityException if there is no such groove
   */
  public static ClipPosition fromTop(int groove, int grooves) {
    return new ClipPosition(groove, grooves, End.TOP);
  }

  /**
   * Returns the position counted from the bottom, the side of the tapered end.
   *
   * @param groove the groove, from 1 to {@code grooves}
   * @param grooves how many grooves the needle has, from 1 to 50
   * @return the clip position
   * @throws QuantityException if there is no such groove
   */
  public static ClipPosition fromBottom(int groove, int grooves) {
    return new ClipPosition(groove, grooves, End.BOTTOM);
  }

  /**
   * Reads a clip position.
   *
   * @param text such as {@code 2 of 5 from top} or {@code 4 of 5 from bottom}; a groove without the
   *     number of grooves or without the end is refused
   * @return the clip position
   * @throws QuantityException if the text has another form or there is no such groove
   */
  public static ClipPosition parse(String text) {
    String tidy = Objects.requireNonNull(text, "text").strip();
    End end = tidy.endsWith(FROM_TOP) ? End.TOP : End.BOTTOM;
    int of = tidy.indexOf(OF);
    int from = tidy.length() - from(end).length();
    int groove = whole(tidy, 0, of);
    int grooves = whole(tidy, of + OF.length(), from);
    if (groove < 0 || grooves < 0 || !tidy.endsWith(from(end))) {
      throw QuantityException.unreadable(
          Sentence.of("error.name.clip-position"),
          text,
          Sentence.of("error.clip-forms").with("most", MOST_GROOVES));
    }
    return new ClipPosition(groove, grooves, end);
  }

  /** A whole number of a few digits and nothing else, or -1. */
  private static int whole(String text, int from, int to) {
    if (from < 0 || to <= from || to - from > MOST_DIGITS) {
      return -1;
    }
    int number = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      number = 10 * number + (c - '0');
    }
    return number;
  }

  /**
   * Returns the groove counted from the top.
   *
   * @return 1 for the top groove
   */
  public int grooveFromTop() {
    return fromTop;
  }

  /**
   * Returns the groove counted from the bottom.
   *
   * @return 1 for the bottom groove
   */
  public int grooveFromBottom() {
    return grooves + 1 - fromTop;
  }

  /**
   * Returns how many grooves the needle has.
   *
   * @return the number of grooves, 1 or more
   */
  public int grooves() {
    return grooves;
  }

  /**
   * Returns the end that this position was given from and prints from.
   *
   * @return the end
   */
  public End countedFrom() {
    return countedFrom;
  }

  /**
   * Returns the next groove towards the top, which lowers the needle and is leaner.
   *
   * @return the position, counted from the same end; empty at the top groove
   */
  public Optional<ClipPosition> nextTowardsTop() {
    return moved(-1);
  }

  /**
   * Returns the next groove towards the bottom, which raises the needle and is richer.
   *
   * @return the position, counted from the same end; empty at the bottom groove
   */
  public Optional<ClipPosition> nextTowardsBottom() {
    return moved(1);
  }

  private Optional<ClipPosition> moved(int grooves) {
    int moved = fromTop + grooves;
    if (moved < 1 || moved > this.grooves) {
      return Optional.empty();
    }
    int counted = countedFrom == End.TOP ? moved : this.grooves + 1 - moved;
    return Optional.of(new ClipPosition(counted, this.grooves, countedFrom));
  }

  @Override
  public Optional<Sentence.Amount> amount() {
    return Optional.empty();
  }

  @Override
  public int compareTo(ClipPosition other) {
    Objects.requireNonNull(other, "other");
    int byGrooves = Integer.compare(grooves, other.grooves);
    return byGrooves != 0 ? byGrooves : Integer.compare(fromTop, other.fromTop);
  }

  @Override
  @SuppressWarnings("exports") // callers compile without the annotation
  public boolean equals(@Nullable Object other) {
    return other instanceof ClipPosition that && that.grooves == grooves && that.fromTop == fromTop;
  }

  @Override
  public int hashCode() {
    return grooves * (MOST_GROOVES + 1) + fromTop;
  }

  @Override
  public String toString() {
    int groove = countedFrom == End.TOP ? fromTop : grooveFromBottom();
    return groove + OF + grooves + from(countedFrom);
  }

  private static String from(End end) {
    return end == End.TOP ? FROM_TOP : FROM_BOTTOM;
  }
}
