package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.rules.SetupSheet;
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
public record Measured(Machine machine, String text) {

  /**
   * States a value.
   *
   * @param machine the machine
   * @param key the value's name in a form
   * @param number the number in the value's unit
   * @return the machine as it is known now; its session begins anew, for what was computed from the
   *     old readings rested on the old value
   * @throws IllegalArgumentException if there is no such value, or the number is none or out of
   *     range
   */
  public static Measured of(Machine machine, @Nullable String key, @Nullable String number) {
    MachineValue value = value(machine, Objects.requireNonNullElse(key, ""));
    Setup setup = value.change(machine.sheet().setup(), number(number));
    Set<MachineValue> typical = EnumSet.copyOf(machine.typical());
    typical.remove(value);
    SetupSheet sheet = machine.sheet().withSetup(setup).withTypical(typical);
    String unit = value.unit().equals("1") ? "" : " " + value.unit();
    return new Measured(
        new Machine(
            machine.id(), machine.name(), sheet, TuningSession.beginning(sheet), machine.changed()),
        value + " " + number(number) + unit);
  }

  private static MachineValue value(Machine machine, String key) {
    return machine.typical().stream()
        .filter(value -> value.name().toLowerCase(Locale.ROOT).equals(key))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("Value \"" + key + "\": nothing of it is open."));
  }

  private static double number(@Nullable String text) {
    try {
      return Double.parseDouble(Objects.requireNonNullElse(text, "").strip());
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no number. Write it like 2.15, with a point.", e);
    }
  }
}
