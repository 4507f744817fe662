package dev.jetting.rules.json;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;
import java.util.Optional;

/**
 * A message in JSON: what a text was made from, so that it can be printed in another language.
 *
 * @param key the key by which a wording finds it; none for words that are never translated
 * @param template the words in English or in the language of their author, with {@code {name}} for
 *     each argument; left out where they are this library's own for the key
 * @param arguments the values that the words show, by name
 */
record MessageForm(
    Optional<String> key, Optional<String> template, Optional<Map<String, Argument>> arguments) {

  static MessageForm of(Message message) {
    return new MessageForm(
        Optional.of(message.key()).filter(key -> !key.isEmpty()),
        Optional.of(message.template()).filter(words -> !isOwn(message)),
        Optional.of(message.arguments()).filter(arguments -> !arguments.isEmpty()));
  }

  Message message() {
    Map<String, Argument> values = arguments.orElse(Map.of());
    return template
        .map(words -> new Message(key.orElse(""), words, values))
        .orElseGet(() -> own(key.orElse(""), values));
  }

  /** Whether the words are this library's own for the key. */
  private static boolean isOwn(Message message) {
    try {
      return !message.key().isEmpty()
          && template(message.key(), message.arguments()).equals(message.template());
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static Message own(String key, Map<String, Argument> values) {
    return new Message(key, template(key, values), values);
  }

  /** This library's words; singular or plural by the number of things, where there are both. */
  private static String template(String key, Map<String, Argument> values) {
    Message words = Message.of(key);
    Argument count = values.get(Message.COUNT);
    return (count == null ? words : words.with(Message.COUNT, count)).template();
  }

  /** What stands beside a text: nothing where the text is all there is. */
  static Optional<Message> keyed(Message message) {
    return Optional.of(message)
        .filter(words -> !words.key().isEmpty() || !words.arguments().isEmpty());
  }

  /** What stands beside the text of a value: nothing where it is a name. */
  static Optional<Argument> typed(Argument argument) {
    return Optional.of(argument).filter(value -> !(value instanceof Argument.Name));
  }
}
