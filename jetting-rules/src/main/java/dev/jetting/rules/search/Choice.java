package dev.jetting.rules.search;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A part that can be chosen.
 *
 * @param part the part
 * @param owned whether it is there already and costs nothing
 * @param price what it costs to get, zero or more, in the one currency of all prices; empty where
 *     nobody told
 * @param <P> the kind of part
 */
public record Choice<P>(P part, boolean owned, Optional<BigDecimal> price) {

  /**
   * Checks the price.
   *
   * @param part the part
   * @param owned whether it is there already and costs nothing
   * @param price what it costs to get, zero or more; empty where nobody told
   * @throws IllegalArgumentException if the price is below zero
   */
  public Choice {
    Objects.requireNonNull(part, "part");
    if (price.isPresent() && price.get().signum() < 0) {
      throw new IllegalArgumentException(
          "price " + price.get().toPlainString() + " of " + part + ": allowed 0 or more");
    }
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
   * A part to get, at a price that nobody told.
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
