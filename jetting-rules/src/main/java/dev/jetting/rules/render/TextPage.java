package dev.jetting.rules.render;

import dev.jetting.units.OneLine;
import java.util.regex.Pattern;

/**
 * Plain text of eighty columns, written from top to bottom. Titles and ids come from outside, so
 * nothing in them leaves its place. Characters that would steer a terminal are replaced, blanks of
 * all kinds are single ones, and a word wider than the page is broken.
 */
final class TextPage {

  private static final int WIDTH = 80;
  private static final String REPLACEMENT = "\uFFFD";
  private static final char NO_BREAK = '\u00A0';

  /** A space between a number and its unit, or between λ and its number. */
  private static final Pattern INSEPARABLE =
      Pattern.compile("(?<=[0-9]) (?=[%°]|mm|cm|rpm|hPa|L/h)|(?<=λ) (?=[0-9])");

  /** Whatever looks like one, with which a text could move words to a column of its choice. */
  private static final Pattern BLANK =
      Pattern.compile("[\\p{Zs}&&[^\\u00A0]]|[\\u115F\\u1160\\u2800\\u3164\\uFFA0]");

  private static final Pattern BLANKS = Pattern.compile("[ \\u00A0]{2,}");

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
    return blank().line(heading + " " + "-".repeat(Math.max(0, WIDTH - columns(heading) - 1)));
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
      for (String rest = word; !rest.isEmpty(); ) {
        String piece = first(rest, WIDTH - columns(fresh ? line : margin));
        if (!fresh && columns(line) + 1 + columns(piece) > WIDTH) {
          line(line.toString());
          line = new StringBuilder(margin);
          fresh = true;
        }
        line.append(fresh ? "" : " ").append(piece);
        fresh = false;
        rest = rest.substring(piece.length());
      }
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
    return clean(words).replace(NO_BREAK, ' ');
  }

  /** The same text with a full stop at its end, unless it ends a sentence already. */
  static String sentence(String words) {
    String stripped = words.strip();
    return stripped.matches("(?s).*[.!?…]") ? stripped : stripped + ".";
  }

  /** The same text on one line, cut where it is longer than the page is wide. */
  static String shortened(String words) {
    String line = oneLine(words);
    return columns(line) <= WIDTH ? line : first(line, WIDTH - 1) + "…";
  }

  private static String[] words(String paragraph) {
    return INSEPARABLE.matcher(clean(paragraph)).replaceAll(String.valueOf(NO_BREAK)).split(" +");
  }

  private static String clean(String words) {
    String blanks = BLANK.matcher(printable(words.replace('\n', ' '))).replaceAll(" ");
    return BLANKS.matcher(blanks).replaceAll(" ").strip();
  }

  private static int columns(CharSequence characters) {
    return characters.codePoints().map(TextPage::columns).sum();
  }

  /** The characters of ideographic scripts, and pictures, take two columns of a terminal. */
  private static int columns(int codePoint) {
    boolean wide =
        Character.isIdeographic(codePoint)
            || (codePoint >= 0x1100 && codePoint <= 0x115F)
            || (codePoint >= 0x2E80 && codePoint <= 0xA4CF)
            || (codePoint >= 0xAC00 && codePoint <= 0xD7A3)
            || (codePoint >= 0xFE30 && codePoint <= 0xFE6F)
            || (codePoint >= 0xFF00 && codePoint <= 0xFF60)
            || (codePoint >= 0xFFE0 && codePoint <= 0xFFE6)
            || codePoint >= 0x1F000;
    return wide ? 2 : 1;
  }

  /** As much of a text from its beginning as fits, one character at least. */
  private static String first(String words, int room) {
    int end = 0;
    for (int used = 0; end < words.length(); ) {
      int next = words.codePointAt(end);
      used += columns(next);
      if (used > room && end > 0) {
        break;
      }
      end += Character.charCount(next);
    }
    return words.substring(0, end);
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
