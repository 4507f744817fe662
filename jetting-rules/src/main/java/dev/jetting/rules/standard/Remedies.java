package dev.jetting.rules.standard;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.FloatLevel;

/** Values of messages that several rules show. */
final class Remedies {

  private Remedies() {}

  /** The word "leaner" or "richer". */
  static Argument side(boolean leaner) {
    return Argument.word(leaner ? "side.leaner" : "side.richer");
  }

  static Argument level(FloatLevel level) {
    return Argument.exact(level.millimetres(), "mm");
  }

  /** What is missing where parts do not go together, as the check says that refused them. */
  static Message impossible(String key, IllegalArgumentException fault) {
    return Message.of(key).with("problem", Argument.words(Message.of(fault)));
  }
}
