package dev.jetting.rules;

import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.OneLine;
import dev.jetting.units.Probability;
import dev.jetting.units.Sentence;
import java.util.Optional;

/**
 * A number with its unit, as a finding shows it. The unit says what the number is, see {@link
 * #kind()}; what is printed is that number.
 *
 * @param value the number; finite
 * @param unit the unit, such as {@code "mm"}; {@code "1"} for a plain ratio, and what the number is
 *     where it has no unit but is none: {@code "lean risk"} at a throttle opening, another {@code
 *     "probability"}, {@code "λ on the overrun"}, {@code "share"}, {@code "ln λ"}
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

  /** The unit of a probability that is no lean risk at one opening of the level road. */
  public static final String PROBABILITY = "probability";

  /** The unit of a share of a whole, 0 to 1. */
  public static final String SHARE = "share";

  /** The unit of a change of λ as a natural logarithm, to the side that the sentence says. */
  public static final String LOGARITHM = "ln λ";

  /** What a number is. */
  public enum Kind {
    /** A probability, 0 to 1; a lean risk is one. */
    PROBABILITY,
    /** A share of a whole. */
    SHARE,
    /** A natural logarithm of one λ by another. */
    LOGARITHM,
    /** A λ. */
    LAMBDA,
    /** A ratio of two numbers of one unit. */
    RATIO,
    /** A length in mm. */
    LENGTH,
    /** An area in mm². */
    AREA,
    /** A pressure in Pa. */
    PRESSURE,
    /** A temperature in K. */
    TEMPERATURE,
    /** An engine speed in rpm. */
    SPEED,
    /** A flow in L/h, or in g/s. */
    FLOW,
    /** A volume in cm³. */
    VOLUME,
    /** A density in kg/m³. */
    DENSITY,
    /** A dynamic viscosity in mPa·s. */
    VISCOSITY,
    /** Turns of a screw. */
    TURNS,
    /** A number of the things that the unit names, such as sizes or grooves. */
    COUNT
  }

  private static final ImmutableMap<String, Kind> KINDS =
      ImmutableMap.<String, Kind>builder()
          .put(LEAN_RISK, Kind.PROBABILITY)
          .put(PROBABILITY, Kind.PROBABILITY)
          .put(SHARE, Kind.SHARE)
          .put(LOGARITHM, Kind.LOGARITHM)
          .put(OVERRUN, Kind.LAMBDA)
          .put("1", Kind.RATIO)
          .put("mm", Kind.LENGTH)
          .put("mm²", Kind.AREA)
          .put("Pa", Kind.PRESSURE)
          .put("K", Kind.TEMPERATURE)
          .put("rpm", Kind.SPEED)
          .put("L/h", Kind.FLOW)
          .put("g/s", Kind.FLOW)
          .put("cm³", Kind.VOLUME)
          .put("kg/m³", Kind.DENSITY)
          .put("mPa·s", Kind.VISCOSITY)
          .put("turns", Kind.TURNS)
          .put("groove", Kind.COUNT)
          .put("groove from top", Kind.COUNT)
          .put("grooves", Kind.COUNT)
          .put("parts", Kind.COUNT)
          .put("readings", Kind.COUNT)
          .put("sizes", Kind.COUNT)
          .buildOrThrow();

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
      throw InvalidValueException.worded(
          Sentence.of("error.measure").with("value", value).with("unit", OneLine.quoted(unit)),
          Sentence.of("error.finite"));
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
   * A probability that is no lean risk at one opening of the level road.
   *
   * @param probability the probability
   * @return the measure in the unit {@link #PROBABILITY}
   */
  public static Measure probability(Probability probability) {
    return new Measure(probability.value(), PROBABILITY);
  }

  /**
   * A share of a whole.
   *
   * @param share the share, 0 to 1
   * @return the measure in the unit {@link #SHARE}
   * @throws IllegalArgumentException if it is not finite
   */
  public static Measure share(double share) {
    return new Measure(share, SHARE);
  }

  /**
   * A change of λ, to the side that the sentence says.
   *
   * @param change natural logarithm of one λ by another; finite
   * @return the measure in the unit {@link #LOGARITHM}
   * @throws IllegalArgumentException if it is not finite
   */
  public static Measure logarithm(double change) {
    return new Measure(change, LOGARITHM);
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

  /** {@return what the number is, by its unit; empty for a unit of a caller's own} */
  public Optional<Kind> kind() {
    return Optional.ofNullable(KINDS.get(unit));
  }

  /**
   * {@return the number, rounded for people, and the unit; a share and a change of λ in percent}
   */
  @Override
  public String toString() {
    return argument().text();
  }

  /** {@return this measure as a value of a message, which every language prints in its own way} */
  public Argument argument() {
    return switch (unit) {
      case SHARE -> percent(value);
      case LOGARITHM -> percent(StrictMath.expm1(value));
      case LEAN_RISK, PROBABILITY ->
          value >= 0 && value <= 1 ? Argument.risk(Probability.of(value)) : percent(value);
      default -> Argument.measured(value, unit);
    };
  }

  private Argument percent(double share) {
    return Double.isFinite(share * 100)
        ? Argument.fixed(share * 100, "%", 1)
        : Argument.measured(value, unit);
  }
}
