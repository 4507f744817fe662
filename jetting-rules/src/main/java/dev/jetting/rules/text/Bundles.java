package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Supplier;

/** The library's own words: a file for each area and language beside this class. */
final class Bundles {

  static final String ENGLISH = "en";

  static final List<String> LANGUAGES = List.of(ENGLISH, "de", "it");

  static final List<String> AREAS =
      List.of(
          "quantities",
          "rules",
          "remedies",
          "report",
          "session",
          "kits",
          "comparisons",
          "errors",
          "measures",
          "remarks");

  private static final String ONE = ".one";
  private static final String OTHER = ".other";

  private static final ImmutableMap<String, Supplier<ImmutableSortedMap<String, String>>> BUNDLES =
      Maps.toMap(LANGUAGES, language -> Suppliers.memoize(() -> read(language)));

  private Bundles() {}

  /** All words of a language by key; empty for a language that the library does not have. */
  static Map<String, String> of(String language) {
    Supplier<ImmutableSortedMap<String, String>> bundle = BUNDLES.get(language);
    return bundle == null ? ImmutableSortedMap.of() : bundle.get();
  }

  private static ImmutableSortedMap<String, String> read(String language) {
    ImmutableSortedMap.Builder<String, String> all = ImmutableSortedMap.naturalOrder();
    for (String area : AREAS) {
      if (area.equals("errors") && language.equals(ENGLISH)) {
        all.putAll(Sentence.templates()); // every check writes its line in English
        continue;
      }
      Properties words = new Properties();
      String name = area + "_" + language + ".properties";
      try (Reader in =
          new InputStreamReader(
              Objects.requireNonNull(Bundles.class.getResourceAsStream(name), name), UTF_8)) {
        words.load(in);
      } catch (IOException e) {
        throw new UncheckedIOException(e); // a resource of the library's own jar
      }
      all.putAll(Maps.fromProperties(words));
    }
    return all.buildOrThrow();
  }

  /**
   * The English words of a key.
   *
   * @throws IllegalArgumentException if the library has no such key
   */
  static String english(String key, Map<String, Argument> arguments) {
    String words = of(ENGLISH).get(variant(key, arguments));
    if (words == null) {
      throw new IllegalArgumentException("key \"" + key + "\": allowed a key of this library");
    }
    return words;
  }

  static boolean hasPlural(String key) {
    return of(ENGLISH).containsKey(key + OTHER);
  }

  /** The key of the singular or the plural, where there are both. */
  static String variant(String key, Map<String, Argument> arguments) {
    if (!hasPlural(key)) {
      return key;
    }
    return key + (isOne(Optional.ofNullable(arguments.get(Message.COUNT))) ? ONE : OTHER);
  }

  private static boolean isOne(Optional<Argument> count) {
    return count
        .filter(argument -> argument instanceof Argument.Amount amount && amount.value() == 1)
        .isPresent();
  }
}
