package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

/** What is read at a glance is read as the careful reading reads it. */
class NumberTextProperties {

  /** A number, a gap and a unit, each as it should be or nearly so. */
  @Provide
  static Arbitrary<String> texts() {
    Arbitrary<String> numbers =
        Arbitraries.of(
            "0",
            "1",
            "18",
            "007",
            "99999999",
            "1.5",
            "0.25",
            "12.",
            ".",
            ".5",
            "-1",
            "+1",
            "\u22121",
            "1e3",
            "1.5E-2",
            "1e",
            "3/4",
            "1/0",
            "½",
            "2¾",
            "1..5",
            "\u0661",
            "1,5",
            "",
            "123456789.12345",
            "1234567890.12345",
            "123456789012345",
            "1234567890123456");
    Arbitrary<String> gaps =
        Arbitraries.of("", " ", " ", "  ", "\u00a0", "\u202f", "\u2003", "\t", "\n", "\u2028");
    Arbitrary<String> units =
        Arbitraries.of(
            "",
            "mm",
            "turns",
            "%",
            "°C",
            "cm³/min",
            "mm²/s",
            "mPa·s",
            "1/100 mm",
            ":1",
            "/2",
            "3/4",
            "3",
            ".5",
            "½",
            "e3",
            "-",
            "é",
            "\ud83d\ude00",
            "a b");
    return Combinators.combine(gaps, numbers, gaps, units, gaps)
        .as((before, number, gap, unit, after) -> before + number + gap + unit + after);
  }

  @Property(tries = 5000)
  void text_isReadAsCarefully(@ForAll("texts") String text) {
    for (boolean fractions : new boolean[] {false, true}) {
      assertThat(NumberText.at(text, fractions)).isEqualTo(NumberText.carefullyAt(text, fractions));
    }
  }

  /**
   * Up to twenty digits: some of the long ones would be rounded twice if they were read as plain.
   */
  @Property(tries = 5000)
  void decimal_isTheNearestDouble(
      @ForAll @BigRange(min = "0", max = "100000") @Scale(15) BigDecimal decimal) {
    String text = decimal.toPlainString();

    assertThat(NumberText.at(text + " mm", true))
        .isEqualTo(new NumberText(Double.parseDouble(text), "mm"));
  }
}
