package dev.jetting.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Shows that an error has words in each language. */
public final class EachLanguage {

  private static final Wording GERMAN = Wording.of(Locale.GERMAN);
  private static final Wording ITALIAN = Wording.of(Locale.ITALIAN);

  private static final Pattern ENGLISH =
      Pattern.compile("(?<![\\w\"])[a-z]{2,} [a-z]{2,} [a-z]{2,}");

  /** Arguments that list fields, columns or ids, samples, and what the JSON parser says. */
  private static final Set<String> IDENTIFIERS =
      Set.of("fields", "columns", "names", "sample", "detail", "allowed");

  private EachLanguage() {}

  /**
   * Checks an error.
   *
   * @param error the error
   * @return its line in English, German and Italian
   */
  public static String of(IllegalArgumentException error) {
    Message message = Message.of(error);
    assertThat(Wording.english().text(message)).isEqualTo(error.getMessage());
    Set<String> english = new TreeSet<>();
    inEnglish(message, english);
    assertThat(english).as(error.getMessage()).isEmpty();
    return error.getMessage() + "\n  " + GERMAN.text(message) + "\n  " + ITALIAN.text(message);
  }

  private static void inEnglish(Message message, Set<String> found) {
    if (message.key().isEmpty()) {
      found.add(message.template());
    }
    message
        .arguments()
        .forEach(
            (name, value) -> {
              if (value instanceof Argument.Words words) {
                inEnglish(words.message(), found);
              } else if (!IDENTIFIERS.contains(name) && ENGLISH.matcher(value.text()).find()) {
                found.add(value.text());
              }
            });
  }
}
