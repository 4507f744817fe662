package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A value that is typical and not stated, and what a better answer would narrow.
 *
 * @param key its name in a form
 * @param name the value, for people
 * @param unit its unit; empty for a plain number
 * @param taken the value that was taken, with its unit
 * @param matters by how much λ may be off because of it, and where most, in a sentence
 * @param measuring how a workshop measures it
 */
public record Guess(
    String key, String name, String unit, String taken, String matters, String measuring) {

  private static final MathContext DIGITS = new MathContext(3);

  /**
   * Returns the guesses about a machine.
   *
   * @param machine the machine
   * @param words the language
   * @return the guesses, the one whose answer narrows most first
   */
  public static List<Guess> of(Machine machine, Words words) {
    return WrongGuess.of(machine.sheet().setup(), machine.typical()).stream()
        .map(guess -> of(guess, words))
        .toList();
  }

  static Message name(MachineValue value) {
    return Message.of("machine." + Words.key(value));
  }

  private static Guess of(WrongGuess guess, Words words) {
    MachineValue value = guess.value();
    ThrottleOpening most =
        guess.change().entrySet().stream()
            .max(Comparator.comparingDouble(e -> Math.abs(e.getValue())))
            .map(Map.Entry::getKey)
            .orElse(ThrottleOpening.FULL);
    return new Guess(
        value.name().toLowerCase(Locale.ROOT),
        words.say(name(value)),
        value.unit().equals("1") ? "" : words.say(Message.named("unit", value.unit())),
        words.say(
            Argument.exact(
                new BigDecimal(guess.guess()).round(DIGITS).doubleValue(), value.unit())),
        words.say(
            "known.matters",
            "percent",
            Argument.fixed(100 * Math.expm1(guess.most()), "%", 1),
            "throttle",
            Argument.throttle(most)),
        words.say("measuring." + Words.key(value)));
  }
}
