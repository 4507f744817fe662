package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import java.util.Map;
import java.util.Objects;

/** A number that a standard rule uses, which a rulebook can replace by its name. */
record Limit(String name, Coefficient number) {

  static Name named(String name) {
    return new Name(name);
  }

  /** A name without its number. */
  record Name(String name) {
    Limit assumed(double value, String unit, String why) {
      return new Limit(name, Coefficient.assumed(value, unit, why));
    }
  }

  /** The number that stands among a rule's limits. */
  double in(Map<String, Coefficient> limits) {
    return Objects.requireNonNull(limits.get(name), name).value();
  }
}
