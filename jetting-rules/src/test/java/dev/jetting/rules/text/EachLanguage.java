package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * Holds what a test class refuses against a page of all languages.
   *
   * @param golden the page
   * @param refusals lines of errors in each language
   * @throws IOException if the page cannot be read or written
   */
  public static void assertPage(Path golden, Set<String> refusals) throws IOException {
    String text = String.join("\n", refusals) + "\n";
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(golden, text, UTF_8);
    }
    assertThat(text).isEqualTo(Files.readString(golden, UTF_8));
  }

  /**
   * Returns the errors of a test class's tables, whose columns are two texts and the line of the
   * error. What the JSON parser says of a syntax error is left out.
   *
   * @param tests the test class
   * @param refusal makes the error of the first two columns
   * @return the lines in each language
   */
  public static Set<String> table(
      Class<?> tests, BiFunction<String, String, ? extends IllegalArgumentException> refusal) {
    Set<String> lines = new TreeSet<>();
    for (Method method : tests.getDeclaredMethods()) {
      CsvSource rows = method.getAnnotation(CsvSource.class);
      if (rows != null && method.getParameterCount() == 3) {
        Splitter.on('\n')
            .omitEmptyStrings()
            .splitToStream(rows.textBlock())
            .filter(row -> !row.contains("syntax error"))
            .map(row -> Splitter.on("=>").trimResults().splitToList(row))
            .forEach(row -> lines.add(of(refusal.apply(row.get(0), row.get(1).replace("''", "")))));
      }
    }
    return lines;
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
