package dev.jetting.units;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What a rider typed, in lower case and with single spaces.
 *
 * @param text the text
 */
record RiderText(String text) {

  /** A fraction joined to its whole number, as in 1-1/2. */
  private static final String JOINED_FRACTION = "(?<=\\d) ?[-+&] ?(?=\\d+/\\d|[½¼¾⅛⅜⅝⅞])";

  static RiderText of(String text) {
    return new RiderText(
        Objects.requireNonNull(text, "text")
            .replace('\u00a0', ' ')
            .replace('\u202f', ' ')
            .replace('\u2212', '-')
            .replaceAll("[\u2010-\u2015]", "-")
            .toLowerCase(Locale.ROOT)
            .strip()
            .replaceAll("\\s+", " ")
            .replaceAll(JOINED_FRACTION, " "));
  }

  /** Without the first of some words that it starts with. */
  RiderText without(String... words) {
    for (String word : words) {
      if (text.startsWith(word) && !continuesAWord(word, text)) {
        return new RiderText(text.substring(word.length()).strip());
      }
    }
    return this;
  }

  private static boolean continuesAWord(String word, String text) {
    return text.length() > word.length()
        && Character.isLetter(word.charAt(word.length() - 1))
        && Character.isLetter(text.charAt(word.length()));
  }

  /** Without the first of some words that it ends with. */
  RiderText withoutLast(String... words) {
    for (String word : words) {
      if (text.endsWith(" " + word)) {
        return new RiderText(text.substring(0, text.length() - word.length()).strip());
      }
    }
    return this;
  }

  /** The number that it starts with, and the rest; empty where it starts with none. */
  Optional<NumberText> number(boolean fractions) {
    return Optional.ofNullable(NumberText.carefullyAt(text, fractions));
  }

  /** With a space between the number and its unit. */
  String spaced() {
    return number(false).map(n -> Text.number(n.value()) + " " + n.rest()).orElse(text);
  }
}
