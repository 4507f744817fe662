package dev.jetting.units.number;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * Decimal notation of {@code double} values that is the same on every JDK ({@link
 * Double#toString(double)} is not: it changed in JDK 19) and in every locale.
 */
public final class Decimals {
  /** Every decimal of up to this many significant digits survives the way to a double and back. */
  public static final int SAFE_DIGITS = 15;

  private static final double LOG10_OF_2 = 0.3010299956639812;

  private static final double FIRST_16_DIGIT_INTEGER = 1e15;

  /** Powers of ten that a double holds exactly. */
  private static final double[] POWERS_OF_TEN = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22
  };

  private static final int SMALLEST_PLAIN_EXPONENT = -7;
  private static final int LARGEST_PLAIN_EXPONENT = 15;

  private Decimals() {}

  /**
   * Returns the shortest decimal that reads back to the same double; of several equally short ones
   * the closest. Plain notation from 1e-7 to below 1e16 ({@code 117.5}, {@code 0.001}), otherwise
   * an exponent ({@code 5e-324}). Zero of either sign is {@code 0}.
   *
   * @param value any finite number
   * @return its shortest decimal
   * @throws IllegalArgumentException if {@code value} is NaN or infinite
   */
  public static String shortest(double value) {
    requireFinite(value);
    BigDecimal decimal = shortestDecimal(value);
    int exponent = decimal.precision() - decimal.scale() - 1;
    if (exponent >= SMALLEST_PLAIN_EXPONENT && exponent <= LARGEST_PLAIN_EXPONENT) {
      return decimal.toPlainString();
    }
    BigDecimal mantissa = decimal.movePointLeft(exponent).stripTrailingZeros();
    return mantissa.toPlainString() + "e" + exponent;
  }

  /**
   * Returns the number rounded to a fixed count of decimals, half to even on the exact binary
   * value; never {@code -0}.
   *
   * @param value any finite number
   * @param decimals digits after the point, 0 or more
   * @return the rounded number in plain notation
   * @throws IllegalArgumentException if {@code value} is NaN or infinite or {@code decimals} is
   *     negative
   */
  public static String fixed(double value, int decimals) {
    requireFinite(value);
    if (decimals < 0) {
      throw new IllegalArgumentException("decimals " + decimals + ": allowed 0 or more");
    }
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }

  /**
   * Returns the decimal of at most {@value #SAFE_DIGITS} significant digits that reads as this
   * double, if there is one. There is at most one; it is what a person wrote to get this double.
   * The result of a calculation usually has none.
   *
   * @param value any number
   * @return that decimal without trailing zeros; {@code null} if there is none, and for most
   *     numbers from 1e15 up and below 1.5e-8, where nobody writes a jet size
   */
  public static @Nullable BigDecimal asWritten(double value) {
    if (value == 0) {
      return BigDecimal.ZERO;
    }
    // The digits put in front of the point make an integer from 1e14 to below 2e15: it and the
    // power of ten are exact, so the division rounds once, as reading the decimal does.
    int places = SAFE_DIGITS - 1 - (int) Math.floor(Math.getExponent(value) * LOG10_OF_2);
    if (places < 0 || places >= POWERS_OF_TEN.length) {
      return null;
    }
    double digits = Math.rint(value * POWERS_OF_TEN[places]);
    boolean tooLong = Math.abs(digits) >= FIRST_16_DIGIT_INTEGER && digits % 10 != 0;
    if (tooLong || digits / POWERS_OF_TEN[places] != value) {
      return null;
    }
    return withoutTrailingZeros((long) digits, places);
  }

  /** As {@link BigDecimal#stripTrailingZeros}, which takes the zeros away one by one. */
  private static BigDecimal withoutTrailingZeros(long digits, int places) {
    long left = digits;
    int scale = places;
    for (int zeros = 8; zeros > 0; zeros /= 2) {
      long power = (long) POWERS_OF_TEN[zeros];
      if (left % power == 0) {
        left /= power;
        scale -= zeros;
      }
    }
    return BigDecimal.valueOf(left, scale);
  }

  /**
   * Returns a power of ten that a double holds exactly.
   *
   * @param exponent from 0 to 22
   * @return ten to that power
   * @throws IndexOutOfBoundsException if the exponent is out of range
   */
  public static double powerOfTen(int exponent) {
    return POWERS_OF_TEN[exponent];
  }

  /**
   * Returns the number rounded to a count of significant digits. A tie of the scaled number goes to
   * the even digit.
   *
   * @param value any finite number
   * @param digits how many, 1 to 15
   * @return the double nearest to the rounded decimal
   * @throws IllegalArgumentException if {@code value} is NaN or infinite
   */
  public static double rounded(double value, int digits) {
    requireFinite(value);
    if (value == 0) {
      return value;
    }
    int places = digits - 1 - (int) Math.floor(StrictMath.log10(Math.abs(value)));
    if (Math.abs(places) >= POWERS_OF_TEN.length) {
      return new BigDecimal(value)
          .round(new MathContext(digits, RoundingMode.HALF_EVEN))
          .doubleValue();
    }
    // Powers of ten are exact, and so is the whole number between: the last step alone rounds.
    return places >= 0
        ? Math.rint(value * POWERS_OF_TEN[places]) / POWERS_OF_TEN[places]
        : Math.rint(value / POWERS_OF_TEN[-places]) * POWERS_OF_TEN[-places];
  }

  /**
   * Returns the number rounded towards zero to a count of significant digits.
   *
   * @param value any finite number from 0 up
   * @param digits how many, 1 to 15
   * @return a double that reads as such a decimal, and is no more than the number
   * @throws IllegalArgumentException if {@code value} is NaN, infinite or below 0
   */
  public static double roundedDown(double value, int digits) {
    requireFinite(value);
    if (value < 0) {
      throw new IllegalArgumentException("value " + value + ": allowed 0 or more");
    }
    if (value == 0) {
      return value;
    }
    int places = digits - 1 - (int) Math.floor(StrictMath.log10(value));
    if (places < 0 || places >= POWERS_OF_TEN.length) {
      BigDecimal exact = new BigDecimal(value);
      int last = exact.precision() - exact.scale() - digits;
      BigDecimal nearest = exact.setScale(-last, RoundingMode.HALF_EVEN);
      double read = nearest.doubleValue();
      return read > value
          ? nearest.subtract(BigDecimal.ONE.scaleByPowerOfTen(last)).doubleValue()
          : read;
    }
    // The nearest, which is the number itself where that is such a decimal, or else the one below.
    double whole = Math.rint(value * POWERS_OF_TEN[places]);
    double down = whole / POWERS_OF_TEN[places];
    return down > value ? (whole - 1) / POWERS_OF_TEN[places] : down;
  }

  private static BigDecimal shortestDecimal(double value) {
    BigDecimal written = asWritten(value);
    if (written != null) {
      return written;
    }
    BigDecimal exact = new BigDecimal(value);
    for (int digits = 1; digits < 17; digits++) {
      // Below a power of two the doubles lie closer: there the decimal next above may read back
      // where the closest one does not.
      for (RoundingMode rounding : new RoundingMode[] {RoundingMode.HALF_EVEN, RoundingMode.UP}) {
        BigDecimal candidate = exact.round(new MathContext(digits, rounding));
        if (candidate.doubleValue() == value) {
          return candidate.stripTrailingZeros();
        }
      }
    }
    return exact.round(new MathContext(17, RoundingMode.HALF_EVEN)).stripTrailingZeros();
  }

  private static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value " + value + ": allowed any finite number");
    }
  }
}
