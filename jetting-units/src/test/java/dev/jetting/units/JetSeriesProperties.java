package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class JetSeriesProperties {

  /** Hundredths that often lie evenly, and doubles of any length. */
  @Provide
  Arbitrary<JetBore> bores() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(30, 60).map(n -> JetBore.ofHundredths(n * 2.5)),
        Arbitraries.longs()
            .between(1, Double.doubleToLongBits(10))
            .map(bits -> JetBore.ofMillimetres(Double.longBitsToDouble(bits))));
  }

  @Provide
  Arbitrary<JetSeries<JetBore>> series() {
    return bores().list().ofMinSize(1).ofMaxSize(30).map(JetSeries::of);
  }

  @Property
  void parse_invertsToString(@ForAll("series") JetSeries<JetBore> series) {
    assertThat(JetSeries.parse(series.toString(), JetBore::parse)).isEqualTo(series);
  }

  @Property
  void next_isTheNeighbour(
      @ForAll("series") JetSeries<JetBore> series, @ForAll("bores") JetBore size) {
    TreeSet<JetBore> sizes = new TreeSet<>(series.sizes());

    assertThat(series.nextUp(size)).isEqualTo(Optional.ofNullable(sizes.higher(size)));
    assertThat(series.nextDown(size)).isEqualTo(Optional.ofNullable(sizes.lower(size)));
    assertThat(series.contains(size)).isEqualTo(sizes.contains(size));
  }

  @Property
  void nearest_hasNoNearerOne(
      @ForAll("series") JetSeries<JetBore> series, @ForAll("bores") JetBore size) {
    BigDecimal distance = distance(series.nearest(size), size);

    assertThat(series.sizes()).contains(series.nearest(size));
    assertThat(series.sizes()).allMatch(other -> distance(other, size).compareTo(distance) >= 0);
  }

  private static BigDecimal distance(JetBore a, JetBore b) {
    return decimal(a).subtract(decimal(b)).abs();
  }

  private static BigDecimal decimal(JetBore bore) {
    return new BigDecimal(Decimals.shortest(bore.millimetres()));
  }
}
