package dev.jetting.rules;

/** How much a finding matters, rising. */
public enum Severity {
  /** Worth knowing; no harm comes of it. */
  NOTE,
  /** The engine will not run well, or the setting has no room left. */
  WARNING,
  /** The engine, and with it the rider, may come to harm. */
  DANGER
}
