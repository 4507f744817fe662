package dev.jetting.core.checks;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.OneLine;
import dev.jetting.units.Quantity;
import dev.jetting.units.Sentence;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Argument checks whose messages name what is wrong, its value, its unit and what is allowed. */
public final class Checks {

  /** A longer id would swamp every message that names its part. */
  public static final int LONGEST_ID = 60;

  private static final int LONGEST_SHOWN = 80;

  private Checks() {}

  /**
   * Checks a plain name.
   *
   * @param what what bears the name
   * @param id the name
   * @throws InvalidValueException as {@link #id(String, String, String)}, of the field {@code id}
   */
  public static void id(String what, String id) {
    id("id", what, id);
  }

  /**
   * Checks a plain name.
   *
   * @param field the field that holds it
   * @param what what bears the name
   * @param id the name
   * @throws InvalidValueException if it is blank, has more than 60 UTF-16 units, or holds a
   *     character that steers a terminal, breaks a line or turns the writing direction
   */
  public static void id(String field, String what, String id) {
    line(
        field,
        () -> Sentence.of("error.name.id-of").with("thing", what),
        Objects.requireNonNull(id, field),
        LONGEST_ID);
  }

  /**
   * Checks a short text of a user's own that stands on one line.
   *
   * @param field the field that holds it; empty for none
   * @param what what the text is, as a message names it
   * @param text the text
   * @param longest the most UTF-16 units that it may have
   * @throws InvalidValueException if it is blank or longer, or holds a character that steers a
   *     terminal, breaks a line or turns the writing direction
   */
  public static void line(String field, Supplier<Sentence> what, String text, int longest) {
    if (text.isBlank()) {
      throw InvalidValueException.worded(
          Sentence.of("error.blank").with("what", what.get()),
          field,
          OneLine.quoted(text),
          Sentence.of("error.visible"));
    }
    lineOrNothing(field, what, text, longest);
  }

  /**
   * Checks a short text of a user's own that stands on one line, or nothing.
   *
   * @param field the field that holds it; empty for none
   * @param what what the text is, as a message names it
   * @param text the text; may be blank
   * @param longest the most UTF-16 units that it may have
   * @throws InvalidValueException if it is longer, or holds a character that steers a terminal,
   *     breaks a line or turns the writing direction
   */
  public static void lineOrNothing(
      String field, Supplier<Sentence> what, String text, int longest) {
    if (text.length() > longest) {
      throw InvalidValueException.worded(
          Sentence.of("error.too-long").with("what", what.get()).with("size", text.length()),
          field,
          OneLine.quoted(text),
          Sentence.of("error.at-most").with("most", longest));
    }
    int steering = firstSteering(text);
    if (steering >= 0) {
      throw InvalidValueException.worded(
          Sentence.of("error.steering")
              .with("what", what.get())
              .with("code", HexFormat.of().withUpperCase().toHexDigits(steering, 5)),
          field,
          OneLine.quoted(text),
          Sentence.of("error.one-line"));
    }
  }

  /**
   * The first character that steers; −1 for none. A loop, for kits come by the hundred thousand.
   */
  private static int firstSteering(String text) {
    int at = 0;
    while (at < text.length()) {
      int character = text.codePointAt(at);
      if (OneLine.steers(character)) {
        return character;
      }
      at += Character.charCount(character);
    }
    return -1;
  }

  /**
   * Checks plain names. Each is worded only where one is refused: kits come by the hundred
   * thousand.
   *
   * @param field the field that holds the list
   * @param what what bears a name, by its place in the list
   * @param ids the names
   * @throws InvalidValueException as {@link #id(String, String, String)}, of the field with the
   *     place
   */
  public static void ids(String field, IntFunction<String> what, List<String> ids) {
    for (int i = 0; i < ids.size(); i++) {
      String id = ids.get(i);
      if (id.isBlank() || id.length() > LONGEST_ID || firstSteering(id) >= 0) {
        id(field + "[" + i + "]", what.apply(i), id);
      }
    }
  }

  /**
   * Checks how many there are of something that costs time.
   *
   * @param field the field that holds them
   * @param what what is counted, in the plural
   * @param count how many
   * @param most how many are allowed
   * @throws InvalidValueException if there are more
   */
  public static void atMost(String field, Supplier<Sentence> what, int count, int most) {
    if (count > most) {
      throw InvalidValueException.worded(
          Sentence.of("error.count").with("count", count).with("what", what.get()),
          field,
          String.valueOf(count),
          Sentence.of("error.at-most").with("most", most));
    }
  }

  /**
   * Checks a condition on what people write.
   *
   * @param holds the condition
   * @param what what the value is of
   * @param value the value
   * @param allowed what is allowed
   * @throws InvalidValueException if the condition does not hold
   */
  public static void that(
      boolean holds, Supplier<Sentence> what, Object value, Supplier<Sentence> allowed) {
    if (!holds) {
      throw InvalidValueException.of(what.get(), shown(value), allowed.get());
    }
  }

  /**
   * Checks a condition on what programs compute, in words for programmers.
   *
   * @param holds the condition
   * @param what what the value is of
   * @param value the value
   * @param allowed what is allowed
   * @throws InvalidValueException if the condition does not hold
   */
  public static void that(boolean holds, String what, Object value, String allowed) {
    if (!holds) {
      throw InvalidValueException.of(Sentence.plain(what), shown(value), Sentence.plain(allowed));
    }
  }

  /**
   * Checks the unit of a number that stands beside its value.
   *
   * @param what what the number is of
   * @param unit its unit
   * @param allowed the unit that it is computed with
   * @throws InvalidValueException if it is another one
   */
  public static void unit(Supplier<Sentence> what, String unit, String allowed) {
    if (!unit.equals(allowed)) {
      throw InvalidValueException.worded(
          Sentence.of("error.unit-of").with("what", what.get()).with("unit", OneLine.quoted(unit)),
          "",
          OneLine.quoted(unit),
          Sentence.plain(OneLine.quoted(allowed)));
    }
  }

  /** A number or a quantity is kept, of anything else so much of its text as fits on a line. */
  private static Object shown(Object value) {
    return value instanceof Number || value instanceof Quantity
        ? value
        : OneLine.shown(String.valueOf(value), LONGEST_SHOWN);
  }

  /**
   * Checks that a plain number lies in a closed range.
   *
   * @param what what the number is of
   * @param value the number
   * @param low least allowed
   * @param high most allowed
   * @return the number, −0.0 as 0.0
   * @throws InvalidValueException if it is outside or not a number
   */
  public static double within(Supplier<Sentence> what, double value, double low, double high) {
    that(
        value >= low && value <= high,
        what,
        value,
        () -> Sentence.of("error.to").with("low", low).with("high", high));
    return value + 0.0;
  }

  /**
   * Checks that a plain number that programs compute lies in a closed range, in words for
   * programmers.
   *
   * @param what what the number is of
   * @param value the number
   * @param low least allowed
   * @param high most allowed
   * @return the number, −0.0 as 0.0
   * @throws InvalidValueException if it is outside or not a number
   */
  public static double within(String what, double value, double low, double high) {
    return within(() -> Sentence.plain(what), value, low, high);
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
