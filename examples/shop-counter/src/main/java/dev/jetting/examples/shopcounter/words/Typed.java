package dev.jetting.examples.shopcounter.words;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What a visitor typed, as the library's reader of riders' input takes it: with a decimal point and
 * in English.
 */
public final class Typed {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern THOUSANDS = Pattern.compile("\\d[.,]\\d{3}(?!\\d)");
  private static final int LITERAL_IN_ANY_CASE =
      Pattern.LITERAL | Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

  private static final List<String> PHRASES =
      List.of("typed.from-top", "typed.from-bottom", "typed.turns", "typed.turn");

  private Typed() {}

  /**
   * Reads a field in the language of the page.
   *
   * @param words the language of the page
   * @param text what was typed
   * @return the same as the library reads it; an English text as it is
   */
  public static String plain(Words words, String text) {
    if (words.equals(Words.english())) {
      return text;
    }
    String plain = DECIMAL_COMMA.matcher(text).replaceAll(".");
    for (String phrase : PHRASES) {
      plain =
          Pattern.compile(words.say(phrase), LITERAL_IN_ANY_CASE)
              .matcher(plain)
              .replaceAll(Words.english().say(phrase));
    }
    return plain;
  }

  /**
   * Reads a field that may hold thousands, such as a height or a speed.
   *
   * @param words the language of the page
   * @param text what was typed
   * @return the same as the library reads it
   * @throws Refusal if it has a point or comma before three digits, which has two meanings
   */
  public static String large(Words words, String text) {
    if (THOUSANDS.matcher(text).find()) {
      throw new Refusal(Words.message("new.thousands", "value", text));
    }
    return plain(words, text);
  }
}
