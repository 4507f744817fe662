package dev.jetting.core.typical;

import dev.jetting.core.parts.Coefficient;

/** What opens and closes the inlet of the crankcase. */
@SuppressWarnings("ImmutableEnumChecker") // records of immutable parts
public enum InductionKind {
  /** The skirt of the piston: open as long before top dead centre as after it. */
  PISTON_PORT("piston port", 1, "the blowback of the states of tune is meant for it"),
  /** A disc or the web of the crankshaft, which may close early. */
  ROTARY_VALVE("rotary valve", 0.6, "closes earlier than a piston port; not measured"),
  /** Reeds that the flow itself shuts. */
  REED_VALVE("reed valve", 0.4, "shuts on the way back, and leaks a little; not measured");

  private final String text;
  private final Coefficient blowbackFactor;

  InductionKind(String text, double blowbackFactor, String why) {
    this.text = text;
    this.blowbackFactor = Coefficient.assumed(blowbackFactor, "1", why);
  }

  /** {@return factor on the blowback of a piston port} */
  public Coefficient blowbackFactor() {
    return blowbackFactor;
  }

  /** {@return the kind in plain words} */
  @Override
  public String toString() {
    return text;
  }
}
