package dev.jetting.rules.risk;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;

/** Checks of limits, each in its range and each against the others. */
final class Margins {

  private Margins() {}

  /** Refuses a coefficient with a unit, or one that does not lie strictly between two numbers. */
  static void check(String what, Coefficient c, int above, int below) {
    Checks.unit(() -> Sentence.name(what), c.unit(), "1");
    if (!(c.value() > above && c.value() < below)) {
      throw InvalidValueException.of(
          Sentence.name(what),
          c.toString(),
          Sentence.of("error.above-and-below").with("low", above).with("high", below));
    }
  }

  /** Refuses limits between which no mixture lies. */
  static void inOrder(Lambda rich, Lambda lean, ThrottleOpening throttle) {
    if (!rich.isLessThan(lean)) {
      throw InvalidValueException.worded(
          Sentence.of("error.limits-crossed")
              .with("throttle", throttle)
              .with("rich", rich)
              .with("lean", lean),
          Sentence.of("error.limits-crossed.allowed"));
    }
  }

  /** Refuses limits by which a closed throttle is too lean on the overrun or too rich. */
  static void inOrderOnTheOverrun(MixtureLimits limits, MixtureNeed need) {
    Lambda rich = limits.rich(ThrottleOpening.CLOSED, need);
    Lambda overrun = limits.overrun(need);
    if (!rich.isLessThan(overrun)) {
      throw InvalidValueException.worded(
          Sentence.of("error.overrun-crossed").with("rich", rich).with("overrun", overrun),
          Sentence.of("error.overrun-crossed.allowed"));
    }
  }
}
