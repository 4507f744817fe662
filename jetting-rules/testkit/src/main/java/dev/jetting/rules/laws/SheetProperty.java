package dev.jetting.rules.laws;

import dev.jetting.rules.SetupSheet;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A piece of a sheet that can be taken from another sheet.
 *
 * @param get the piece of a sheet
 * @param with a sheet with another piece
 * @param text the piece, for people
 */
record SheetProperty<T>(
    Function<SetupSheet, T> get,
    BiFunction<SetupSheet, T, SetupSheet> with,
    Function<T, String> text) {

  boolean differs(SetupSheet a, SetupSheet b) {
    return !get.apply(a).equals(get.apply(b));
  }

  /** The sheet with this piece of another; empty if it does not go together with the rest. */
  Optional<SetupSheet> taken(SetupSheet sheet, SetupSheet from) {
    try {
      return Optional.of(with.apply(sheet, get.apply(from)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  String difference(SetupSheet sheet, SetupSheet base) {
    return text.apply(get.apply(sheet)) + " instead of " + text.apply(get.apply(base));
  }
}
