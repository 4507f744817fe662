package dev.jetting.units;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What an error says, as data: a key and typed values. It prints as its English line. Other
 * languages have words for the same key.
 *
 * <pre>{@code
 * Sentence.of("error.from-to").with("low", 1).with("high", new Sentence.Amount(10, "mm"))
 * }</pre>
 *
 * <p>A value is a text, a whole number ({@link Long}), a decimal ({@link Double}), an {@link
 * Amount}, a quantity, another sentence, or a list of these. Texts are safe to show on one line.
 */
public final class Sentence {

  /** What begins each key. */
  private static final String AREA = "error.";

  private static final Pattern SLOT = Pattern.compile("\\{(\\w+)}");
  private static final Pattern NO_LETTER = Pattern.compile("[^\\p{Ll}0-9]+");
  private static final int LONGEST = 800;
  private static final int LONGEST_UNIT = 60;

  /** The English words, read when the first error needs them. */
  private static final class English {
    private static final Map<String, String> TEMPLATES = read();

    private static Map<String, String> read() {
      String name = "errors_en.properties";
      Properties words = new Properties();
      try (Reader in =
          new InputStreamReader(
              Objects.requireNonNull(Sentence.class.getResourceAsStream(name), name),
              StandardCharsets.UTF_8)) {
        words.load(in);
      } catch (IOException e) {
        throw new UncheckedIOException(e); // a resource of the library's own jar
      }
      SortedMap<String, String> templates = new TreeMap<>();
      words.stringPropertyNames().forEach(key -> templates.put(key, words.getProperty(key)));
      return Collections.unmodifiableSortedMap(templates);
    }
  }

  /**
   * A number with its unit.
   *
   * @param value the number
   * @param unit the unit's symbol, shown on one line; empty for none
   */
  public record Amount(double value, String unit) {

    /**
     * Checks for null.
     *
     * @param value the number
     * @param unit the unit's symbol; empty for none
     */
    public Amount {
      unit = OneLine.shown(unit, LONGEST_UNIT);
    }

    /** {@return the number and the unit, such as {@code 1.25 mm}} */
    @Override
    public String toString() {
      return Text.withUnit(Text.number(value), unit);
    }
  }

  private final String key;
  private final String template;
  private final Map<String, Object> arguments;

  private Sentence(String key, String template, Map<String, Object> arguments) {
    this.key = key;
    this.template = template;
    this.arguments = arguments;
  }

  /**
   * Returns the sentence of a key.
   *
   * @param key the key, such as {@code error.from-to}
   * @return the sentence without values
   * @throws IllegalArgumentException if the library has no such key
   */
  public static Sentence of(String key) {
    String template = English.TEMPLATES.get(Objects.requireNonNull(key, "key"));
    if (template == null) {
      throw new IllegalArgumentException("key of an error: " + key);
    }
    return new Sentence(key, template, Map.of());
  }

  /**
   * Returns words that are the same in every language.
   *
   * @param text the words
   * @return the sentence, with an empty key
   */
  public static Sentence plain(String text) {
    return new Sentence("", OneLine.shown(Objects.requireNonNull(text, "text"), LONGEST), Map.of());
  }

  /**
   * Returns a name as a sentence: that of the key {@code error.name.} and the name in lower case
   * with hyphens.
   *
   * @param name the name, such as {@code jet bore}
   * @return the sentence; a plain one where the library has no such key
   */
  public static Sentence name(String name) {
    Objects.requireNonNull(name, "name");
    String key = AREA + "name." + NO_LETTER.matcher(name).replaceAll("-");
    return English.TEMPLATES.containsKey(key) ? of(key) : plain(name);
  }

  /**
   * Returns what is wrong and what is allowed.
   *
   * @param problem what is wrong
   * @param allowed what is allowed
   * @return both, of the key {@code error.allowed}
   */
  public static Sentence refused(Sentence problem, Sentence allowed) {
    return of("error.allowed").with("problem", problem).with("allowed", allowed);
  }

  /**
   * Returns a name and its value.
   *
   * @param what what the value is of
   * @param value a value of the kinds that the class lists
   * @return both, of the key {@code error.value}
   */
  public static Sentence value(Sentence what, Object value) {
    return of("error.value").with("what", what).with("value", value);
  }

