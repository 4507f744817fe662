package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ClipPositionProperties {

  private static final Pattern FORM =
      Pattern.compile("\\s*([0-9]{1,6}) of ([0-9]{1,6}) from (top|bottom)\\s*");

  /** The words of the form, each as it should be or nearly so. */
  @Provide
  static Arbitrary<String> texts() {
    Arbitrary<String> numbers =
        Arbitraries.of(
            "1", "2", "5", "07", "0", "50", "51", "123456", "1234567", "", "-1", "\u0662");
    Arbitrary<String> of = Arbitraries.of(" of ", " of ", " of ", "of", " of", " of 3 of ");
    Arbitrary<String> from =
        Arbitraries.of(
            " from top",
            " from bottom",
            " from top",
            " from bottom",
            "from top",
            " from  top",
            " from",
            " from top from bottom",
            " from Top",
            "");
    Arbitrary<String> gaps = Arbitraries.of("", "", " ", "\n", "x");
    return Combinators.combine(gaps, numbers, of, numbers, from, gaps)
        .as((before, n, o, m, f, after) -> before + n + o + m + f + after);
  }

  /** The form in the Javadoc, as an expression, decides which texts are read and as what. */
  @Property(tries = 10_000)
  void text_isReadIfItHasTheForm(@ForAll("texts") String text) {
    Matcher form = FORM.matcher(text);
    boolean reads = form.matches();
    int groove = reads ? Integer.parseInt(form.group(1)) : 0;
    int grooves = reads ? Integer.parseInt(form.group(2)) : 0;

    if (grooves >= 1 && grooves <= 50 && groove >= 1 && groove <= grooves) {
      assertThat(ClipPosition.parse(text).toString())
          .isEqualTo(groove + " of " + grooves + " from " + form.group(3));
    } else {
      assertThatThrownBy(() -> ClipPosition.parse(text))
          .isInstanceOf(QuantityException.class)
          .hasMessageContaining(reads ? "from 1 to" : "2 of 5 from top");
    }
  }
}
