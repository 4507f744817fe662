package dev.jetting.core.parts;

import com.google.common.collect.ImmutableSet;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.OneLine;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;
import java.util.Locale;
import java.util.Objects;

/**
 * A number of the model with its source. It shows a reader of a result what was measured and what
 * was assumed.
 *
 * <p>Not for quantities that a person sets or buys: those are the types of {@code
 * dev.jetting.units}.
 *
 * @param value the number in {@code unit}; finite
 * @param unit the unit, {@code "1"} for a plain ratio; not empty
 * @param origin where the number comes from
 * @param note the source, the calculation, or the reason for the assumption; not empty
 */
public record Coefficient(double value, String unit, Origin origin, String note) {

  private static final int LONGEST_UNIT = 30;
  private static final int LONGEST_NOTE = 500;

  /** As a note each shows that unit and note changed places. */
  private static final ImmutableSet<String> UNITS =
      ImmutableSet.of(
          "1", "%", "°", "°C", "°F", "K", "1/K", "mm", "mm²", "mm²/s", "cm³", "g/cm³", "kg/m³",
          "m/s²", "Pa", "hPa", "rpm", "g/s", "L/h", "mPa·s", "share", "turns");

  /** Where a coefficient comes from. */
  public enum Origin {
    /** Read in a publication, or measured; the note names which. */
    SOURCED,
    /** Follows from a formula and sourced inputs; the note says how. */
    CALCULATED,
    /** This project's own assumption; the note says why this number. */
    ASSUMED
  }

  /**
   * Checks the number and the texts.
   *
   * @param value the number in {@code unit}
   * @param unit the unit, {@code "1"} for a plain ratio; one line, at most 30 characters
   * @param origin where the number comes from
   * @param note the source, the calculation, or the reason for the assumption; one line, at most
   *     500 characters
   * @throws IllegalArgumentException if the value is not finite, or a text is blank, too long or
   *     not one line of visible characters, or the note is a unit
   */
  public Coefficient {
    Checks.that(
        Double.isFinite(value),
        () -> Sentence.of("error.name.coefficient"),
        value,
        () -> Sentence.of("error.any-finite"));
    Checks.line("unit", () -> Sentence.of("error.name.unit-of-coefficient"), unit, LONGEST_UNIT);
    Checks.line("note", () -> Sentence.of("error.name.note-of-coefficient"), note, LONGEST_NOTE);
    if (UNITS.contains(note)) {
      throw InvalidValueException.worded(
          Sentence.of("error.is-a-unit")
              .with("what", Sentence.of("error.name.note-of-coefficient")),
          "note",
          OneLine.quoted(note),
          Sentence.of("error.source-or-reason"));
    }
    Objects.requireNonNull(origin, "origin");
    value += 0.0; // −0.0 becomes 0.0
  }

  /**
   * A coefficient read in a publication or measured.
   *
   * @param value the number; finite
   * @param unit its unit, {@code "1"} for a ratio
   * @param source where it stands
   * @return the coefficient
   * @throws IllegalArgumentException if the value is not finite, a text is empty, or the last is a
   *     unit
   */
  public static Coefficient sourced(double value, String unit, String source) {
    return new Coefficient(value, unit, Origin.SOURCED, source);
  }

  /**
   * A coefficient that follows from a formula and sourced inputs.
   *
   * @param value the number; finite
   * @param unit its unit, {@code "1"} for a ratio
   * @param how the calculation
   * @return the coefficient
   * @throws IllegalArgumentException if the value is not finite, a text is empty, or the last is a
   *     unit
   */
  public static Coefficient calculated(double value, String unit, String how) {
    return new Coefficient(value, unit, Origin.CALCULATED, how);
  }

  /**
   * A coefficient that somebody assumes.
   *
   * @param value the number; finite
   * @param unit its unit, {@code "1"} for a ratio
   * @param why the reason for this number
   * @return the coefficient
   * @throws IllegalArgumentException if the value is not finite, a text is empty, or the last is a
   *     unit
   */
  public static Coefficient assumed(double value, String unit, String why) {
    return new Coefficient(value, unit, Origin.ASSUMED, why);
  }

  /** {@return value, unit and origin on one line} */
  @Override
  public String toString() {
    return Decimals.shortest(value)
        + (unit.equals("1") ? "" : " " + unit)
        + " ("
        + origin.name().toLowerCase(Locale.ROOT)
        + ": "
        + note
        + ")";
  }
}
