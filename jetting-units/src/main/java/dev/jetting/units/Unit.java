package dev.jetting.units;

import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A unit that a quantity can be given in: canonical = (given + offset) × numerator / denominator,
 * or numerator / (denominator × given) for an inverse unit such as miles per gallon.
 *
 * <p>A number of up to fifteen digits is converted as a decimal and rounded once; a longer one in
 * double arithmetic, which needs no allocation.
 */
final class Unit {
  private final List<String> symbols;
  private final BigDecimal offset;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final boolean inverse;

  /** Numbers in it are the canonical ones. */
  private final boolean canonical;

  private final double offsetAsDouble;
  private final double numeratorAsDouble;
  private final double denominatorAsDouble;

  private Unit(
      List<String> symbols,
      BigDecimal offset,
      BigDecimal numerator,
      BigDecimal denominator,
      boolean inverse) {
    this.symbols = symbols;
    this.offset = offset;
    this.numerator = numerator;
    this.denominator = denominator;
    this.inverse = inverse;
    this.canonical =
        !inverse
            && offset.signum() == 0
            && numerator.compareTo(BigDecimal.ONE) == 0
            && denominator.compareTo(BigDecimal.ONE) == 0;
    this.offsetAsDouble = offset.doubleValue();
    this.numeratorAsDouble = numerator.doubleValue();
    this.denominatorAsDouble = denominator.doubleValue();
  }

  /**
   * A unit that is the canonical one unless the methods below change it; print the first symbol.
   */
  static Unit of(String... symbols) {
    return new Unit(List.of(symbols), BigDecimal.ZERO, BigDecimal.ONE, BigDecimal.ONE, false);
  }

  Unit times(String factor) {
    return new Unit(symbols, offset, new BigDecimal(factor), denominator, inverse);
  }

  Unit over(String divisor) {
    return new Unit(symbols, offset, numerator, new BigDecimal(divisor), inverse);
  }

  Unit plus(String newOffset) {
    return new Unit(symbols, new BigDecimal(newOffset), numerator, denominator, inverse);
  }

  Unit inverted() {
    return new Unit(symbols, offset, numerator, denominator, true);
  }

  String symbol() {
    return symbols.get(0);
  }

  List<String> symbols() {
    return symbols;
  }

  double toCanonical(double given) {
    if (canonical) {
      return given;
    }
    BigDecimal written = Decimals.asWritten(given);
    if (inverse) {
      return reciprocal(given, written);
    }
    return written == null
        ? (given + offsetAsDouble) * numeratorAsDouble / denominatorAsDouble
        : divide(written.add(offset).multiply(numerator), denominator);
  }

  double fromCanonical(double number) {
    if (canonical) {
      return number;
    }
    BigDecimal written = Decimals.asWritten(number);
    if (inverse) {
      return reciprocal(number, written);
    }
    return written == null
        ? number * denominatorAsDouble / numeratorAsDouble - offsetAsDouble
        : divide(written.multiply(denominator).subtract(offset.multiply(numerator)), numerator);
  }

  private double reciprocal(double value, @Nullable BigDecimal written) {
    return written == null || written.signum() == 0
        ? numeratorAsDouble / (denominatorAsDouble * value)
        : divide(numerator, denominator.multiply(written));
  }

  private static double divide(BigDecimal dividend, BigDecimal divisor) {
    return divisor.compareTo(BigDecimal.ONE) == 0
        ? dividend.doubleValue()
        : dividend.divide(divisor, MathContext.DECIMAL128).doubleValue();
  }
}
