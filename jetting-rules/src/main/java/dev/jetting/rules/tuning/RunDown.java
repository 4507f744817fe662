package dev.jetting.rules.tuning;

/** How an engine behaves on the overrun, with the throttle shut after a long pull. */
public enum RunDown {
  /** Runs down quietly and falls to its idle. */
  CLEAN,
  /** Pops and hangs: the pilot is lean. */
  POPS,
  /** Dies after a long run down: the pilot is rich, or the idle is too low. */
  DIES
}
