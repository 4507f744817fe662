package dev.jetting.rules.text;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A value that a {@link Message} shows: a number with its kind, a name, or words of their own. A
 * {@link Wording} prints it, so it holds no word of any language except names from outside.
 */
public sealed interface Argument {

  /** What a number is, and so how a language prints it. */
  @SuppressWarnings("ImmutableEnumChecker") // functions without state
  enum Style {
    /** A throttle opening, as a share of full lift: "3/8 throttle". */
    THROTTLE(ThrottleOpening::ofShare),
    /** A throttle opening where the words beside it say what it is: "3/8", "closed". */
    OPENING(ThrottleOpening::ofShare),
    /** A λ: "λ 0.88"; with enough decimals to distinguish it from the one beside it. */
    LAMBDA(Lambda::of),
    /** A λ without zeros at its end, as a rider says it: "λ 0.9". */
    LAMBDA_SHORT(Lambda::of),
    /** A λ without its letter: "0.88". */
    LAMBDA_NUMBER(Lambda::of),
    /** A probability: "12 %", "under 1 %"; with decimals that distinguish it from the limit. */
    RISK(Probability::of),
    /** A share in whole per cent: "12 %". */
    SHARE(share -> share),
    /** A share that is not zero, in whole per cent: "12 %", "less than 1 %". */
    CHANGE(share -> share),
    /** The bore of a main jet in mm: "main 118". */
    MAIN_JET(JetBore::ofMillimetres),
    /** The bore of a pilot jet in mm: "pilot 45". */
    PILOT_JET(JetBore::ofMillimetres),
    /** The bore of a needle jet in mm: "needle jet 2.65 mm". */
    NEEDLE_JET(Diameter::ofMillimetres),
    /** A diameter in mm: "2.485 mm". */
    DIAMETER(Diameter::ofMillimetres),
    /** The cutaway of a slide in mm: "cutaway 35". */
    CUTAWAY(Cutaway::ofMillimetres),
    /** Turns of a screw: "1½ turns". */
    TURNS(ScrewTurns::of),
    /** A temperature in °C: "20 °C". */
    TEMPERATURE(Temperature::ofCelsius),
    /** A pressure in hPa: "1013 hPa". */
    PRESSURE(Pressure::ofHectopascals),
    /** A relative humidity as a share: "45 %". */
    HUMIDITY(RelativeHumidity::ofShare),
    /** An engine speed in rpm: "7000 rpm". */
    SPEED(EngineSpeed::ofRpm),
    /** A count; one called {@code count} chooses between the singular and the plural. */
    COUNT(count -> count);

    private final DoubleFunction<?> check;

    Style(DoubleFunction<?> check) {
      this.check = check;
    }
  }

  /**
   * A number of a kind.
   *
   * @param style what it is
   * @param value the number, in the unit that the style names
   * @param beside the number that it is held against, in the same unit, where one is
   */
  record Amount(Style style, double value, Optional<Double> beside) implements Argument {

    /**
     * Checks the number.
     *
     * @param style what it is
     * @param value the number, in the unit that the style names
     * @param beside the number that it is held against, in the same unit, where one is
     * @throws IllegalArgumentException if a number is not finite, or not one of its kind
     */
    public Amount {
      check(style, value);
      beside.ifPresent(other -> check(style, other));
      value += 0.0; // −0.0 becomes 0.0
    }

