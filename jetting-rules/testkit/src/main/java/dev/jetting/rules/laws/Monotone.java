package dev.jetting.rules.laws;

import java.util.Objects;

/**
 * What a rule's author declares of it: that it answers one way to every part that is made richer or
 * leaner.
 *
 * <p>A rule of the lean side warns of too lean a mixture. A richer part never turns it from passed
 * to failed, and never carries its worst finding further beyond its limit. A leaner part never does
 * the opposite. A rule of the rich side answers the other way round.
 *
 * @param side the side that the rule warns of
 * @param tolerance by how much the worst finding may move the wrong way, in the unit of its
 *     measured value, zero or more; a rule on the lean risk needs some, see {@link Laws#leanRisk}
 */
public record Monotone(Side side, double tolerance) {

  /** What a rule warns of. */
  public enum Side {
    /** Too lean. */
    LEAN,
    /** Too rich, or too much fuel. */
    RICH
  }

  /**
   * Checks the tolerance.
   *
   * @param side the side that the rule warns of
   * @param tolerance in the unit of the measured value, zero or more
   * @throws IllegalArgumentException if the tolerance is below zero or not finite
   */
  public Monotone {
    Objects.requireNonNull(side, "side");
    if (!(tolerance >= 0 && Double.isFinite(tolerance))) {
      throw new IllegalArgumentException(
          "tolerance of a monotone rule "
              + Numbers.text(tolerance)
              + ": allowed a finite number, 0 or more");
    }
  }

  /**
   * A rule that warns of too lean a mixture.
   *
   * @param tolerance in the unit of its measured value, zero or more
   * @return the declaration
   * @throws IllegalArgumentException if the tolerance is below zero or not finite
   */
  public static Monotone leanSide(double tolerance) {
    return new Monotone(Side.LEAN, tolerance);
  }

  /**
   * A rule that warns of too rich a mixture, or of too much fuel.
   *
   * @param tolerance in the unit of its measured value, zero or more
   * @return the declaration
   * @throws IllegalArgumentException if the tolerance is below zero or not finite
   */
  public static Monotone richSide(double tolerance) {
    return new Monotone(Side.RICH, tolerance);
  }
}
