package dev.jetting.examples.shopcounter.words;

import dev.jetting.rules.text.Message;
import java.io.Serial;

/** Something that a visitor gave and that cannot be used, in words of any language. */
public final class Refusal extends IllegalArgumentException {

  @Serial private static final long serialVersionUID = 1L;

  private final transient Message words;

  /**
   * Creates a refusal.
   *
   * @param words what was given and what is allowed
   */
  public Refusal(Message words) {
    super(Words.english().say(words));
    this.words = words;
  }

  /** {@return what was given and what is allowed} */
  public Message words() {
    return words;
  }
}
