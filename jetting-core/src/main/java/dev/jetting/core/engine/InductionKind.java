package dev.jetting.core.engine;

/** What opens and closes the inlet of the crankcase. */
public enum InductionKind {
  /** The skirt of the piston: open as long before top dead centre as after it. */
  PISTON_PORT("piston port"),
  /** A disc or the web of the crankshaft, which may close early. */
  ROTARY_VALVE("rotary valve"),
  /** Reeds that the flow itself shuts. */
  REED_VALVE("reed valve"),
  /** Not stated: the model takes a middle of the three. */
  UNKNOWN("unknown inlet");

  private final String text;

  InductionKind(String text) {
    this.text = text;
  }

  /** {@return the kind in plain words} */
  @Override
  public String toString() {
    return text;
  }
}
