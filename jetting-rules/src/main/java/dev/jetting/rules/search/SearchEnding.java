package dev.jetting.rules.search;

/** How a run ended. */
public enum SearchEnding {
  /** Everything was looked at. */
  COMPLETE,
  /** {@link Run#cancelled} answered true: the result is of what was looked at until then. */
  CANCELLED,
  /**
   * The caller's thread was interrupted: the result is of what was looked at until then. Its
   * interrupt status is still set.
   */
  INTERRUPTED
}
