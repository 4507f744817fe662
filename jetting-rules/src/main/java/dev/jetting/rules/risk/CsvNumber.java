package dev.jetting.rules.risk;

import java.math.BigDecimal;
import java.math.MathContext;

/** A number in a line of comma-separated values: five digits, no exponent. */
final class CsvNumber {

  private static final MathContext DIGITS = new MathContext(5);

  private CsvNumber() {}

  static String text(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
