package dev.jetting.rules.tuning;

import java.util.Objects;

/**
 * What to do next in a session: plain data, of which {@link SessionText} makes sentences.
 *
 * <p>More kinds may come. A program that does not know a kind does not go on riding.
 */
public sealed interface NextStep {

  /**
   * A test to ride.
   *
   * @param test which, and how
   * @param confirming whether it is to confirm a setting with which the session could end
   */
  record Ride(NextTest test, boolean confirming) implements NextStep {

    /**
     * Checks for null.
     *
     * @param test which, and how
     * @param confirming whether it is to confirm a setting with which the session could end
     */
    public Ride {
      Objects.requireNonNull(test, "test");
    }
  }

  /**
   * A part to change.
   *
   * @param change which, and what it does
   */
  record Change(NextChange change) implements NextStep {

    /**
     * Checks for null.
     *
     * @param change which, and what it does
     */
    public Change {
      Objects.requireNonNull(change, "change");
    }
  }

  /** An end: the setting is read and accepted, and no part at hand is worth changing. */
  record Confirmed() implements NextStep {}

  /** An end: the setting is too lean and no part at hand makes it safer. */
  record NotToBeRidden() implements NextStep {}

  /** {@return whether the session ends here} */
  default boolean isEnd() {
    return this instanceof Confirmed || this instanceof NotToBeRidden;
  }
}
