package dev.jetting.units;

import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;

/** Addition that keeps decimals decimal: 0.1 + 0.2 is 0.3. */
final class Sum {
  private Sum() {}

  static double of(double a, double b) {
    BigDecimal writtenA = Decimals.asWritten(a);
    BigDecimal writtenB = Decimals.asWritten(b);
    return writtenA == null || writtenB == null ? a + b : writtenA.add(writtenB).doubleValue();
  }
}
