package dev.jetting.rules.json;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.regex.Pattern;

/** A text of a rule file that may show values of a finding. */
record Template(String text) {

  /** A placeholder may represent a long text, so a few make a short text long. */
  static final int MOST_PLACEHOLDERS = 10;

  static final List<String> NAMES = List.of("limit", "measure", "measured", "throttle");

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}|[{}]");

  /**
   * Checks the placeholders.
   *
   * @throws IllegalArgumentException if one is unknown, a brace stands alone, or there are too many
   */
  Template {
    long count = PLACEHOLDER.matcher(text).results().count();
    if (count > MOST_PLACEHOLDERS) {
      throw InvalidValueException.worded(
          Sentence.of("error.placeholders.count").with("count", count),
          Sentence.of("error.at-most").with("most", MOST_PLACEHOLDERS));
    }
    PLACEHOLDER
        .matcher(text)
        .results()
        .filter(match -> match.group(1) == null || !NAMES.contains(match.group(1)))
        .findFirst()
        .ifPresent(match -> refuse(match.group()));
  }

  private static void refuse(String placeholder) {
    String name = placeholder.replaceAll("[{}]", "");
    String value = Quote.quoted(placeholder);
    Sentence problem =
        Nearest.meant(name, NAMES)
            .map(
                near ->
                    Sentence.of("error.name.placeholder.near")
                        .with("value", value)
                        .with("near", '"' + near + '"'))
            .orElseGet(() -> Sentence.value(Sentence.of("error.name.placeholder"), value));
    throw InvalidValueException.worded(
        problem, Sentence.of("error.braces").with("names", "{" + String.join("}, {", NAMES) + "}"));
  }
}
