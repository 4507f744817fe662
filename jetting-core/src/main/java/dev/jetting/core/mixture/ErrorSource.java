package dev.jetting.core.mixture;

/**
 * Where a real engine and carburettor may differ from the model. Each belongs to the engine and the
 * carburettor, not to the jets in it.
 */
public enum ErrorSource {
  /** The pilot circuit passes more fuel than the model says. */
  PILOT,
  /** The ring between needle and needle jet passes more than the model says. */
  NEEDLE,
  /** The main jet passes more than the model says. */
  MAIN,
  /** The engine draws more air than the model derives from the signal at the carburettor. */
  AIR
}
