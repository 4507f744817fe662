package dev.jetting.units;

import java.util.Objects;

/**
 * An estimated value with its uncertainty. {@code lower} and {@code upper} lie one standard
 * uncertainty below and above it. They enclose the true value in about two of three cases.
 *
 * <p>Not a tolerance: the true value may lie outside.
 *
 * @param value the best estimate
 * @param lower one standard uncertainty below, at most {@code value}
 * @param upper one standard uncertainty above, at least {@code value}
 * @param <Q> the quantity
 */
public record Uncertain<Q extends Quantity<Q>>(Q value, Q lower, Q upper) {
  /**
   * Checks the order of the three.
   *
   * @param value the best estimate
   * @param lower one standard uncertainty below
   * @param upper one standard uncertainty above
   * @throws IllegalArgumentException if {@code lower}, {@code value} and {@code upper} are not in
   *     ascending order
   */
  public Uncertain {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (lower.isMoreThan(value) || value.isMoreThan(upper)) {
      throw InvalidValueException.worded(
          Sentence.of("error.uncertain")
              .with("value", value)
              .with("low", lower)
              .with("high", upper),
          Sentence.plain("lower <= value <= upper"));
    }
  }

  /**
   * Returns the estimate with its bounds.
   *
   * @return such as {@code 1.18 mm (1.15 mm to 1.21 mm)}
   */
  @Override
  public String toString() {
    return value + " (" + lower + " to " + upper + ")";
  }
}
