package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
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
 * @param matters by how much λ may be off because of it, percent
 * @param where the opening where it matters most
 * @param measuring how a workshop measures it
 */
public record Guess(
    String key,
    String name,
    String unit,
    String taken,
    String matters,
    String where,
    String measuring) {

  private static final MathContext DIGITS = new MathContext(3);

  /**
   * Returns the guesses about a machine.
   *
   * @param machine the machine
   * @return the guesses, the one whose answer narrows most first
   */
  public static List<Guess> of(Machine machine) {
    return WrongGuess.of(machine.sheet().setup(), machine.typical()).stream()
        .map(Guess::of)
        .toList();
  }

  private static Guess of(WrongGuess guess) {
    MachineValue value = guess.value();
    String unit = value.unit().equals("1") ? "" : value.unit();
    ThrottleOpening most =
        guess.change().entrySet().stream()
            .max(Comparator.comparingDouble(e -> Math.abs(e.getValue())))
            .map(Map.Entry::getKey)
            .orElse(ThrottleOpening.FULL);
    return new Guess(
        value.name().toLowerCase(Locale.ROOT),
        value.toString(),
        unit,
        (new BigDecimal(guess.guess()).round(DIGITS).stripTrailingZeros().toPlainString()
                + " "
                + unit)
            .strip(),
        String.format(Locale.ROOT, "%.1f", 100 * Math.expm1(guess.most())),
        TradeStyle.throttle(most),
        value.measuring());
  }
}