    private static void check(Style style, double value) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(
            "number of the kind " + style + " that is not finite: allowed a finite number");
      }
      Objects.requireNonNull(style.check.apply(value));
    }

    private Amount(Style style, double value) {
      this(style, value, Optional.empty());
    }
  }

  /**
   * A number with a unit of any name.
   *
   * @param value the number; finite
   * @param unit the unit, {@code "1"} for a plain number; translated where a language has a word
   * @param exact whether all of its digits are printed; else three significant ones or so
   */
  record Measured(double value, String unit, boolean exact) implements Argument {

    /**
     * Checks the number.
     *
     * @param value the number; finite
     * @param unit the unit, {@code "1"} for a plain number
     * @param exact whether all of its digits are printed
     * @throws IllegalArgumentException if it is not finite, or the unit is blank or too long
     */
    public Measured {
      checkUnit(value, unit);
      value += 0.0; // −0.0 becomes 0.0
    }
  }

  /**
   * A number with a unit of any name and a stated count of decimals.
   *
   * @param value the number; finite
   * @param unit the unit, {@code "1"} for a plain number; translated where a language has a word
   * @param decimals digits after the point, 0 to 15
   */
  record Fixed(double value, String unit, int decimals) implements Argument {

    /**
     * Checks the number.
     *
     * @param value the number; finite
     * @param unit the unit, {@code "1"} for a plain number
     * @param decimals digits after the point, 0 to 15
     * @throws IllegalArgumentException if it is not finite, the unit is blank or too long, or the
     *     decimals are out of range
     */
    public Fixed {
      checkUnit(value, unit);
      if (decimals < 0 || decimals > 15) {
        throw new IllegalArgumentException("decimals " + decimals + ": allowed 0 to 15");
      }
      value += 0.0; // −0.0 becomes 0.0
    }
  }

  /**
   * A name or text from outside, which is printed as it is: an id of a part, a text of a file.
   *
   * @param text the name
   */
  record Name(String text) implements Argument {

    /**
     * Checks for null.
     *
     * @param text the name
     */
    public Name {
      Objects.requireNonNull(text, "text");
    }
  }

  /**
   * Words of the same language: a sentence inside another, or one word such as "leaner".
   *
   * @param message the words
   */
  record Words(Message message) implements Argument {

    /**
     * Checks for null.
     *
     * @param message the words
     */
    public Words {
      Objects.requireNonNull(message, "message");
    }
  }

  /**
   * Several values, one after the other.
   *
   * @param items the values
   */
  record Items(List<Argument> items) implements Argument {

    /**
     * Copies the list.
     *
     * @param items the values
     */
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * Makes a value of a throttle opening.
   *
   * @param opening the opening
   * @return "3/8 throttle"
   */
  static Argument throttle(ThrottleOpening opening) {
    return new Amount(Style.THROTTLE, opening.share());
  }

  /**
   * Makes a value of a throttle opening where the words beside it say what it is.
   *
   * @param opening the opening
   * @return "3/8"
   */
  static Argument opening(ThrottleOpening opening) {
    return new Amount(Style.OPENING, opening.share());
  }

  /**
   * Makes a value of a λ.
   *
   * @param lambda the λ
   * @return "λ 0.88"
   */
  static Argument lambda(Lambda lambda) {
    return new Amount(Style.LAMBDA, lambda.value());
  }

  /**
   * Makes a value of a λ that is held against another.
   *
   * @param lambda the λ
   * @param beside the other
   * @return "λ 0.88", with enough decimals to distinguish the two
   */
  static Argument lambda(Lambda lambda, Lambda beside) {
    return new Amount(Style.LAMBDA, lambda.value(), Optional.of(beside.value()));
  }

  /**
   * Makes a value of a λ as a rider says it.
   *
   * @param lambda the λ
   * @return "λ 0.9"
   */
  static Argument lambdaShort(Lambda lambda) {
    return new Amount(Style.LAMBDA_SHORT, lambda.value());
  }

  /**
   * Makes a value of a λ after whose letter it stands.
   *
   * @param lambda the λ
   * @return "0.88"
   */
  static Argument lambdaNumber(Lambda lambda) {
    return new Amount(Style.LAMBDA_NUMBER, lambda.value());
  }

  /**
   * Makes a value of a probability.
   *
   * @param risk the probability
   * @return "12 %"
   */
  static Argument risk(Probability risk) {
    return new Amount(Style.RISK, risk.value());
  }

  /**
   * Makes a value of a probability that is held against a limit.
   *
   * @param risk the probability
   * @param limit the limit
   * @return "12 %", with decimals that distinguish it from the limit
   */
  static Argument risk(Probability risk, Probability limit) {
    return new Amount(Style.RISK, risk.value(), Optional.of(limit.value()));
  }

  /**
   * Makes a value of a share.
   *
   * @param share the share, 0.12 for 12 %; finite
   * @return "12 %"
   */
  static Argument share(double share) {
    return new Amount(Style.SHARE, share);
  }

  /**
   * Makes a value of a share that is asked for, and so never nothing.
   *
   * @param share the share, 0.12 for 12 %; finite
   * @return "12 %" or "less than 1 %"
   */
  static Argument change(double share) {
    return new Amount(Style.CHANGE, share);
  }

  /**
   * Makes a value of a main jet.
   *
   * @param bore its bore
   * @return "main 118"
   */
  static Argument mainJet(JetBore bore) {
    return new Amount(Style.MAIN_JET, bore.millimetres());
  }

  /**
   * Makes a value of a pilot jet.
   *
   * @param bore its bore
   * @return "pilot 45"
   */
  static Argument pilotJet(JetBore bore) {
    return new Amount(Style.PILOT_JET, bore.millimetres());
  }

  /**
   * Makes a value of a needle jet.
   *
   * @param bore its bore
   * @return "needle jet 2.65 mm"
   */
  static Argument needleJet(Diameter bore) {
    return new Amount(Style.NEEDLE_JET, bore.millimetres());
  }

  /**
   * Makes a value of a needle.
   *
   * @param id its id
   * @return "needle 2.04 thick"
   */
  static Argument needle(String id) {
    Objects.requireNonNull(id, "id");
    return words(Message.of("needle").with("id", name(id)));
  }

  /**
   * Makes a value of a diameter.
   *
   * @param diameter the diameter
   * @return "2.485 mm"
   */
  static Argument diameter(Diameter diameter) {
    return new Amount(Style.DIAMETER, diameter.millimetres());
  }

  /**
   * Makes a value of a slide.
   *
   * @param cutaway its cutaway
   * @return "cutaway 35"
   */
  static Argument cutaway(Cutaway cutaway) {
    return new Amount(Style.CUTAWAY, cutaway.millimetres());
  }

  /**
   * Makes a value of a clip.
   *
   * @param clip its position
   * @return "clip 2 of 5 from top"
   */
  static Argument clip(ClipPosition clip) {
    boolean top = clip.countedFrom() == ClipPosition.End.TOP;
    return words(
        Message.of(top ? "clip.from-top" : "clip.from-bottom")
            .with("groove", count(top ? clip.grooveFromTop() : clip.grooveFromBottom()))
            .with("grooves", count(clip.grooves())));
  }

  /**
   * Makes a value of turns of a screw.
   *
   * @param turns the turns
   * @return "1½ turns"
   */
  static Argument turns(ScrewTurns turns) {
    return new Amount(Style.TURNS, turns.turns());
  }

  /**
   * Makes a value of a screw.
   *
   * @param kind which screw it is
   * @param turns how far it is out
   * @return "mixture screw 1½ turns out"
   */
  static Argument screw(ScrewKind kind, ScrewTurns turns) {
    return words(
        Message.of(kind == ScrewKind.MIXTURE ? "screw.mixture" : "screw.air")
            .with("turns", turns(turns)));
  }

  /**
   * Makes a value of a fuel.
   *
   * @param fuel the fuel
   * @return "E5 with 50:1 two-stroke-oil"
   */
  static Argument fuel(Fuel fuel) {
    return words(FuelWords.of(fuel));
  }

  /**
   * Makes a value of a temperature.
   *
   * @param temperature the temperature
   * @return "20 °C"
   */
  static Argument temperature(Temperature temperature) {
    return new Amount(Style.TEMPERATURE, temperature.celsius());
  }

  /**
   * Makes a value of a pressure.
   *
   * @param pressure the pressure
   * @return "1013 hPa"
   */
  static Argument pressure(Pressure pressure) {
    return new Amount(Style.PRESSURE, pressure.hectopascals());
  }

  /**
   * Makes a value of a relative humidity.
   *
   * @param humidity the humidity
   * @return "45 %"
   */
  static Argument humidity(RelativeHumidity humidity) {
    return new Amount(Style.HUMIDITY, humidity.share());
  }

  /**
   * Makes a value of an engine speed, in whole revolutions a minute.
   *
   * @param speed the speed
   * @return "7000 rpm"
   */
  static Argument speed(EngineSpeed speed) {
    return new Amount(Style.SPEED, speed.rpm());
  }

  /**
   * Makes a value of a count.
   *
   * @param count the count
   * @return "5"
   */
  static Argument count(long count) {
    return new Amount(Style.COUNT, count);
  }

  /**
   * Makes a value of a number with a unit, rounded to three significant digits or so.
   *
   * @param value the number; finite
   * @param unit the unit; {@code "1"} for a plain number
   * @return "8.335 mm"
   */
  static Argument measured(double value, String unit) {
    return new Measured(value, unit, false);
  }

  /**
   * Makes a value of a number with a unit, with all of its digits.
   *
   * @param value the number; finite
   * @param unit the unit; {@code "1"} for a plain number
   * @return "19.5 mm"
   */
  static Argument exact(double value, String unit) {
    return new Measured(value, unit, true);
  }

  /**
   * Makes a value of a number with a unit and a stated count of decimals.
   *
   * @param value the number; finite
   * @param unit the unit; {@code "1"} for a plain number
   * @param decimals digits after the point, 0 to 15
   * @return "1.20 mm"
   */
  static Argument fixed(double value, String unit, int decimals) {
    return new Fixed(value, unit, decimals);
  }

  /**
   * Makes a value of a name or text from outside, which is printed as it is.
   *
   * @param text the name
   * @return the value
   */
  static Argument name(String text) {
    return new Name(Objects.requireNonNull(text, "text"));
  }

  /**
   * Makes a value of words.
   *
   * @param message the words
   * @return the value
   */
  static Argument words(Message message) {
    return new Words(Objects.requireNonNull(message, "message"));
  }

  /**
   * Makes a value of words of this library without arguments.
   *
   * @param key their key
   * @return the value
   * @throws IllegalArgumentException if the library has no such key
   */
  static Argument word(String key) {
    return words(Message.of(key));
  }

  /**
   * Makes a value of several.
   *
   * @param items the values
   * @return "the intake, the fuel"
   */
  static Argument items(List<? extends Argument> items) {
    return new Items(List.copyOf(Objects.requireNonNull(items, "items")));
  }

  private static void checkUnit(double value, String unit) {
    Checks.line("unit", () -> Sentence.plain("unit of a number"), unit, Message.LONGEST);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "number " + value + " with a unit: allowed a finite number");
    }
  }

  /** {@return this value in English} */
  default String text() {
    return Wording.english().text(this);
  }
}
