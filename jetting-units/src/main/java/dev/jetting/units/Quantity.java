package dev.jetting.units;

import java.util.Optional;

/**
 * What every quantity promises.
 *
 * <ul>
 *   <li>It is immutable and holds one number in one canonical unit (a {@link ClipPosition} counts
 *       grooves instead).
 *   <li>{@code ofUnit} factories take finite numbers within the range that the type states; NaN,
 *       infinity and anything outside throw {@link QuantityException}. Minus zero becomes zero.
 *   <li>A number of up to fifteen significant digits is taken as the decimal it was written as. It
 *       is converted exactly from its unit and rounded once, so {@code JetBore.ofHundredths(117.5)}
 *       equals {@code JetBore.ofMillimetres(1.175)}. Longer numbers, which come out of
 *       calculations, are converted in double arithmetic.
 *   <li>{@code toString} prints the shortest decimal and the canonical unit; {@code parse} reads it
 *       back to an equal value, and reads the other units that the type states. Text for people is
 *       made by {@link TradeStyle}.
 *   <li>{@code parse} ignores the locale: the decimal separator is a point, a comma is rejected;
 *       digits are not grouped; space around the text and before the unit does not matter; a minus
 *       sign may be {@code -} or {@code −}. Unit symbols are case-sensitive.
 *   <li>{@code compareTo} is consistent with {@code equals}, and both compare the canonical number
 *       exactly, without a tolerance.
 * </ul>
 *
 * <p>Not for values that carry an uncertainty; {@link Uncertain} does that.
 *
 * @param <Q> the quantity itself
 */
public sealed interface Quantity<Q extends Quantity<Q>> extends Comparable<Q>
    permits Scalar, ClipPosition {

  /**
   * Returns the number with the symbol of its unit, for programs that print or send it in their own
   * way.
   *
   * @return the number in the canonical unit, whose symbol is empty where there is none; empty for
   *     what is not one number: a {@link ClipPosition}, and {@link PremixRatio#NO_OIL}
   */
  Optional<Sentence.Amount> amount();

  /**
   * Returns whether this comes before the other in the type's order.
   *
   * @param other the value to compare with
   * @return whether {@code compareTo(other) < 0}
   * @throws NullPointerException if {@code other} is null
   */
  default boolean isLessThan(Q other) {
    return compareTo(other) < 0;
  }

  /**
   * Returns whether this comes after the other in the type's order.
   *
   * @param other the value to compare with
   * @return whether {@code compareTo(other) > 0}
   * @throws NullPointerException if {@code other} is null
   */
  default boolean isMoreThan(Q other) {
    return compareTo(other) > 0;
  }
}
