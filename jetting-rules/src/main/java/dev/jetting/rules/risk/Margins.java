package dev.jetting.rules.risk;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;

/** Range checks of the coefficients in this package. */
final class Margins {

  private Margins() {}

  /** Refuses a coefficient that does not lie strictly between two numbers. */
  static void check(String what, Coefficient c, int above, int below) {
    if (!(c.value() > above && c.value() < below)) {
      throw InvalidValueException.of(
          Sentence.name(what),
          c.toString(),
          Sentence.of("error.above-and-below").with("low", above).with("high", below));
    }
  }
}
