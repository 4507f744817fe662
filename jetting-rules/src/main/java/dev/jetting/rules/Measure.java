package dev.jetting.rules;

import dev.jetting.units.number.Decimals;

/**
 * A number with its unit, as a finding shows it.
 *
 * @param value the number; finite
 * @param unit the unit, {@code "1"} for a plain ratio
 */
public record Measure(double value, String unit) {

  /**
   * Checks the number.
   *
   * @param value the number; finite
   * @param unit the unit, {@code "1"} for a plain ratio
   * @throws IllegalArgumentException if it is not finite or the unit is blank
   */
  public Measure {
    if (!Double.isFinite(value) || unit.isBlank()) {
      throw new IllegalArgumentException(
          "measure " + value + " in \"" + unit + "\": allowed a finite number with a unit");
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

  /** {@return the number, rounded for people, and the unit} */
  @Override
  public String toString() {
    int decimals = Math.abs(value) < 10 ? 3 : Math.abs(value) < 100 ? 2 : 0;
    String number = Decimals.fixed(value, decimals);
    return unit.equals("1") ? number : number + " " + unit;
  }
}
