package dev.jetting.rules.render;

import dev.jetting.units.OneLine;
import java.util.regex.Pattern;

/**
 * Plain text of eighty columns, written from top to bottom. Characters that would steer a terminal
 * are replaced, since titles and ids come from outside.
 */
final class TextPage {

  private static final int WIDTH = 80;
  private static final String REPLACEMENT = "\uFFFD";
  private static final char NO_BREAK = '\u00A0';

  /** A space between a number and its unit, or between λ and its number. */
  private static final Pattern INSEPARABLE =
      Pattern.compile("(?<=[0-9]) (?=[%°]|mm|cm|rpm|hPa|L/h)|(?<=λ) (?=[0-9])");

  private final StringBuilder text = new StringBuilder();

  /** A line as it is; the caller keeps to the width. */
  TextPage line(String line) {
    text.append(printable(line).replace(NO_BREAK, ' ').stripTrailing()).append('\n');
    return this;
  }

  TextPage doubleRule() {
    return line("=".repeat(WIDTH));
  }

  TextPage blank() {
    return line("");
  }

  /** A blank line and a heading with a rule after it. */
  TextPage heading(String heading) {
    return blank().line(heading + " " + "-".repeat(WIDTH - heading.length() - 1));
  }

  /** A paragraph. */
  TextPage wrapped(String paragraph) {
    return wrapped("", paragraph, "");
  }

  /** A paragraph after a label, its further lines behind a margin. */
  TextPage wrapped(String label, String paragraph, String margin) {
    StringBuilder line = new StringBuilder(printable(label));
    boolean fresh = true;
    for (String word : words(paragraph)) {
      if (!fresh && length(line) + 1 + length(word) > WIDTH) {
        line(line.toString());
        line = new StringBuilder(margin);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    return line(line.toString());
  }

  @Override
  public String toString() {
    return text.toString();
  }

  /** The same text in one piece, never broken over two lines. */
  static String unbroken(String words) {
    return words.replace(' ', NO_BREAK);
  }

  /** The same text on one line, single spaces between its words. */
  static String oneLine(String words) {
    return printable(words.replace('\n', ' '))
        .replace(NO_BREAK, ' ')
        .strip()
        .replaceAll(" {2,}", " ");
  }

  /** The same text with a full stop at its end, unless it ends a sentence already. */
  static String sentence(String words) {
    String stripped = words.strip();
    return stripped.matches("(?s).*[.!?…]") ? stripped : stripped + ".";
  }

  /** The same text on one line, cut where it is longer than the page is wide. */
  static String shortened(String words) {
    String line = oneLine(words);
    int room = line.codePointCount(0, line.length());
    return room <= WIDTH ? line : line.substring(0, line.offsetByCodePoints(0, WIDTH - 1)) + "…";
  }

  private static String[] words(String paragraph) {
    String clean = printable(paragraph.replace('\n', ' ')).strip();
    return INSEPARABLE.matcher(clean).replaceAll(String.valueOf(NO_BREAK)).split(" +");
  }

  private static int length(CharSequence characters) {
    return (int) characters.codePoints().count();
  }

  private static String printable(String line) {
    StringBuilder clean = new StringBuilder(line.length());
    line.codePoints()
        .forEach(
            c -> {
              if (OneLine.steers(c)) {
                clean.append(REPLACEMENT);
              } else {
                clean.appendCodePoint(c);
              }
            });
    return clean.toString();
  }
}
