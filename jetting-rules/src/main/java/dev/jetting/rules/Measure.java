package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.units.Lambda;
import dev.jetting.units.OneLine;
import dev.jetting.units.Probability;

/**
 * A number with its unit, as a finding shows it.
 *
 * @param value the number; finite
 * @param unit the unit, such as {@code "mm"}; {@code "1"} for a plain ratio, {@code "lean risk"}
 *     for that at a throttle opening, {@code "λ on the overrun"} for that
 */
public record Measure(double value, String unit) {

  /**
   * The unit of a lean risk at a throttle opening. A waived finding that measured one accepts the
   * openings in its band up to that risk.
   */
  public static final String LEAN_RISK = "lean risk";

  /**
   * The unit of a λ on the overrun. A waived finding that measured one accepts an overrun that is
   * no leaner.
   */
  public static final String OVERRUN = "λ on the overrun";

  /**
   * Checks the number.
   *
   * @param value the number; finite
   * @param unit the unit, {@code "1"} for a plain ratio
   * @throws IllegalArgumentException if it is not finite, or the unit is blank or not one line of
   *     visible characters
   */
  public Measure {
    PlainLine.checked("unit", "unit of a measure", unit, PlainLine.LONGEST_TEXT);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "measure " + value + " in " + OneLine.quoted(unit) + ": allowed a finite number");
    }
    value += 0.0; // −0.0 becomes 0.0
  }

  /**
   * A plain ratio.
   *
   * @param value the number; finite
   * @return the measure in the unit 1
   * @throws IllegalArgumentException if it is not finite
   */
  public static Measure ratio(double value) {
    return new Measure(value, "1");
  }

  /**
   * A lean risk at a throttle opening.
   *
   * @param risk the risk
   * @return the measure in the unit {@link #LEAN_RISK}
   */
  public static Measure leanRisk(Probability risk) {
    return new Measure(risk.value(), LEAN_RISK);
  }

  /**
   * A λ on the overrun.
   *
   * @param lambda the λ
   * @return the measure in the unit {@link #OVERRUN}
   */
  public static Measure onOverrun(Lambda lambda) {
    return new Measure(lambda.value(), OVERRUN);
  }

  /** {@return the number, rounded for people, and the unit} */
  @Override
  public String toString() {
    return argument().text();
  }

  /** {@return this measure as a value of a message, which every language prints in its own way} */
  public Argument argument() {
    return unit.equals(LEAN_RISK) && value >= 0 && value <= 1
        ? Argument.risk(Probability.of(value))
        : Argument.measured(value, unit);
  }
}
