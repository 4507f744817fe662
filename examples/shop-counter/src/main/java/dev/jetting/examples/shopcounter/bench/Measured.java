package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Refusal;
import dev.jetting.examples.shopcounter.words.Typed;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.TuningSession;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A machine with a measured value in place of a typical one.
 *
 * @param machine the machine as it is known now
 * @param text what was measured, for people
 */
public record Measured(Machine machine, Message text) {

  /**
   * States a value.
   *
   * @param machine the machine
   * @param key the value's name in a form
   * @param number the number in the value's unit, as typed
   * @param words the language in which it was typed
   * @return the machine as it is known now; its session begins anew, for what was computed from the
   *     old readings rested on the old value
   * @throws IllegalArgumentException if there is no such value, or the number is none or out of
   *     range
   */
  public static Measured of(
      Machine machine, @Nullable String key, @Nullable String number, Words words) {
    MachineValue value = value(machine, Objects.requireNonNullElse(key, ""));
    double measured = number(number, words);
    Setup setup = value.change(machine.sheet().setup(), measured);
    Set<MachineValue> typical = EnumSet.copyOf(machine.typical());
    typical.remove(value);
    SetupSheet sheet = machine.sheet().withSetup(setup).withTypical(typical);
    return new Measured(
        new Machine(
            machine.id(), machine.name(), sheet, TuningSession.beginning(sheet), machine.changed()),
        Words.message(
            "known.log",
            "what",
            Guess.name(value),
            "value",
            Argument.exact(measured, value.unit())));
  }

  private static MachineValue value(Machine machine, String key) {
    return machine.typical().stream()
        .filter(value -> value.name().toLowerCase(Locale.ROOT).equals(key))
        .findFirst()
        .orElseThrow(() -> new Refusal(Words.message("known.nothing-open", "value", key)));
  }

  private static double number(@Nullable String typed, Words words) {
    String text = Objects.requireNonNullElse(typed, "").strip();
    try {
      return Double.parseDouble(Typed.plain(words, text));
    } catch (NumberFormatException e) {
      throw new Refusal(Words.message("known.no-number", "value", text));
    }
  }
}
