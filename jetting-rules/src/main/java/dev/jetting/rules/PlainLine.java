package dev.jetting.rules;

import dev.jetting.core.checks.Checks;

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
      throw new IllegalArgumentException(
          what + " of " + text.length() + " characters: allowed at most " + LONGEST_TEXT);
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
    Checks.line(field, what, text, longest);
    return text;
  }
}
