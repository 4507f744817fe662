package dev.jetting.rules.json;

/**
 * The numbers between two ends.
 *
 * @param low the lower end; may be infinite
 * @param lowOpen whether the lower end itself is left out
 * @param high the upper end; may be infinite
 * @param highOpen whether the upper end itself is left out
 */
record Interval(double low, boolean lowOpen, double high, boolean highOpen) {

  static final Interval ANY = from(Double.NEGATIVE_INFINITY);

  static Interval from(double low) {
    return new Interval(low, false, Double.POSITIVE_INFINITY, false);
  }

  static Interval above(double low) {
    return new Interval(low, true, Double.POSITIVE_INFINITY, false);
  }

  static Interval between(double low, double high) {
    return new Interval(low, false, high, false);
  }

  /** This interval with room for the rounding of a mean. */
  Interval widened() {
    return between(low - slack(low), high + slack(high));
  }

  private static double slack(double end) {
    return Double.isInfinite(end) ? 0 : 1e-9 * Math.max(1, Math.abs(end));
  }

  /** The numbers of this interval that are at most a number, or less than it. */
  Interval atMost(double most, boolean open) {
    return most < high || (most == high && open) ? new Interval(low, lowOpen, most, open) : this;
  }

  /** The numbers of this interval that are at least a number, or more than it. */
  Interval atLeast(double least, boolean open) {
    return least > low || (least == low && open) ? new Interval(least, open, high, highOpen) : this;
  }

  Interval times(double factor) {
    return new Interval(low * factor, lowOpen, high * factor, highOpen);
  }

  boolean isEmpty() {
    return low > high || (low == high && (lowOpen || highOpen));
  }

  /** Whether no number of this interval is at most, or less than, one of another. */
  boolean liesAbove(Interval other, boolean strictly) {
    return low > other.high || (low == other.high && (strictly || lowOpen || other.highOpen));
  }
}
