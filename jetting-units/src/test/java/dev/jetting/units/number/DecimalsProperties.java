package dev.jetting.units.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class DecimalsProperties {

  /** Doubles of every magnitude, and powers of two, below which doubles lie closer. */
  @Provide
  Arbitrary<Double> finite() {
    return Arbitraries.oneOf(
        Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite),
        Arbitraries.integers().between(-1074, 1023).map(e -> Math.scalb(1.0, e)),
        Arbitraries.doubles().between(-1e6, 1e6).ofScale(4),
        Arbitraries.of(0.0, Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE, 1e15, 1e16));
  }

  @Property(tries = 5000)
  void shortest_readsBack(@ForAll("finite") double value) {
    assertThat(Double.parseDouble(Decimals.shortest(value))).isEqualTo(value + 0.0);
  }

  /** Of the decimals with one digit fewer, the two around the value are the only candidates. */
  @Property(tries = 5000)
  void shortest_hasNoShorterDecimal(@ForAll("finite") double value) {
    Assume.that(value != 0);
    int digits = new BigDecimal(Decimals.shortest(value)).stripTrailingZeros().precision();
    Assume.that(digits > 1);
    MathContext down = new MathContext(digits - 1, RoundingMode.DOWN);
    MathContext up = new MathContext(digits - 1, RoundingMode.UP);

    assertThat(new BigDecimal(value).round(down).doubleValue()).isNotEqualTo(value);
    assertThat(new BigDecimal(value).round(up).doubleValue()).isNotEqualTo(value);
  }

  /** Java prints the shortest decimal since JDK 19, but never fewer than two digits. */
  @Property(tries = 5000)
  void shortest_isWhatNewerJdksPrint(@ForAll("finite") double value) {
    BigDecimal printed = new BigDecimal(Decimals.shortest(value)).stripTrailingZeros();
    BigDecimal byJdk = new BigDecimal(Double.toString(value)).stripTrailingZeros();

    if (Runtime.version().feature() < 19) {
      assertThat(printed.precision()).isLessThanOrEqualTo(byJdk.precision());
    } else if (printed.precision() > 1) {
      assertThat(printed).isEqualByComparingTo(byJdk);
    }
  }

  @Property(tries = 5000)
  void asWritten_findsEveryDecimalOfFifteenDigits(
      @ForAll @LongRange(min = -999_999_999_999_999L, max = 999_999_999_999_999L) long digits,
      @ForAll @IntRange(min = 0, max = 22) int places) {
    BigDecimal decimal = BigDecimal.valueOf(digits, places);
    Assume.that(digits == 0 || Math.abs(decimal.doubleValue()) > 1.5e-8);

    assertThat(Decimals.asWritten(decimal.doubleValue())).isEqualByComparingTo(decimal);
  }

  @Property(tries = 5000)
  void asWritten_readsAsTheValueAndIsShort(@ForAll("finite") double value) {
    BigDecimal written = Decimals.asWritten(value);
    Assume.that(written != null);

    assertThat(written.doubleValue()).isEqualTo(value + 0.0);
    assertThat(written.precision()).isLessThanOrEqualTo(Decimals.SAFE_DIGITS);
  }

  @Property
  void fixed_isWithinHalfAUnitOfTheLastDigit(
      @ForAll("finite") double value, @ForAll @IntRange(min = 0, max = 20) int decimals) {
    BigDecimal error =
        new BigDecimal(Decimals.fixed(value, decimals)).subtract(new BigDecimal(value));

    assertThat(error.abs()).isLessThanOrEqualTo(new BigDecimal("0.5").movePointLeft(decimals));
  }

  /** No more digits than asked for, no farther off than half of the last, and the same again. */
  @Property(tries = 5000)
  void rounded_isANearestDecimalOfSoManyDigits(
      @ForAll("finite") double value, @ForAll @IntRange(min = 1, max = 15) int digits) {
    Assume.that(value != 0 && Math.abs(value) < 1e300 && Math.abs(value) > 1e-300);

    double rounded = Decimals.rounded(value, digits);

    BigDecimal exact = new BigDecimal(value);
    BigDecimal half = BigDecimal.valueOf(5, digits - exact.precision() + exact.scale() + 1);
    BigDecimal slack = new BigDecimal(Math.ulp(value)); // a tie is one of the scaled number
    BigDecimal written = new BigDecimal(Decimals.shortest(rounded)).stripTrailingZeros();
    assertThat(written.precision()).isLessThanOrEqualTo(digits);
    assertThat(written.subtract(exact).abs()).isLessThanOrEqualTo(half.add(slack));
    assertThat(Decimals.rounded(rounded, digits)).isEqualTo(rounded);
  }

  /** Never more than the number, not a whole last digit less, and the same again. */
  @Property(tries = 5000)
  void roundedDown_isTheDecimalBelow_ofSoManyDigits(
      @ForAll("finite") double value, @ForAll @IntRange(min = 1, max = 14) int digits) {
    Assume.that(Math.abs(value) < 1e300 && Math.abs(value) > 1e-300);
    double number = Math.abs(value);

    double down = Decimals.roundedDown(number, digits);

    BigDecimal exact = new BigDecimal(number);
    BigDecimal last = BigDecimal.valueOf(1, digits - exact.precision() + exact.scale());
    BigDecimal slack = new BigDecimal(Math.ulp(number));
    BigDecimal written = new BigDecimal(Decimals.shortest(down)).stripTrailingZeros();
    assertThat(written.precision()).isLessThanOrEqualTo(digits);
    assertThat(down).isLessThanOrEqualTo(number);
    assertThat(exact.subtract(written)).isLessThan(last.add(slack));
    assertThat(Decimals.roundedDown(down, digits)).isEqualTo(down);
  }
}
