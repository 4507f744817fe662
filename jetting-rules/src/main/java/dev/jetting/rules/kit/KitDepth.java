package dev.jetting.rules.kit;

/** How far a kit is looked into, rising in what is asked and in what it takes. */
public enum KitDepth {
  /**
   * Whether the parts are there and fit each other; a mixture is computed only where the float
   * valve is near its limit.
   */
  FIT,
  /** And whether each recommended setting stands up to the rulebook on every day and fuel. */
  SETTING,
  /** And for how many engines of each kind the kit has a setting that is right everywhere. */
  COVERAGE
}
