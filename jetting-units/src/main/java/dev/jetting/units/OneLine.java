package dev.jetting.units;

import java.util.HexFormat;

/**
 * Text from outside, made safe to show on one line of a terminal, a page or a message. Characters
 * that steer a terminal, break a line or turn the writing direction are written as escapes.
 *
 * <p>Not for HTML, where {@code <} and {@code &} have to be escaped as well.
 */
public final class OneLine {

  private static final int LONGEST_QUOTE = 60;

  private OneLine() {}

  /**
   * Returns whether a character steers a terminal, breaks a line or turns the writing direction:
   * control and format characters, line and paragraph separators, and lone surrogates.
   *
   * @param codePoint the character
   * @return true if it does
   */
  public static boolean steers(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      default -> false;
    };
  }

  /**
   * Returns a text as it can be shown.
   *
   * @param text the text
   * @param longest the most characters (code points) that are shown, 0 or more; an ellipsis
   *     replaces the rest
   * @return the text; in the place of each character that {@link #steers}, a backslash, {@code u}
   *     and the four hexadecimal digits of each of its UTF-16 units
   */
  public static String shown(String text, int longest) {
    StringBuilder safe = new StringBuilder();
    text.codePoints().limit(longest).forEach(c -> append(safe, c));
    if (text.codePoints().skip(longest).findAny().isPresent()) {
      safe.append('…');
    }
    return safe.toString();
  }

  /**
   * Returns a text between quotation marks, at most 60 characters of it.
   *
   * @param text the text
   * @return the text as messages of this library quote it
   */
  public static String quoted(String text) {
    return '"' + shown(text, LONGEST_QUOTE) + '"';
  }

  private static void append(StringBuilder safe, int c) {
    if (steers(c)) {
      for (char unit : Character.toChars(c)) {
        safe.append("\\u").append(HexFormat.of().toHexDigits(unit));
      }
    } else {
      safe.appendCodePoint(c);
    }
  }
}
