package dev.jetting.rules.search;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A part that can be chosen.
 *
 * @param part the part
 * @param owned whether it is there already and costs nothing
 * @param price what it costs to get, zero or more, in the one currency of all prices; empty if
 *     unknown
 * @param uncertainty standard uncertainty of a jet's bore beyond the tolerance of its kind, mm,
 *     zero or more, as of one that is numbered by its flow; 0 for all other parts
 * @param <P> the kind of part
 */
public record Choice<P>(P part, boolean owned, Optional<BigDecimal> price, double uncertainty) {

  /**
   * Checks the numbers.
   *
   * @param part the part
   * @param owned whether it is there already and costs nothing
   * @param price what it costs to get, zero or more; empty if unknown
   * @param uncertainty standard uncertainty of a jet's bore beyond the tolerance of its kind, mm
   * @throws IllegalArgumentException if the price is below zero, or the uncertainty is below zero
   *     or more than 9 mm
   */
  public Choice {
    Objects.requireNonNull(part, "part");
    if (price.isPresent() && price.get().signum() < 0) {
      throw new IllegalArgumentException(
          "price " + price.get().toPlainString() + " of " + part + ": allowed 0 or more");
    }
    if (!(uncertainty >= 0 && uncertainty <= 9)) {
      throw new IllegalArgumentException(
          "uncertainty " + uncertainty + " mm of " + part + ": allowed 0 to 9 mm");
    }
  }

  /**
   * A part whose size has no uncertainty beyond its kind's tolerance.
   *
   * @param part the part
   * @param owned whether it is there already and costs nothing
   * @param price what it costs to get, zero or more; empty if unknown
   * @throws IllegalArgumentException if the price is below zero
   */
  public Choice(P part, boolean owned, Optional<BigDecimal> price) {
    this(part, owned, price, 0);
  }

  /**
   * A part that is there already.
   *
   * @param part the part
   * @param <P> the kind of part
   * @return the choice
   */
  public static <P> Choice<P> ofOwned(P part) {
    return new Choice<>(part, true, Optional.empty());
  }

  /**
   * A part to get, at an unknown price.
   *
   * @param part the part
   * @param <P> the kind of part
   * @return the choice
   */
  public static <P> Choice<P> toBuy(P part) {
    return new Choice<>(part, false, Optional.empty());
  }

  /**
   * A part to buy.
   *
   * @param part the part
   * @param price what it costs, zero or more
   * @param <P> the kind of part
   * @return the choice
   * @throws IllegalArgumentException if the price is below zero
   */
  public static <P> Choice<P> toBuy(P part, BigDecimal price) {
    return new Choice<>(part, false, Optional.of(price));
  }
}
