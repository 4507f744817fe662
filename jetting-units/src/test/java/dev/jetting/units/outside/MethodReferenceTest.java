package dev.jetting.units.outside;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.units.JetBore;
import dev.jetting.units.PremixRatio;
import java.util.Comparator;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Inherited methods link from another package, though the class they come from is not public. */
class MethodReferenceTest {
  private static final JetBore SMALL = JetBore.ofHundredths(45);
  private static final JetBore LARGE = JetBore.ofHundredths(126);

  @Test
  void methodReferences_linkFromOtherPackages() {
    Comparator<JetBore> compare = JetBore::compareTo;
    BiPredicate<JetBore, JetBore> less = JetBore::isLessThan;
    BiPredicate<JetBore, JetBore> equal = JetBore::equals;
    Function<JetBore, String> print = JetBore::toString;
    Function<JetBore, Integer> hash = JetBore::hashCode;
    Comparator<PremixRatio> comparePremix = PremixRatio::compareTo;

    assertThat(compare.compare(SMALL, LARGE)).isNegative();
    assertThat(less.test(SMALL, LARGE)).isTrue();
    assertThat(equal.test(SMALL, LARGE)).isFalse();
    assertThat(print.apply(LARGE)).isEqualTo("1.26 mm");
    assertThat(hash.apply(LARGE)).isEqualTo(LARGE.hashCode());
    assertThat(comparePremix.compare(PremixRatio.NO_OIL, PremixRatio.ofPetrolToOil(50)))
        .isNegative();
  }
}
