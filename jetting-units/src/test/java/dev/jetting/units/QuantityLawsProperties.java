package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.units.QuantityCatalogue.Described;
import dev.jetting.units.QuantityCatalogue.Numbers;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The laws that every quantity of the catalogue keeps. */
class QuantityLawsProperties {

  /** Three values of one quantity. */
  record Three<Q extends Quantity<Q>>(Described<Q> described, Q a, Q b, Q c) {}

  /** Two numbers that one quantity can be made of. */
  record Two<Q extends Quantity<Q>>(Numbers<Q> numbers, double a, double b) {}

  @Provide
  Arbitrary<Three<?>> values() {
    return Arbitraries.of(QuantityCatalogue.ALL).flatMap(QuantityLawsProperties::three);
  }

  private static <Q extends Quantity<Q>> Arbitrary<Three<?>> three(Described<Q> described) {
    return described
        .values()
        .list()
        .ofSize(3)
        .map(v -> new Three<>(described, v.get(0), v.get(1), v.get(2)));
  }

  @Provide
  Arbitrary<Two<?>> numbers() {
    return Arbitraries.of(scalars()).flatMap(QuantityLawsProperties::two);
  }

  private static <Q extends Quantity<Q>> Arbitrary<Two<?>> two(Numbers<Q> numbers) {
    return numbers.arbitrary().list().ofSize(2).map(n -> new Two<>(numbers, n.get(0), n.get(1)));
  }

  private static List<Numbers<?>> scalars() {
    return QuantityCatalogue.ALL.stream()
        .<Numbers<?>>flatMap(described -> described.numbers().stream())
        .toList();
  }

  @Provide
  Arbitrary<Numbers<?>> scalar() {
    return Arbitraries.of(scalars());
  }

  @Property
  <Q extends Quantity<Q>> void parse_invertsToString(@ForAll("values") Three<Q> values) {
    assertThat(values.described().parse().apply(values.a().toString())).isEqualTo(values.a());
  }

  @Property
  <Q extends Quantity<Q>> void parse_ignoresSpaceAround(@ForAll("values") Three<Q> values) {
    assertThat(values.described().parse().apply(" \t" + values.a() + "\n")).isEqualTo(values.a());
  }

  @Property
  <Q extends Quantity<Q>> void parse_refusesTextThatGoesOn(@ForAll("values") Three<Q> values) {
    assertThatThrownBy(() -> values.described().parse().apply(values.a() + "!"))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("\"" + values.a() + "!\"");
  }

  /** What is printed is the amount, so that nobody has to cut a unit off printed text. */
  @Property
  <Q extends Quantity<Q>> void amount_isWhatIsPrinted(@ForAll("values") Three<Q> values) {
    Q a = values.a();
    boolean noNumber = a instanceof ClipPosition || a.equals(PremixRatio.NO_OIL);

    assertThat(a.amount().map(Sentence.Amount::toString))
        .isEqualTo(noNumber ? Optional.empty() : Optional.of(a.toString()));
  }

  @Property
  <Q extends Quantity<Q>> void equals_isByValue(@ForAll("values") Three<Q> values) {
    Q a = values.a();
    Q sameAsA = values.described().parse().apply(a.toString());

    assertThat(a.equals(a)).isTrue();
    assertThat(a).isEqualTo(sameAsA).hasSameHashCodeAs(sameAsA).isNotEqualTo(null);
    assertThat(a.equals(values.b())).isEqualTo(values.b().equals(a));
  }

  @Property
  void equals_tellsQuantitiesOfTheSameNumberApart(
      @ForAll("scalar") Numbers<?> one, @ForAll("scalar") Numbers<?> other) {
    assertThat(one.of().apply(1).equals(other.of().apply(1))).isEqualTo(one.equals(other));
  }

  @Property
  <Q extends Quantity<Q>> void compareTo_isATotalOrder(@ForAll("values") Three<Q> values) {
    Q a = values.a();
    Q b = values.b();
    Q c = values.c();

    assertThat(Integer.signum(a.compareTo(b))).isEqualTo(-Integer.signum(b.compareTo(a)));
    if (a.compareTo(b) <= 0 && b.compareTo(c) <= 0) {
      assertThat(a.compareTo(c)).isLessThanOrEqualTo(0);
    }
  }

  @Property
  <Q extends Quantity<Q>> void compareTo_agreesWithEquals(@ForAll("values") Three<Q> values) {
    Q a = values.a();
    Q sameAsA = values.described().parse().apply(a.toString());

    assertThat(a.compareTo(sameAsA)).isZero();
    assertThat(a.compareTo(values.b()) == 0).isEqualTo(a.equals(values.b()));
  }

  @Property
  <Q extends Quantity<Q>> void compareTo_refusesNull(@ForAll("values") Three<Q> values) {
    assertThatThrownBy(() -> values.a().compareTo(nothing()))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("other");
  }

  @Property
  <Q extends Quantity<Q>> void isLessThan_isMoreThan_readTheOrder(
      @ForAll("values") Three<Q> values) {
    int order = values.a().compareTo(values.b());

    assertThat(values.a().isLessThan(values.b())).isEqualTo(order < 0);
    assertThat(values.a().isMoreThan(values.b())).isEqualTo(order > 0);
  }

  @Property
  <Q extends Quantity<Q>> void compareTo_followsTheNumbers(@ForAll("numbers") Two<Q> two) {
    Q a = two.numbers().of().apply(two.a());
    Q b = two.numbers().of().apply(two.b());

    assertThat(Integer.signum(a.compareTo(b)))
        .isEqualTo(two.numbers().order() * Double.compare(two.a(), two.b()));
  }

  @Property
  <Q extends Quantity<Q>> void accessor_givesTheNumberBack(@ForAll("numbers") Two<Q> two) {
    Q quantity = two.numbers().of().apply(two.a());

    assertThat(two.numbers().number().applyAsDouble(quantity)).isEqualTo(two.a());
  }

  @Property
  void toString_printsTheShortestDecimalFirst(@ForAll("numbers") Two<?> two) {
    assertThat(two.numbers().of().apply(two.a()).toString()).startsWith(Decimals.shortest(two.a()));
  }

  @Property
  <Q extends Quantity<Q>> void factory_refusesWhatIsOutOfRange(@ForAll("scalar") Numbers<Q> q) {
    String kind = ((Scalar<?>) q.of().apply(1)).kind().name();
    for (double refused : q.refused()) {
      assertThatThrownBy(() -> q.of().apply(refused))
          .isInstanceOfSatisfying(
              QuantityException.class,
              e -> {
                assertThat(e.quantity()).isEqualTo(kind);
                assertThat(e.value()).isEqualTo(Text.number(refused));
                assertThat(e).hasMessageContaining(kind + " " + e.value());
                assertThat(e).hasMessageContaining(": allowed " + e.allowed());
                assertThat(e.allowed())
                    .contains(Decimals.shortest(q.lowEnd()), Decimals.shortest(q.highest()))
                    .startsWith(q.lowEnd() < q.lowest() ? "above" : "from");
              });
    }
  }

  @Property
  void factory_makesMinusZeroZero(@ForAll("scalar") Numbers<?> q) {
    if (q.allowsZero()) {
      assertThat(q.of().apply(-0.0)).isEqualTo(q.of().apply(0.0));
      assertThat(q.of().apply(-0.0).toString()).startsWith("0");
    }
  }

  @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"})
  private static <T> T nothing() {
    return null;
  }
}
