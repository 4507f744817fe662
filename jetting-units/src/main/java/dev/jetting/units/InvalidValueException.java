package dev.jetting.units;

import java.io.Serial;
import org.jspecify.annotations.Nullable;

/**
 * A value that a part, a sheet or another compound thing cannot have. The message names the thing,
 * the value with its unit, and what is allowed; the accessors give the same pieces to programs.
 *
 * <p>Not for a number outside the range of its quantity or a text that is none, which throw {@link
 * QuantityException}.
 */
public final class InvalidValueException extends IllegalArgumentException implements Refusal {
  @Serial private static final long serialVersionUID = 1L;

  private final String problem;
  private final String field;
  private final String value;
  private final String allowed;

  /** Not written with the exception, whose line is. */
  private final transient @Nullable Sentence sentence;

  private InvalidValueException(
      Sentence line, Sentence problem, String field, String value, Sentence allowed) {
    super(line.toString());
    this.sentence = line;
    this.problem = problem.toString();
    this.field = field;
    this.value = value;
    this.allowed = allowed.toString();
  }

  /**
   * Creates an exception on a value that has a name in words.
   *
   * @param what what the value is of
   * @param value the value, of the kinds that a {@link Sentence} shows
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException of(Sentence what, Object value, Sentence allowed) {
    Sentence problem = Sentence.value(what, value);
    return new InvalidValueException(
        Sentence.refused(problem, allowed), problem, "", Sentence.shown(value), allowed);
  }

  /**
   * Creates an exception on a value that has a name in words of the caller's own, which are the
   * same in every language.
   *
   * @param what what the value is of, in words
   * @param value the value, its unit included
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException of(String what, String value, String allowed) {
    return of(Sentence.plain(what), value, Sentence.plain(allowed));
  }

  /**
   * Creates an exception on a value that has a place in a larger one.
   *
   * @param field the place in the thing that refuses it, such as {@code setting.needleJet.bore} or
   *     {@code parts.mainJets[2]}
   * @param value the value, of the kinds that a {@link Sentence} shows
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException at(String field, Object value, Sentence allowed) {
    Sentence problem = Sentence.plain(Sentence.shown(value));
    Sentence line =
        Sentence.of("error.at-field")
            .with("field", field)
            .with("problem", Sentence.refused(problem, allowed));
    return new InvalidValueException(line, problem, field, problem.toString(), allowed);
  }

  /**
   * Creates an exception whose message does not name a value beside what is wrong.
   *
   * @param problem what is wrong
   * @param allowed what is allowed
   * @return the exception, without a field
   */
  public static InvalidValueException worded(Sentence problem, Sentence allowed) {
    return worded(problem, "", "", allowed);
  }

  /**
   * Creates an exception whose message does not quote the value.
   *
   * @param problem what is wrong
   * @param field the place in the thing that refuses it; empty where it has none
   * @param value the value, safe to show on one line; empty where the problem has it
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException worded(
      Sentence problem, String field, String value, Sentence allowed) {
    return new InvalidValueException(
        Sentence.refused(problem, allowed), problem, field, value, allowed);
  }

  /**
   * Creates an exception whose message is not of the form "problem: allowed values".
   *
   * @param line what is wrong and what to do
   * @return the exception, without a field and without what is allowed
   */
  public static InvalidValueException saying(Sentence line) {
    return new InvalidValueException(line, line, "", "", Sentence.plain(""));
  }

  /**
   * Creates an exception whose message is not of the form "problem: allowed values", on places of a
   * larger thing.
   *
   * @param line what is wrong and what to do
   * @param field the places in the thing that refuses them, with commas between
   * @param allowed what is allowed
   * @return the exception, without a value
   */
  public static InvalidValueException saying(Sentence line, String field, Sentence allowed) {
    return new InvalidValueException(line, line, field, "", allowed);
  }

  /**
   * Adds the error of the platform that this one explains.
   *
   * @param cause the error
   * @return this exception
   */
  public InvalidValueException causedBy(Throwable cause) {
    initCause(cause);
    return this;
  }

  /** {@return what the error says, without the field where the value stands} */
  public Sentence withoutField() {
    Sentence line = sentence();
    return line.key().equals("error.at-field") ? line.part("problem").orElse(line) : line;
  }

  @Override
  public Sentence sentence() {
    return sentence == null ? Sentence.plain(String.valueOf(getMessage())) : sentence;
  }

  /**
   * Returns where the value stands in the thing that refuses it.
   *
   * @return the names of the fields with full stops between and indices in brackets, such as {@code
   *     setting.needleJet.bore}; several with commas between; empty where the message names it in
   *     words
   */
  public String field() {
    return field;
  }

  /** {@return what is wrong with the value, without its field and without what is allowed} */
  public String problem() {
    return problem;
  }

  /** {@return the refused value, its unit included, safe to show on one line} */
  public String value() {
    return value;
  }

  /** {@return what is allowed, a phrase in English} */
  public String allowed() {
    return allowed;
  }
}
