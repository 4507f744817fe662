package dev.jetting.units;

import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A number or a text that is no value of the quantity asked for. The message names the quantity,
 * the value with its unit, and what is allowed; the accessors give the same pieces to programs.
 *
 * <p>Not for {@code null} arguments, which throw {@link NullPointerException}.
 */
public final class QuantityException extends IllegalArgumentException implements Refusal {
  @Serial private static final long serialVersionUID = 1L;

  private final String quantity;
  private final String value;
  private final String unit;
  private final String allowed;

  /** A list that can be written, since an exception can be. */
  private final ArrayList<String> readings;

  /** Not written with the exception, whose line is. */
  private final transient @Nullable Sentence sentence;

  private QuantityException(
      Sentence sentence,
      Sentence quantity,
      String value,
      String unit,
      Object allowed,
      List<String> readings) {
    super(sentence.toString());
    this.sentence = sentence;
    this.quantity = quantity.toString();
    this.value = value;
    this.unit = unit;
    this.allowed = allowed.toString();
    this.readings = new ArrayList<>(readings);
  }

  static QuantityException outOfRange(
      Sentence quantity, double value, String unit, Sentence allowed) {
    Sentence problem = Sentence.value(quantity, new Sentence.Amount(value, unit));
    return new QuantityException(
        Sentence.refused(problem, allowed), quantity, Text.number(value), unit, allowed, List.of());
  }

  static QuantityException refused(Sentence quantity, String text, Sentence allowed) {
    Sentence problem = Sentence.value(quantity, OneLine.quoted(text));
    return new QuantityException(
        Sentence.refused(problem, allowed), quantity, text, "", allowed, List.of());
  }

  static QuantityException unreadable(Sentence quantity, String text, Sentence allowed) {
    return new QuantityException(
        Sentence.refused(unreadable(quantity, text), allowed),
        quantity,
        text,
        "",
        allowed,
        List.of());
  }

  static QuantityException refused(String quantity, String text, Sentence allowed) {
    return refused(Sentence.name(quantity), text, allowed);
  }

  static QuantityException unreadableSuchAs(String quantity, String text, List<String> samples) {
    return unreadableSuchAs(Sentence.name(quantity), text, samples);
  }

  static QuantityException ambiguous(String quantity, String text, List<String> readings) {
    return ambiguous(Sentence.name(quantity), text, readings);
  }

  /** A text that a person typed and that has another form than any known. */
  static QuantityException unreadableSuchAs(Sentence quantity, String text, List<String> samples) {
    Sentence sample = Sentence.oneOf(samples);
    return new QuantityException(
        Sentence.of("error.such-as")
            .with("problem", unreadable(quantity, text))
            .with("sample", sample),
        quantity,
        text,
        "",
        sample,
        List.of());
  }

  /** A text that a person typed and that has more than one meaning, or hardly the plain one. */
  static QuantityException ambiguous(Sentence quantity, String text, List<String> readings) {
    if (readings.isEmpty()) {
      Sentence problem = Sentence.value(quantity, OneLine.quoted(text));
      return new QuantityException(
          Sentence.refused(problem, Sentence.of("error.size-of-part")),
          quantity,
          text,
          "",
          "",
          readings);
    }
    Sentence offered = Sentence.or(readings);
    return new QuantityException(
        Sentence.of(readings.size() == 1 ? "error.ambiguous.one" : "error.ambiguous")
            .with("what", Sentence.value(quantity, OneLine.quoted(text)))
            .with("readings", offered),
        quantity,
        text,
        "",
        offered,
        readings);
  }

  private static Sentence unreadable(Sentence quantity, String text) {
    Sentence given = Sentence.value(quantity, OneLine.quoted(text));
    return text.indexOf(',') < 0
        ? Sentence.of("error.unreadable").with("what", given)
        : Sentence.of("error.unreadable.comma").with("what", given);
  }

  @Override
  public Sentence sentence() {
    return sentence == null ? Sentence.plain(String.valueOf(getMessage())) : sentence;
  }

  /**
   * Returns the name of the quantity, such as {@code jet bore}.
   *
   * @return the name, in lower case
   */
  public String quantity() {
    return quantity;
  }

  /**
   * Returns what was refused: the number as a decimal, or the whole text that could not be read.
   *
   * @return the number or the text
   */
  public String value() {
    return value;
  }

  /**
   * Returns the unit that the refused number was given in.
   *
   * @return the unit's symbol; empty for a number without a unit and for text that could not be
   *     read
   */
  public String unit() {
    return unit;
  }

  /**
   * Returns what is allowed: the range in the unit of the refused number, or the forms that can be
   * read.
   *
   * @return a phrase in English
   */
  public String allowed() {
    return allowed;
  }

  /**
   * Returns what a text that a person typed may mean, where it is ambiguous.
   *
   * @return the meanings, each in words that can be typed instead; empty where it is not
   */
  public List<String> readings() {
    return List.copyOf(readings);
  }
}
