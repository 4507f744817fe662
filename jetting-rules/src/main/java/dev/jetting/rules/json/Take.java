package dev.jetting.rules.json;

/** What is taken of a measure that has a number at each throttle opening. */
enum Take {
  LOWEST,
  HIGHEST,
  /** The plain mean of the assessed openings, which are evenly spaced. */
  MEAN
}
