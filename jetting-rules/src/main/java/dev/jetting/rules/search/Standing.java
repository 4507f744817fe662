package dev.jetting.rules.search;

/**
 * How a setting stands against the limits at every assessed throttle opening, as in the standard
 * rulebook. Too lean is a danger on every day of the riding; too rich is a nuisance on the day of
 * the sheet.
 */
public enum Standing {
  /**
   * The lean risk is within what the search may spend, the overrun is not too lean, and the mixture
   * nowhere too rich.
   */
  RIGHT,
  /** Safe as {@link #RIGHT}, but somewhere richer than the rich limit. */
  TOO_RICH,
  /**
   * The lean risk is somewhere above what the search may spend of the accepted risk ({@link
   * SettingSearch#spending}), or the overrun is too lean.
   */
  TOO_LEAN
}
