package dev.jetting.rules.text;

import dev.jetting.units.Sentence;
import java.util.List;

/**
 * Sentences of errors as messages. Their values stay as a person types them: a reader takes a
 * decimal point and the unit's own symbol in every language.
 */
final class ErrorMessages {

  private ErrorMessages() {}

  static Message of(Sentence sentence) {
    if (sentence.key().isEmpty()) {
      return Message.plain(sentence.template());
    }
    Message message = Message.of(sentence.key(), sentence.template());
    for (var argument : sentence.arguments().entrySet()) {
      message = message.with(argument.getKey(), argument(argument.getValue()));
    }
    return message;
  }

  private static Argument argument(Object value) {
    if (value instanceof Sentence sentence) {
      return sentence.key().isEmpty()
          ? Argument.name(sentence.template())
          : Argument.words(of(sentence));
    }
    return value instanceof List<?> list
        ? Argument.items(list.stream().map(ErrorMessages::argument).toList())
        : Argument.name(Sentence.shown(value));
  }
}
