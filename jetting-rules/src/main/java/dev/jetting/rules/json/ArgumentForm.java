package dev.jetting.rules.json;

import dev.jetting.rules.Measure;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A value of a message, in JSON: one of its kinds.
 *
 * @param amount a number of a kind
 * @param measured a number with a unit, rounded where it is printed
 * @param fixed a number with a unit and a stated count of decimals
 * @param exact a number with a unit, printed with all of its digits
 * @param name a name or text from outside
 * @param words words of the same language
 * @param items several values
 */
record ArgumentForm(
    Optional<AmountForm> amount,
    Optional<Measure> measured,
    Optional<FixedForm> fixed,
    Optional<Measure> exact,
    Optional<String> name,
    Optional<Message> words,
    Optional<List<Argument>> items) {

  /**
   * A number of a kind, in JSON.
   *
   * @param style what it is, which names its unit
   * @param value the number
   * @param beside the number that it is held against, in the same unit
   */
  record AmountForm(Argument.Style style, double value, Optional<Double> beside) {

    static AmountForm of(Argument.Amount amount) {
      return new AmountForm(amount.style(), amount.value(), amount.beside());
    }

    Argument.Amount amount() {
      return new Argument.Amount(style, value, beside);
    }
  }

  /**
   * A number with a unit and a stated count of decimals, in JSON.
   *
   * @param value the number
   * @param unit the unit; 1 for a plain number
   * @param decimals digits after the point, 0 to 15
   */
  record FixedForm(double value, String unit, int decimals) {

    static FixedForm of(Argument.Fixed fixed) {
      return new FixedForm(fixed.value(), fixed.unit(), fixed.decimals());
    }

    Argument.Fixed fixed() {
      return new Argument.Fixed(value, unit, decimals);
    }
  }

  ArgumentForm {
    if (Stream.of(amount, measured, fixed, exact, name, words, items)
            .filter(Optional::isPresent)
            .count()
        != 1) {
      throw InvalidValueException.worded(
          Sentence.of("error.argument-kinds"),
          Sentence.of("error.one-of")
              .with("names", "amount, measured, fixed, exact, name, words, items"));
    }
  }

  static ArgumentForm of(Argument argument) {
    return new ArgumentForm(
        as(Argument.Amount.class, argument).map(AmountForm::of),
        as(Argument.Measured.class, argument).filter(m -> !m.exact()).map(ArgumentForm::measure),
        as(Argument.Fixed.class, argument).map(FixedForm::of),
        as(Argument.Measured.class, argument)
            .filter(Argument.Measured::exact)
            .map(ArgumentForm::measure),
        as(Argument.Name.class, argument).map(Argument.Name::text),
        as(Argument.Words.class, argument).map(Argument.Words::message),
        as(Argument.Items.class, argument).map(Argument.Items::items));
  }

  private static <A extends Argument> Optional<A> as(Class<A> kind, Argument argument) {
    return Optional.of(argument).filter(kind::isInstance).map(kind::cast);
  }

  private static Measure measure(Argument.Measured measured) {
    return new Measure(measured.value(), measured.unit());
  }

  Argument argument() {
    return amount
        .<Argument>map(AmountForm::amount)
        .or(() -> measured.map(m -> Argument.measured(m.value(), m.unit())))
        .or(() -> fixed.map(FixedForm::fixed))
        .or(() -> exact.map(m -> Argument.exact(m.value(), m.unit())))
        .or(() -> name.map(Argument::name))
        .or(() -> words.map(Argument::words))
        .or(() -> items.map(Argument::items))
        .orElseThrow();
  }
}