  /**
   * Returns values with "or" between them.
   *
   * @param values the values, at least one
   * @return the sentence
   * @throws IllegalArgumentException if there is no value
   */
  public static Sentence or(List<?> values) {
    return switch (values.size()) {
      case 0 ->
          throw new IllegalArgumentException(
              "values of a sentence with \"or\": none, allowed at least one");
      case 1 -> values.get(0) instanceof Sentence one ? one : plain(String.valueOf(values.get(0)));
      case 3 ->
          of("error.or.three")
              .with("first", values.get(0))
              .with("second", values.get(1))
              .with("third", values.get(2));
      default ->
          of("error.or")
              .with("first", values.get(0))
              .with("second", or(values.subList(1, values.size())));
    };
  }

  /**
   * Returns values with commas between, and "or" before the last.
   *
   * @param values the values, at least one
   * @return the sentence
   * @throws IllegalArgumentException if there is no value
   */
  public static Sentence oneOf(List<?> values) {
    int last = values.size() - 1;
    return last < 2
        ? or(values)
        : of("error.or")
            .with("first", List.copyOf(values.subList(0, last)))
            .with("second", values.get(last));
  }

  /**
   * Returns a copy with a value.
   *
   * @param name where the sentence shows it
   * @param value a value of the kinds that the class lists; of any other class its text is taken
   * @return the copy
   * @throws IllegalArgumentException if the words have no place of that name
   */
  public Sentence with(String name, Object value) {
    Objects.requireNonNull(name, "name");
    if (key.isEmpty() || !template.contains("{" + name + "}")) {
      throw new IllegalArgumentException(
          "value " + name + " of the sentence \"" + template + "\": allowed " + places());
    }
    SortedMap<String, Object> all = new TreeMap<>(arguments);
    all.put(name, typed(Objects.requireNonNull(value, name)));
    return new Sentence(key, template, Collections.unmodifiableSortedMap(all));
  }

  private String places() {
    List<String> names =
        key.isEmpty()
            ? List.of()
            : SLOT.matcher(template).results().map(slot -> slot.group(1)).distinct().toList();
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  private static Object typed(Object value) {
    if (value instanceof Integer number) {
      return number.longValue();
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Sentence::typed).toList();
    }
    boolean kept =
        value instanceof Sentence
            || value instanceof Quantity
            || value instanceof Amount
            || value instanceof Long
            || value instanceof Double;
    return kept ? value : OneLine.shown(value.toString(), LONGEST);
  }

  /**
   * Returns a value that is a sentence.
   *
   * @param name where the sentence shows it
   * @return the sentence; empty where the value is none, or has another name
   */
  public Optional<Sentence> part(String name) {
    return Optional.ofNullable(arguments.get(name))
        .filter(Sentence.class::isInstance)
        .map(Sentence.class::cast);
  }

  /** {@return the key; empty for words that are the same in every language} */
  public String key() {
    return key;
  }

  /** {@return the English words, with {@code {name}} for each value} */
  public String template() {
    return template;
  }

  /** {@return the values by name; cannot be changed} */
  public Map<String, Object> arguments() {
    return arguments;
  }

  /**
   * Returns the English words of every key.
   *
   * @return templates by key, with {@code {name}} for each value; cannot be changed
   */
  public static Map<String, String> templates() {
    return English.TEMPLATES;
  }

  /** {@return the line in English} */
  @Override
  public String toString() {
    return key.isEmpty() ? template : SLOT.matcher(template).replaceAll(this::filled);
  }

  /** A slot without a value stays, to be seen. */
  private String filled(MatchResult slot) {
    Object value = arguments.get(slot.group(1));
    return Matcher.quoteReplacement(value == null ? slot.group() : shown(value));
  }

  /**
   * Returns a value as a person types it: with a decimal point and the unit's own symbol.
   *
   * @param value a value of a sentence
   * @return its text; those of a list with commas between
   */
  public static String shown(Object value) {
    if (value instanceof Double number) {
      return Text.number(number);
    }
    Objects.requireNonNull(value, "value");
    return value instanceof List<?> list
        ? list.stream().map(Sentence::shown).collect(Collectors.joining(", "))
        : String.valueOf(value);
  }

  @Override
  @SuppressWarnings("exports") // callers compile without the annotation
  public boolean equals(@Nullable Object other) {
    return other instanceof Sentence that
        && that.key.equals(key)
        && that.template.equals(template)
        && that.arguments.equals(arguments);
  }

  @Override
  public int hashCode() {
    return Objects.hash(key, template, arguments);
  }
}
