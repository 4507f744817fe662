package dev.jetting.units;

/**
 * The canonical numbers that a quantity may have: up to {@code high} inclusive, from {@code low}
 * or, if that is excluded, above it.
 */
record Range(double low, boolean lowExcluded, double high) {

  static Range fromTo(double low, double high) {
    return new Range(low, false, high);
  }

  static Range aboveUpTo(double low, double high) {
    return new Range(low, true, high);
  }

  /** False for NaN and the infinities too. */
  boolean contains(double value) {
    return (lowExcluded ? value > low : value >= low) && value <= high;
  }

  Sentence describeIn(Unit unit) {
    double a = unit.fromCanonical(low);
    double b = unit.fromCanonical(high);
    return Sentence.of(lowExcluded ? "error.above-up-to" : "error.from-to")
        .with("low", Math.min(a, b))
        .with("high", new Sentence.Amount(Math.max(a, b), unit.symbol()));
  }
}
