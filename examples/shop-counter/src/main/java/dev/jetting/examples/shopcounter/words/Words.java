package dev.jetting.examples.shopcounter.words;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * The interface in one language: its own words from a file beside this class, those of the library
 * from the library. Nothing depends on the machine's locale.
 */
public final class Words {

  /** The tags of the languages, the one for visitors of all others first. */
  public static final List<String> LANGUAGES = List.of("en", "de", "it");

  /** Keeps the keys of this program apart from the library's. */
  private static final String AREA = "counter.";

  private static final String ONE = ".one";
  private static final String OTHER = ".other";

  private static final Map<String, Map<String, String>> FILES =
      LANGUAGES.stream()
          .collect(Collectors.toUnmodifiableMap(UnaryOperator.identity(), Words::read));

  private static final Map<String, Words> ALL =
      LANGUAGES.stream()
          .collect(Collectors.toUnmodifiableMap(UnaryOperator.identity(), Words::new));

  private final Wording wording;

  private Words(String tag) {
    Map<String, String> own = new LinkedHashMap<>();
    file(tag).forEach((key, text) -> own.put(AREA + key, text));
    this.wording = Wording.of(Locale.forLanguageTag(tag)).with(own);
  }

  private static Map<String, String> file(String tag) {
    return Objects.requireNonNull(FILES.get(tag), tag);
  }

  private static Map<String, String> read(String tag) {
    String name = "counter_" + tag + ".properties";
    String path = "/dev/jetting/examples/shopcounter/words/" + name;
    Properties words = new Properties();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(Words.class.getResourceAsStream(path), path), UTF_8)) {
      words.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words.stringPropertyNames().stream()
        .collect(Collectors.toUnmodifiableMap(UnaryOperator.identity(), words::getProperty));
  }

  /** {@return the words in English} */
  public static Words english() {
    return of("en");
  }

  /**
   * Returns the words of a language.
   *
   * @param tag one of {@link #LANGUAGES}
   * @return its words
   * @throws NullPointerException if there is no such language
   */
  public static Words of(String tag) {
    return Objects.requireNonNull(ALL.get(tag), tag);
  }

  /**
   * Creates a message of this program's words.
   *
   * @param key its key, as it stands in the files
   * @param values name and value of each argument, one after the other; a text is printed as it is,
   *     a whole number is a count, messages and arguments are in the language of the reader
   * @return the message
   * @throws IllegalArgumentException if there is no such key, or a value is of another type
   */
  public static Message message(String key, Object... values) {
    Map<String, Argument> arguments = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i += 2) {
      arguments.put((String) values[i], argument(values[i + 1]));
    }
    Map<String, String> english = file("en");
    String variant = english.containsKey(key + OTHER) ? key + plural(arguments) : key;
    String template = english.get(variant);
    if (template == null) {
      throw new IllegalArgumentException("no words for \"" + key + "\"");
    }
    return new Message(AREA + variant, template, arguments);
  }

  private static String plural(Map<String, Argument> arguments) {
    return Argument.count(1).equals(arguments.get(Message.COUNT)) ? ONE : OTHER;
  }

  private static Argument argument(Object value) {
    if (value instanceof Argument argument) {
      return argument;
    }
    if (value instanceof Message message) {
      return Argument.words(message);
    }
    if (value instanceof Integer || value instanceof Long) {
      return Argument.count(((Number) value).longValue());
    }
    if (value instanceof String text) {
      return Argument.name(text);
    }
    throw new IllegalArgumentException("value of a message: " + value.getClass());
  }

  /**
   * Returns the end of the key that belongs to a constant.
   *
   * @param constant the constant
   * @return its name in small letters, joined by hyphens
   */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Joins messages, two at a time.
   *
   * @param key the key of words with the values {@code first} and {@code next}
   * @param parts the messages, one at least
   * @return one message
   */
  public static Message joined(String key, List<Message> parts) {
    return parts.stream()
        .reduce((first, next) -> message(key, "first", first, "next", next))
        .orElseThrow(() -> new IllegalArgumentException("nothing to join"));
  }

  /**
   * Puts sentences one after the other.
   *
   * @param sentences the sentences
   * @return one message
   */
  public static Message sentences(Message... sentences) {
    return Message.joined(List.of(sentences));
  }

  /**
   * Returns the language's tag.
   *
   * @return one of {@link #LANGUAGES}
   */
  public String tag() {
    return wording.locale().toLanguageTag();
  }

  /** {@return the library's words in this language, with those of this program} */
  public Wording wording() {
    return wording;
  }

  /**
   * Prints words of this program.
   *
   * @param key their key
   * @param values name and value of each argument, one after the other
   * @return the text
   */
  public String say(String key, Object... values) {
    return say(message(key, values));
  }

  /**
   * Prints a message.
   *
   * @param message the message
   * @return the text
   */
  public String say(Message message) {
    return wording.text(message);
  }

  /**
   * Prints a value.
   *
   * @param value the value
   * @return the text
   */
  public String say(Argument value) {
    return wording.text(value);
  }

  /**
   * Prints an error of this program or of the library.
   *
   * @param error the error
   * @return its sentence
   */
  public String say(IllegalArgumentException error) {
    return say(words(error));
  }

  /**
   * Returns the words of an error of this program or of the library.
   *
   * @param error the error
   * @return its sentence
   */
  public static Message words(IllegalArgumentException error) {
    return error instanceof Refusal refusal ? refusal.words() : Message.of(error);
  }

  /**
   * Prints a message with a capital letter first.
   *
   * @param message the message
   * @return the text as a value of other messages
   */
  public Argument capital(Message message) {
    String text = say(message);
    return Argument.name(text.substring(0, 1).toUpperCase(wording.locale()) + text.substring(1));
  }

  /**
   * Prints a message in each language.
   *
   * @param message the message
   * @return its texts by the tag of the language
   */
  public static Map<String, String> everywhere(Message message) {
    Map<String, String> texts = new LinkedHashMap<>();
    LANGUAGES.forEach(tag -> texts.put(tag, of(tag).say(message)));
    return texts;
  }
}
