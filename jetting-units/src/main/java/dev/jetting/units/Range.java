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

  String describeIn(Unit unit) {
    double a = unit.fromCanonical(low);
    double b = unit.fromCanonical(high);
    return (lowExcluded ? "above " : "from ")
        + Text.number(Math.min(a, b))
        + (lowExcluded ? " up to " : " to ")
        + Text.withUnit(Text.number(Math.max(a, b)), unit.symbol());
  }
}
