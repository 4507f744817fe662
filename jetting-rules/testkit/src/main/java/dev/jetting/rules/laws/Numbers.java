package dev.jetting.rules.laws;

import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;

/** Numbers in the texts of this package. */
final class Numbers {

  private Numbers() {}

  static String text(double number) {
    return Double.isFinite(number) ? Decimals.shortest(number) : "that is not finite";
  }

  /** The sum of two numbers as they were written: 0.45 and 0.02 are 0.47. */
  static double sum(double a, double b) {
    BigDecimal x = Decimals.asWritten(a);
    BigDecimal y = Decimals.asWritten(b);
    return x == null || y == null ? a + b : x.add(y).doubleValue();
  }

  /** Whether two numbers differ by no more than rounding, by the greater of them. */
  static boolean alike(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.max(1e-9, Math.max(Math.abs(a), Math.abs(b)));
  }
}
