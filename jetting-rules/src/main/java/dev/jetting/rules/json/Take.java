package dev.jetting.rules.json;

/** What is taken of a measure that has a number at each throttle opening. */
enum Take {
  LOWEST,
  HIGHEST,
  /** The mean over the throttle range: each assessed opening counts by its share of it. */
  MEAN
}
