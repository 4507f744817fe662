package dev.jetting.rules.search;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * What each choice costs, as whole numbers that add without garbage: new parts, and the price in
 * the smallest step that any price has.
 */
@SuppressWarnings("ArrayRecordComponent") // a table, never compared
record Costs(int scale, boolean priced) {

  /** New parts and price of the choices of a kind. */
  record Of(int[] newParts, long[] price) {}

  static Costs of(Choices choices) {
    int scale =
        all(choices).mapToInt(c -> c.price().map(BigDecimal::scale).orElse(0)).max().orElse(0);
    boolean priced = all(choices).allMatch(c -> c.owned() || c.price().isPresent());
    return new Costs(Math.max(0, scale), priced);
  }

  private static Stream<Choice<?>> all(Choices choices) {
    return Stream.<List<? extends Choice<?>>>of(
            choices.pilotJets(),
            choices.cutaways(),
            choices.needleJets(),
            choices.needles(),
            choices.mainJets())
        .flatMap(List::stream);
  }

  /** The costs of one kind's choices. If any price is unknown, every price counts as nothing. */
  <P> Of of(List<Choice<P>> choices) {
    int[] newParts = new int[choices.size()];
    long[] price = new long[choices.size()];
    for (int i = 0; i < newParts.length; i++) {
      Choice<P> choice = choices.get(i);
      newParts[i] = choice.owned() ? 0 : 1;
      if (priced && !choice.owned()) {
        price[i] = steps(choice.price().orElseThrow());
      }
    }
    return new Of(newParts, price);
  }

  /** A price in steps. */
  private long steps(BigDecimal price) {
    BigDecimal steps = price.setScale(scale).scaleByPowerOfTen(scale);
    if (steps.compareTo(MOST) > 0) {
      throw new IllegalArgumentException(
          "price " + price.toPlainString() + ": allowed 0 to 10^15 of its smallest step");
    }
    return steps.longValueExact();
  }

  private static final BigDecimal MOST = BigDecimal.TEN.pow(15);

  /** The most steps that a limit allows; a limit between two steps allows the lower. */
  long atMost(BigDecimal limit) {
    BigDecimal steps = limit.scaleByPowerOfTen(scale).min(MOST.multiply(BigDecimal.TEN));
    return steps.toBigInteger().longValueExact();
  }
}
