package dev.jetting.rules.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Javadoc of a record says of its components, read from its source: so a schema says it
 * too, and it is written once.
 */
final class RecordDocs {

  private static final List<String> SOURCES =
      List.of("src/main/java", "../jetting-core/src/main/java", "../jetting-units/src/main/java");

  private static final Pattern COMPONENT =
      Pattern.compile("@param (\\w+) (.*?)(?=\\s@(?:param|return|throws)\\b|\\z)", Pattern.DOTALL);

  private static final Pattern TAG = Pattern.compile("\\{@(?:code|link) (?:[\\w.]*#)?([^}]*)}");

  private RecordDocs() {}

  /** The words for each component that has any, without markup. */
  static Map<String, String> of(Class<?> type) {
    Map<String, String> words = new HashMap<>();
    comment(type)
        .map(COMPONENT::matcher)
        .ifPresent(
            found -> {
              while (found.find()) {
                words.put(found.group(1), TAG.matcher(found.group(2).strip()).replaceAll("$1"));
              }
            });
    return words;
  }

  /** The comment before the record, on one line. */
  private static Optional<String> comment(Class<?> type) {
    return source(type)
        .flatMap(
            source -> {
              Matcher header =
                  Pattern.compile("\\brecord " + type.getSimpleName() + "[<(]").matcher(source);
              if (!header.find()) {
                return Optional.empty();
              }
              int end = source.lastIndexOf("*/", header.start());
              int start = source.lastIndexOf("/**", end);
              return start < 0
                  ? Optional.empty()
                  : Optional.of(
                      source
                          .substring(start + 3, end)
                          .replaceAll("\\s*\\n\\s*\\*", "")
                          .replaceAll("\\s+", " "));
            });
  }

  private static Optional<String> source(Class<?> type) {
    Class<?> outermost = type;
    while (outermost.getEnclosingClass() != null) {
      outermost = outermost.getEnclosingClass();
    }
    String file = outermost.getName().replace('.', '/') + ".java";
    return SOURCES.stream()
        .map(folder -> Path.of(folder, file))
        .filter(Files::exists)
        .findFirst()
        .map(RecordDocs::read);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
