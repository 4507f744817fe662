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
 *     each argument
 * @param arguments the values that the words show, by name
 */
record MessageForm(
    Optional<String> key, String template, Optional<Map<String, Argument>> arguments) {

  static MessageForm of(Message message) {
    return new MessageForm(
        Optional.of(message.key()).filter(key -> !key.isEmpty()),
        message.template(),
        Optional.of(message.arguments()).filter(arguments -> !arguments.isEmpty()));
  }

  Message message() {
    return new Message(key.orElse(""), template, arguments.orElse(Map.of()));
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
