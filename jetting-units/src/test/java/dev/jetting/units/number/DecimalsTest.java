package dev.jetting.units.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

  /** 2e23 and 2^-44 are numbers that Double.toString prints longer before JDK 19. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1, 1",
    "100, 100",
    "127.5, 127.5",
    "-0.25, -0.25",
    "0.1, 0.1",
    "1e-7, 0.0000001",
    "1.25e-8, 1.25e-8",
    "9.5e-324, 1e-323",
    "4.9e-324, 5e-324",
    "123456789012345.6, 123456789012345.6",
    "9007199254740993, 9007199254740992",
    "1e16, 1e16",
    "1.5e16, 1.5e16",
    "2e23, 2e23",
    "5.684341886080802e-14, 5.684341886080802e-14",
    "1.7976931348623157e308, 1.7976931348623157e308",
    "-2.2250738585072014e-308, -2.2250738585072014e-308"
  })
  void shortest_printsPlainWhereEverydayElseWithExponent(double value, String expected) {
    assertThat(Decimals.shortest(value)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "0.125, 2, 0.12",
    "0.375, 2, 0.38",
    "2.5, 0, 2",
    "3.5, 0, 4",
    "-0.001, 2, 0.00",
    "-0.0, 1, 0.0",
    "1e21, 1, 1000000000000000000000.0",
    "0.1, 20, 0.10000000000000000555"
  })
  void fixed_roundsTheExactNumberHalfToEven(double value, int decimals, String expected) {
    assertThat(Decimals.fixed(value, decimals)).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void shortest_fixed_refuseWhatIsNotFinite(double value) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Decimals.shortest(value))
        .withMessageContaining("finite");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Decimals.fixed(value, 1))
        .withMessageContaining("finite");
  }

  @Test
  void fixed_refusesNegativeDecimals() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Decimals.fixed(1, -1))
        .withMessage("decimals -1: allowed 0 or more");
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {1.0 / 3, 0.1 + 0.2, 2e15, 1e-9, Double.NaN, Double.POSITIVE_INFINITY, 4.9e-324})
  void asWritten_hasNoneForLongHugeTinyAndNonFiniteNumbers(double value) {
    assertThat(Decimals.asWritten(value)).isNull();
  }
}
