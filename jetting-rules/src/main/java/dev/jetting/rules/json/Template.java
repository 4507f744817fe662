package dev.jetting.rules.json;

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
      throw new IllegalArgumentException(
          count + " placeholders: allowed at most " + MOST_PLACEHOLDERS);
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
    throw new IllegalArgumentException(
        "placeholder "
            + Quote.quoted(placeholder)
            + Nearest.hint(name, NAMES)
            + ": allowed {"
            + String.join("}, {", NAMES)
            + "} and no other braces");
  }
}
