package dev.jetting.rules.text;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.ImmutableSortedSet;
import dev.jetting.units.Refusal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A sentence for people, as data: a key, typed arguments, and its words in English or in the
 * language of its author. A {@link Wording} prints it in another language.
 *
 * <pre>{@code
 * Message message =
 *     Message.of("shop.reserve", "Only {left} left at {throttle}.")
 *         .with("left", Argument.share(0.04))
 *         .with("throttle", Argument.throttle(ThrottleOpening.FULL));
 * }</pre>
 *
 * @param key the key by which a wording finds it, lower-case words joined by dots and hyphens;
 *     empty for words that are never translated
 * @param template the words, with {@code {name}} for each argument
 * @param arguments the values that the words show, by name
 */
public record Message(String key, String template, Map<String, Argument> arguments) {

  /** The argument of the style {@link Argument.Style#COUNT} that chooses singular or plural. */
  public static final String COUNT = "count";

  private static final Pattern KEY = Pattern.compile("(?:[\\p{Ll}0-9]+(?:[.-][\\p{Ll}0-9]+)*)?");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z0-9]*)}");
  private static final Pattern NO_LETTER = Pattern.compile("[^\\p{Ll}0-9]+");
  private static final int LONGEST_KEY = 200;

  /** As long as a text in JSON may be. */
  static final int LONGEST = 10_000;

  /** Words in others, and a value that is shown again and again, could grow without end. */
  private static final int LONGEST_TEXT = 30_000;

  private static final int MOST_TIMES_ITS_PARTS = 10;
  private static final int DEEPEST = 10;

  /**
   * Copies the arguments, in the order of their names.
   *
   * @param key the key by which a wording finds it; empty for words that are never translated
   * @param template the words, with {@code {name}} for each argument
   * @param arguments the values that the words show, by name
   * @throws IllegalArgumentException if the key has another form, the template more than 10 000
   *     characters, or the text more than 30 000 characters or than ten times its template and
   *     values have; or if words stand in others more than 10 deep
   */
  public Message {
    if (key.length() > LONGEST_KEY || !KEY.matcher(key).matches()) {
      throw new IllegalArgumentException(
          "key of a message: allowed lower-case words joined by dots and hyphens");
    }
    if (template.length() > LONGEST) {
      throw new IllegalArgumentException(
          "message of " + template.length() + " characters: allowed at most " + LONGEST);
    }
    arguments = ImmutableSortedMap.copyOf(arguments);
    Extent extent = Extent.of(template, arguments);
    if (extent.depth() > DEEPEST) {
      throw new IllegalArgumentException(
          "words in others " + extent.depth() + " deep: allowed at most " + DEEPEST);
    }
    long most = Math.min(LONGEST_TEXT, MOST_TIMES_ITS_PARTS * extent.stored());
    if (extent.shown() > most) {
      throw new IllegalArgumentException(
          "message whose text may have "
              + extent.shown()
              + " characters: allowed at most "
              + most
              + ", of a template and values with "
              + extent.stored());
    }
  }

  /**
   * Creates a message of this library's own words.
   *
   * @param key its key
   * @return the message without arguments
   * @throws IllegalArgumentException if the library has no such key
   */
  public static Message of(String key) {
    return new Message(key, Bundles.english(key, Map.of()), Map.of());
  }

  /**
   * Creates a message of a caller's own words.
   *
   * @param key the key by which wordings find it in other languages
   * @param template the words, with {@code {name}} for each argument
   * @return the message without arguments
   * @throws IllegalArgumentException if the key is not lower-case words joined by dots and hyphens,
   *     or the template has more than 10 000 characters
   */
  public static Message of(String key, String template) {
    return new Message(key, template, Map.of());
  }

  /**
   * Creates a message of an error that this library threw at invalid input. Its values are as they
   * were given, and ranges as they are to be typed: with a decimal point in every language.
   *
   * @param error the error
   * @return its sentence; in its own words, without a key, where it is no {@link Refusal}
   */
  public static Message of(IllegalArgumentException error) {
    return ErrorMessages.of(Refusal.of(error));
  }

  /**
   * Creates a message that is the same in every language.
   *
   * @param text the words, with {@code {name}} for each argument
   * @return the message without arguments
   * @throws IllegalArgumentException if it has more than 10 000 characters
   */
  public static Message plain(String text) {
    return new Message("", Objects.requireNonNull(text, "text"), Map.of());
  }

  /**
   * Creates a message of a name that a language may translate, such as that of a unit or an
   * assumption.
   *
   * @param area what kind of name it is, which begins the key
   * @param name the name, whose letters and digits in lower case, joined by hyphens, end the key
   * @return the message; a plain one where the name makes no key
   * @throws IllegalArgumentException if the name has more than 10 000 characters
   */
  public static Message named(String area, String name) {
    String slug = NO_LETTER.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("-");
    String key = area + "." + slug;
    boolean good = key.length() <= LONGEST_KEY && KEY.matcher(key).matches();
    return new Message(good ? key : "", name, Map.of());
  }

  /**
   * Joins sentences.
   *
   * @param sentences the sentences; empty ones are left out
   * @return one message, a blank between the sentences; itself where there is one only
   */
  public static Message joined(List<Message> sentences) {
    List<Message> some = sentences.stream().filter(sentence -> !sentence.isEmpty()).toList();
    if (some.size() == 1) {
      return some.get(0);
    }
    StringBuilder template = new StringBuilder();
    ImmutableSortedMap.Builder<String, Argument> arguments = ImmutableSortedMap.naturalOrder();
    for (int i = 0; i < some.size(); i++) {
      String name = "part" + (i + 1);
      template.append(i == 0 ? "{" : " {").append(name).append('}');
      arguments.put(name, Argument.words(some.get(i)));
    }
    return new Message("", template.toString(), arguments.buildOrThrow());
  }

  /**
   * This message with an argument.
   *
   * @param name its name
   * @param value its value
   * @return the changed message
   */
  public Message with(String name, Argument value) {
    Objects.requireNonNull(value, name);
    Map<String, Argument> all =
        ImmutableSortedMap.<String, Argument>naturalOrder()
            .putAll(arguments)
            .put(name, value)
            .buildOrThrow();
    boolean chooses = name.equals(COUNT) && Bundles.hasPlural(key);
    return new Message(key, chooses ? Bundles.english(key, all) : template, all);
  }

  /** {@return whether it has no words} */
  public boolean isEmpty() {
    return template.isEmpty();
  }

  /** {@return this message in English, or in the language of its author} */
  public String text() {
    return Wording.english().text(this);
  }

  /** {@return the text} */
  @Override
  public String toString() {
    return text();
  }

  /** A template with the values put in; a placeholder without a value stays. */
  static String filled(String template, Function<String, Optional<String>> values) {
    return PLACEHOLDER
        .matcher(template)
        .replaceAll(
            match -> Matcher.quoteReplacement(values.apply(match.group(1)).orElse(match.group())));
  }

  /** The names that a template shows, each as often as it does. */
  static Stream<String> placeholders(String template) {
    return PLACEHOLDER.matcher(template).results().map(match -> match.group(1));
  }

  /** The names that a template shows, in their order. */
  static Set<String> names(String template) {
    return placeholders(template)
        .collect(ImmutableSortedSet.toImmutableSortedSet(Comparator.naturalOrder()));
  }
}
