package dev.jetting.core.typical;

import dev.jetting.core.parts.Coefficient;

/** What carries the heat of an engine away: the hotter it runs, the richer it must be. */
@SuppressWarnings("ImmutableEnumChecker") // records of immutable parts
public enum Cooling {
  /** The wind of the ride: least on a slow climb. */
  AIR(0.98, "a slow climb has no wind; not measured"),
  /** A fan on the crankshaft. */
  FAN(1, "the curves of the mixture needed are meant for it"),
  /** Water or another liquid. */
  LIQUID(1.02, "an even, lower temperature; not measured");

  private final Coefficient needFactor;

  Cooling(double needFactor, String why) {
    this.needFactor = Coefficient.assumed(needFactor, "1", why);
  }

  /** {@return factor on the λ that a fan-cooled engine needs} */
  public Coefficient needFactor() {
    return needFactor;
  }
}
