package dev.jetting.units;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rider typed, in lower case and with single spaces.
 *
 * @param text the text
 */
record RiderText(String text) {

  /** A fraction joined to its whole number, as in 1-1/2. */
  private static final String JOINED_FRACTION = "(?<=\\d)(?: ?[-+&] ?| and )(?=\\d+/\\d|[½¼¾⅛⅜⅝⅞])";

  /** A point or comma that may be one of thousands, as in 1.500 m and 7,500. */
  private static final Pattern GROUPED = Pattern.compile("(\\d{1,3})[.,](\\d{3})(?![\\d.,])(.*)");

  private static final List<String> DIGITS =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

  /** What fractions are called, by what they are one part of. */
  private static final Map<String, String> PARTS =
      Map.of(
          "hal(?:f|ves)",
          "2",
          "thirds?",
          "3",
          "quarters?",
          "4",
          "eighths?",
          "8",
          "sixteenths?",
          "16");

  static RiderText of(String text) {
    return new RiderText(
        Objects.requireNonNull(text, "text")
            .replace('\u00a0', ' ')
            .replace('\u202f', ' ')
            .replace('\u2212', '-')
            .replaceAll("[\u2010-\u2015]", "-")
            .replaceAll("[\u00ba\u02da]", "°")
            .replaceAll("(?<=\\d)['\u2019](?=\\d{3}(?!\\d))", "")
            .toLowerCase(Locale.ROOT)
            .strip()
            .replaceAll("^minus (?=\\d)", "-")
            .replaceAll("\\s+", " ")
            .replaceAll(JOINED_FRACTION, " "));
  }

  /** Without the first of some words that it starts with, and the sign of equality behind it. */
  RiderText without(String... words) {
    for (String word : words) {
      if (text.startsWith(word) && !continuesAWord(word, text)) {
        return new RiderText(text.substring(word.length()).strip().replaceFirst("^[:=] ?", ""));
      }
    }
    return this;
  }

  /** With numbers and fractions in digits: {@code one and a half} is {@code 1 1/2}. */
  RiderText inDigits() {
    String digits = text;
    for (int digit = 0; digit < DIGITS.size(); digit++) {
      digits = digits.replaceAll("\\b" + DIGITS.get(digit) + "\\b", String.valueOf(digit));
    }
    for (Map.Entry<String, String> part : PARTS.entrySet()) {
      String name = "(?: |-)?\\b" + part.getKey() + "\\b";
      digits =
          digits
              .replaceAll("(?<=\\d)(?: turns?)? and an? ?" + name, " 1/" + part.getValue())
              .replaceAll("(?<![\\d/])(\\d)" + name, "$1/" + part.getValue())
              .replaceAll("(?:\\ban? )?\\b" + part.getKey() + "\\b", "1/" + part.getValue());
    }
    return new RiderText(
        digits.replaceAll("(?<=\\d/\\d)(?:th|ths|rd|rds)\\b", "").replaceAll(JOINED_FRACTION, " "));
  }

  /**
   * The readings of a number whose point or comma may be one of thousands, as in 1.500 m and 7,500:
   * first as thousands, then as a decimal; empty for all other texts.
   */
  List<NumberText> asThousandsOrNot() {
    Matcher grouped = GROUPED.matcher(text);
    return grouped.matches()
        ? List.of(
            reading(grouped.group(1) + grouped.group(2), grouped.group(3)),
            reading(grouped.group(1) + "." + grouped.group(2), grouped.group(3)))
        : List.of();
  }

  private static NumberText reading(String number, String rest) {
    return new NumberText(Double.parseDouble(number), rest.strip());
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
