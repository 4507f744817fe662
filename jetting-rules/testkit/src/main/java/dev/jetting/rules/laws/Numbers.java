package dev.jetting.rules.laws;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Numbers in the texts of this package. The library's own are not exported to the class path, where
 * a test kit mostly stands.
 */
final class Numbers {

  /** A decimal of at most 15 digits is what a person wrote to get a double. */
  private static final int SAFE_DIGITS = 15;

  private static final int MOST_DIGITS = 17;

  private Numbers() {}

  static String text(double number) {
    return Double.isFinite(number) ? shortest(number) : "that is not finite";
  }

  /** The shortest decimal that reads back to the same double, on each JDK the same. */
  static String shortest(double number) {
    BigDecimal decimal = decimal(number);
    int exponent = decimal.precision() - decimal.scale() - 1;
    if (exponent >= -7 && exponent <= SAFE_DIGITS) {
      return decimal.toPlainString();
    }
    BigDecimal mantissa = decimal.movePointLeft(exponent).stripTrailingZeros();
    return mantissa.toPlainString() + "e" + exponent;
  }

  /** The sum of two numbers as they were written: 0.45 and 0.02 are 0.47. */
  static double sum(double a, double b) {
    if (!Double.isFinite(a + b)) {
      return a + b;
    }
    BigDecimal x = decimal(a);
    BigDecimal y = decimal(b);
    boolean written = x.precision() <= SAFE_DIGITS && y.precision() <= SAFE_DIGITS;
    return written ? x.add(y).doubleValue() : a + b;
  }

  /** Whether two numbers differ by no more than rounding, by the greater of them. */
  static boolean alike(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.max(1e-9, Math.max(Math.abs(a), Math.abs(b)));
  }

  private static BigDecimal decimal(double number) {
    if (number == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal exact = new BigDecimal(number);
    for (int digits = 1; digits < MOST_DIGITS; digits++) {
      BigDecimal candidate = exact.round(new MathContext(digits));
      if (candidate.doubleValue() == number) {
        return candidate.stripTrailingZeros();
      }
    }
    return exact.round(new MathContext(MOST_DIGITS)).stripTrailingZeros();
  }
}
