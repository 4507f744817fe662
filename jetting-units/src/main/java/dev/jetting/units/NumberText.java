package dev.jetting.units;

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

  /** Returns null if the text does not start with a number. */
  static @Nullable NumberText at(String text, boolean fractions) {
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
