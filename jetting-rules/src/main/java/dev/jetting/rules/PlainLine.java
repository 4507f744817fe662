package dev.jetting.rules;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;

/** A short text of a user's own that stands on one line of a page. */
final class PlainLine {

  private PlainLine() {}

  /** As long as a text of a report may be for {@code ReportJson} to read it back. */
  static final int LONGEST_TEXT = 10_000;

  /**
   * Checks the length of a text.
   *
   * @param what what the text is, as a message names it
   * @param text the text
   * @throws IllegalArgumentException if it has more than 10 000 UTF-16 units
   */
  static void checkLength(String what, String text) {
    if (text.length() > LONGEST_TEXT) {
      throw InvalidValueException.worded(
          Sentence.of("error.too-long")
              .with("what", Sentence.name(what))
              .with("size", text.length()),
          Sentence.of("error.at-most").with("most", LONGEST_TEXT));
    }
  }

  /**
   * Checks a text.
   *
   * @param field the field that holds it
   * @param what what the text is, as a message names it
   * @param text the text
   * @param longest the most UTF-16 units that it may have
   * @return the text
   * @throws IllegalArgumentException if it is blank or longer, or holds a character that steers a
   *     terminal, breaks a line or turns the writing direction
   */
  static String checked(String field, String what, String text, int longest) {
    Checks.line(field, () -> Sentence.name(what), text, longest);
    return text;
  }
}
