package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.text.Message;
import java.util.List;

/**
 * What every page has: its language, and the way to the others.
 *
 * @param words the language
 * @param languages the way to each language
 */
public record Page(Words words, List<Language> languages) {

  /**
   * The way to a language.
   *
   * @param tag its tag
   * @param name its name in itself
   * @param address where a press leads
   * @param current whether it is that of the page
   */
  public record Language(String tag, String name, String address, boolean current) {}

  /**
   * Prints words of the interface.
   *
   * @param key their key
   * @param values name and value of each argument, one after the other
   * @return the text
   */
  public String say(String key, Object... values) {
    return words.say(key, values);
  }

  /**
   * Prints the words of a choice.
   *
   * @param area what is chosen
   * @param choice its name in a form
   * @return the text
   */
  public String choice(String area, String choice) {
    return say(Choices.key(area, choice));
  }

  /**
   * Prints how much a finding matters.
   *
   * @param severity its name in style sheets
   * @return a word
   */
  public String severity(String severity) {
    return words.say(Message.of("rulebook.severity." + severity));
  }

  /** {@return the language's tag} */
  public String tag() {
    return words.tag();
  }
}
