package dev.jetting.rules;

import java.util.HexFormat;

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
   * @param what what the text is, as a message names it
   * @param text the text
   * @param longest the most characters (code points) that it may have
   * @return the text
   * @throws IllegalArgumentException if it is blank or longer, or holds a character that steers a
   *     terminal, breaks a line or turns the writing direction
   */
  static String checked(String what, String text, int longest) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(
          what + " is blank: allowed a text with a visible character");
    }
    int length = text.codePointCount(0, text.length());
    if (length > longest) {
      throw new IllegalArgumentException(
          what + " of " + length + " characters: allowed at most " + longest);
    }
    text.codePoints()
        .filter(TextPage::steers)
        .findFirst()
        .ifPresent(
            c -> {
              throw new IllegalArgumentException(
                  what
                      + " with the character U+"
                      + HexFormat.of().withUpperCase().toHexDigits(c, 5)
                      + ": allowed one line of visible characters");
            });
    return text;
  }
}
