package dev.jetting.core.checks;

import dev.jetting.units.number.Decimals;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Argument checks whose messages name what is wrong, its value, its unit and what is allowed. */
public final class Checks {

  private Checks() {}

  /**
   * Checks a plain name.
   *
   * @param what what bears the name
   * @param id the name
   * @throws IllegalArgumentException if it is blank
   */
  public static void id(String what, String id) {
    if (id.isBlank()) {
      throw new IllegalArgumentException(
          "id of the " + what + " is blank: allowed any text with a visible character");
    }
  }

  /**
   * Checks a condition.
   *
   * @param holds the condition
   * @param what what the value is of
   * @param value the value; its text carries the unit
   * @param allowed what is allowed
   * @throws IllegalArgumentException if the condition does not hold
   */
  public static void that(boolean holds, String what, Object value, String allowed) {
    if (!holds) {
      // A finite double prints differently on JDK 17 and 25; everything else prints the same.
      Object shown =
          value instanceof Double number && Double.isFinite(number)
              ? Decimals.shortest(number)
              : value;
      throw new IllegalArgumentException(what + " " + shown + ": allowed " + allowed);
    }
  }

  /**
   * Checks that a condition holds, where what is allowed has to be worded first.
   *
   * @param holds the condition
   * @param what the thing, in plain words
   * @param value what it is, unit included
   * @param allowed what would be right
   * @throws IllegalArgumentException if the condition does not hold
   */
  public static void that(boolean holds, String what, Object value, Supplier<String> allowed) {
    if (!holds) {
      that(false, what, value, allowed.get());
    }
  }

  /**
   * Checks that a plain number lies in a closed range.
   *
   * @param what what the number is of
   * @param value the number
   * @param low least allowed
   * @param high most allowed
   * @return the number, −0.0 as 0.0
   * @throws IllegalArgumentException if it is outside or not a number
   */
  public static double within(String what, double value, double low, double high) {
    that(
        value >= low && value <= high,
        what,
        value,
        () -> Decimals.shortest(low) + " to " + Decimals.shortest(high));
    return value + 0.0;
  }

  /**
   * Checks that a component of something that is being built was set.
   *
   * @param <T> type of the component
   * @param whole what is being built
   * @param component the component
   * @param value its value, or null where it was not set
   * @return the value
   * @throws IllegalArgumentException if it was not set
   */
  public static <T> T present(String whole, String component, @Nullable T value) {
    if (value == null) {
      throw new IllegalArgumentException(
          component + " of the " + whole + " is not set: set it before the " + whole + " is built");
    }
    return value;
  }
}
