package dev.jetting.units;

import dev.jetting.units.number.Decimals;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The number at the start of a text, and what follows it. */
record NumberText(double value, String rest) {
  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)(.*)");

  private static final Pattern FRACTION =
      Pattern.compile("(?:([0-9]{1,6}) )?([0-9]{1,6})/([0-9]{1,6})(.*)");

  private static final Pattern VULGAR_FRACTION =
      Pattern.compile("(?:([0-9]{1,6}) ?)?([½⅓⅔¼¾⅛⅜⅝⅞])(.*)");

  private static final Map<String, String> VULGAR =
      Map.of(
          "½", "1/2", "⅓", "1/3", "⅔", "2/3", "¼", "1/4", "¾", "3/4", "⅛", "1/8", "⅜", "3/8", "⅝",
          "5/8", "⅞", "7/8");

  /**
   * A double holds every number with at most 15 digits. Its quotient by a power of ten rounds once.
   */
  private static final int LONGEST_PLAIN = 15;

  private static final String PLAIN_SIGNS = "°²³";

  /** Returns null if the text does not start with a number. */
  static @Nullable NumberText at(String text, boolean fractions) {
    NumberText plain = plainAt(text);
    return plain == null ? carefullyAt(text, fractions) : plain;
  }

  /**
   * Reads what most people write, such as {@code 18 mm} or {@code 1.5}: a few digits, a point and
   * digits or none, the end or a space and a unit. Returns null for all else, numbers or not.
   */
  private static @Nullable NumberText plainAt(String text) {
    int point = -1;
    long digits = 0;
    int end = 0;
    for (; end < text.length() && end < LONGEST_PLAIN; end++) {
      char c = text.charAt(end);
      if (c == '.' && point < 0) {
        point = end;
      } else if (isDigit(c)) {
        digits = 10 * digits + (c - '0');
      } else {
        break;
      }
    }
    int places = point < 0 ? 0 : end - point - 1;
    boolean number = end > 0 && point != end - 1;
    if (!number || !isEndOrPlainUnit(text, end)) {
      return null;
    }
    String rest = end == text.length() ? "" : text.substring(end + 1);
    return new NumberText(digits / Decimals.powerOfTen(places), rest);
  }

  /** Nothing, or a space and a unit of one word that does not start like a fraction. */
  private static boolean isEndOrPlainUnit(String text, int from) {
    if (from == text.length()) {
      return true;
    }
    int unit = from + 1;
    boolean plain = text.charAt(from) == ' ' && unit < text.length() && !isDigit(text.charAt(unit));
    for (int i = unit; plain && i < text.length(); i++) {
      char c = text.charAt(i);
      plain = (c > ' ' && c <= '~') || PLAIN_SIGNS.indexOf(c) >= 0;
    }
    return plain;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Reads every spelling, whatever it costs. */
  static @Nullable NumberText carefullyAt(String text, boolean fractions) {
    String tidy = text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2212', '-').strip();
    NumberText fraction = fractions ? fractionAt(tidy) : null;
    if (fraction != null) {
      return fraction;
    }
    Matcher decimal = DECIMAL.matcher(tidy);
    return decimal.matches()
        ? new NumberText(Double.parseDouble(decimal.group(1)), decimal.group(2).strip())
        : null;
  }

  private static @Nullable NumberText fractionAt(String text) {
    Matcher vulgar = VULGAR_FRACTION.matcher(text);
    String spelled =
        vulgar.matches()
            ? (vulgar.group(1) == null ? "" : vulgar.group(1) + " ")
                + VULGAR.get(vulgar.group(2))
                + vulgar.group(3)
            : text;
    Matcher fraction = FRACTION.matcher(spelled);
    if (!fraction.matches()) {
      return null;
    }
    int whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
    int numerator = Integer.parseInt(fraction.group(2));
    int denominator = Integer.parseInt(fraction.group(3));
    // All exact in a double but the division, so the fraction is rounded once.
    return denominator == 0
        ? null
        : new NumberText(
            ((double) whole * denominator + numerator) / denominator, fraction.group(4).strip());
  }
}
