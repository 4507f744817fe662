package dev.jetting.rules.text;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Maps;
import com.google.common.collect.Sets;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.OneLine;
import dev.jetting.units.Sentence;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of one language: the library's own, with those that a shop adds or replaces. It prints
 * messages. The caller names the language; that of the machine plays no part.
 *
 * <pre>{@code
 * Wording german = Wording.of(Locale.GERMAN);
 * Wording ours = german.with(Map.of("rule.lean-anywhere.title", "Irgendwo zu mager"));
 * String page = ReportText.of(report, ours);
 * }</pre>
 *
 * <p>The library has English, German and Italian. A language of a shop's own takes what it lacks
 * from English. Numbers are written with the language's decimal mark, digits always as 0 to 9.
 */
public final class Wording {

  /** What says what a verdict rests on: no other words may leave out a part of it. */
  private static final Pattern RESTS_ON =
      Pattern.compile("verdict\\.|versions|notice\\.|rulebook\\.|waiver|page\\.rule$");

  private static final int LONGEST_SHOWN = 100;

  private static final Wording ENGLISH = new Wording(Locale.ENGLISH, ImmutableMap.of());

  private final Locale locale;
  private final ImmutableMap<String, String> own;
  private final Map<String, String> library;
  private final Printer printer = new Printer(this);

  private Wording(Locale locale, ImmutableMap<String, String> own) {
    this.locale = locale;
    this.own = own;
    this.library = Bundles.of(locale.getLanguage());
  }

  /** {@return the library's English words, which are the default everywhere} */
  public static Wording english() {
    return ENGLISH;
  }

  /**
   * Returns the library's words in a language.
   *
   * @param locale the language; its country plays no part
   * @return its words
   * @throws IllegalArgumentException if the library does not have the language
   */
  public static Wording of(Locale locale) {
    if (Bundles.of(locale.getLanguage()).isEmpty()) {
      throw new IllegalArgumentException(
          "language \""
              + locale.getLanguage()
              + "\": allowed "
              + Bundles.LANGUAGES.stream().collect(Collectors.joining(", "))
              + "; or words of your own by of(locale, words)");
    }
    return new Wording(locale, ImmutableMap.of());
  }

  /**
   * Creates the words of a language that the library does not have, or of another version of one
   * that it has.
   *
   * @param locale the language
   * @param words the words by key; those of keys that are not there are the library's, in this
   *     language or else in English
   * @return the wording
   * @throws IllegalArgumentException if a text is not one line of at most 10 000 visible
   *     characters, is blank for a library key, or shows other arguments than that key has
   */
  public static Wording of(Locale locale, Map<String, String> words) {
    return new Wording(Objects.requireNonNull(locale, "locale"), ImmutableMap.of()).with(words);
  }

  /** {@return the languages that the library has} */
  public static Set<Locale> languages() {
    return Bundles.LANGUAGES.stream()
        .map(Locale::forLanguageTag)
        .collect(ImmutableSet.toImmutableSet());
  }

  /**
   * This wording with words added, or in place of those that it has.
   *
   * @param words the words by key, with {@code {name}} for each argument
   * @return the changed wording
   * @throws IllegalArgumentException if a text is not one line of at most 10 000 visible
   *     characters, is blank for a library key, or shows other arguments than that key has
   */
  public Wording with(Map<String, String> words) {
    words.forEach(Wording::check);
    return new Wording(
        locale,
        ImmutableMap.<String, String>builder().putAll(own).putAll(words).buildKeepingLast());
  }

  /**
   * This wording with words added, or in place of those that it has.
   *
   * @param words a bundle of texts by key; the locale that it was looked up by is the caller's
   * @return the changed wording
   * @throws IllegalArgumentException if a text is not one line of at most 10 000 visible
   *     characters, is blank for a library key, or shows other arguments than that key has
   * @throws ClassCastException if a value of the bundle is no text
   */
  public Wording with(ResourceBundle words) {
    return with(Maps.toMap(words.keySet(), words::getString));
  }

  private static void check(String key, String words) {
    String what = "text of " + OneLine.shown(key, LONGEST_SHOWN);
    Checks.lineOrNothing("", () -> Sentence.plain(what), words, Message.LONGEST);
    String english = Bundles.of(Bundles.ENGLISH).get(key);
    if (english == null) {
      return;
    }
    if (words.isBlank() && !english.isBlank()) {
      throw new IllegalArgumentException(what + " is blank: allowed any text");
    }
    Set<String> allowed = Message.names(english);
    for (String name : Sets.difference(Message.names(words), allowed)) {
      throw new IllegalArgumentException(
          what + " that shows {" + OneLine.shown(name, LONGEST_SHOWN) + "}: allowed " + allowed);
    }
    if (RESTS_ON.matcher(key).lookingAt()) {
      for (String name : Sets.difference(allowed, Message.names(words))) {
        throw new IllegalArgumentException(
            what + " without {" + name + "}: allowed texts that show all of " + allowed);
      }
    }
  }

  /** {@return the language} */
  public Locale locale() {
    return locale;
  }

  /**
   * Prints a message.
   *
   * @param message the message
   * @return its text in this language; in the words of its author where this wording has none of
   *     its key
   */
  public String text(Message message) {
    return Message.filled(
        template(message),
        name -> Optional.ofNullable(message.arguments().get(name)).map(this::text));
  }

  /**
   * Prints an error that this library threw at invalid input.
   *
   * @param error the error
   * @return its line in this language; in English where the library has no other words for it
   */
  public String text(IllegalArgumentException error) {
    return text(Message.of(error));
  }

  /**
   * Prints a value.
   *
   * @param argument the value
   * @return its text in this language
   */
  public String text(Argument argument) {
    return printer.text(argument);
  }

  /**
   * Returns whether this wording has words for a message and for all words in it, so that none of
   * another language are printed.
   *
   * @param message the message
   * @return true for every message of the library in its languages, and for plain names
   */
  public boolean has(Message message) {
    return (message.key().isEmpty() || ownOrLibrary(message).isPresent())
        && message.arguments().values().stream().allMatch(this::has);
  }

  private boolean has(Argument argument) {
    if (argument instanceof Argument.Words words) {
      return has(words.message());
    }
    return !(argument instanceof Argument.Items items)
        || items.items().stream().allMatch(this::has);
  }

  private String template(Message message) {
    return message.key().isEmpty()
        ? message.template()
        : ownOrLibrary(message).orElse(message.template());
  }

  /**
   * A translation belongs to the English sentence beside it. A message of another sentence, such as
   * one of a later version of this library, keeps its own.
   */
  private Optional<String> ownOrLibrary(Message message) {
    String key = Bundles.variant(message.key(), message.arguments());
    String shops = own.get(key);
    boolean same = message.template().equals(Bundles.of(Bundles.ENGLISH).get(key));
    return shops != null
        ? Optional.of(shops)
        : same ? Optional.ofNullable(library.get(key)) : Optional.empty();
  }

  /** The words of a key of the library that shows no argument but numbers. */
  String words(String key) {
    return find(key).orElseGet(() -> Bundles.english(key, Map.of()));
  }

  Optional<String> find(String key) {
    return Optional.ofNullable(own.getOrDefault(key, library.get(key)));
  }

  /** {@return the language} */
  @Override
  public String toString() {
    return locale.toLanguageTag();
  }
}
