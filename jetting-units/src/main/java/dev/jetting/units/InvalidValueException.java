package dev.jetting.units;

import java.io.Serial;

/**
 * A value that a part, a sheet or another compound thing cannot have. The message names the thing,
 * the value with its unit, and what is allowed; the accessors give the same pieces to programs.
 *
 * <p>Not for a number outside the range of its quantity or a text that is none, which throw {@link
 * QuantityException}.
 */
public final class InvalidValueException extends IllegalArgumentException {
  @Serial private static final long serialVersionUID = 1L;

  private final String problem;
  private final String field;
  private final String value;
  private final String allowed;

  private InvalidValueException(
      String message, String problem, String field, String value, String allowed) {
    super(message + ": allowed " + allowed);
    this.problem = problem;
    this.field = field;
    this.value = value;
    this.allowed = allowed;
  }

  /**
   * Creates an exception on a value that has a name in words.
   *
   * @param what what the value is of, in words
   * @param value the value, its unit included
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException of(String what, String value, String allowed) {
    return new InvalidValueException(what + " " + value, what + " " + value, "", value, allowed);
  }

  /**
   * Creates an exception on a value that has a place in a larger one.
   *
   * @param field the place in the thing that refuses it, such as {@code setting.needleJet.bore} or
   *     {@code parts.mainJets[2]}
   * @param value the value, its unit included
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException at(String field, String value, String allowed) {
    return new InvalidValueException(field + " " + value, value, field, value, allowed);
  }

  /**
   * Creates an exception whose message does not quote the value.
   *
   * @param problem what is wrong, in words
   * @param field the place in the thing that refuses it; empty where it has none
   * @param value the value, safe to show on one line
   * @param allowed what is allowed
   * @return the exception
   */
  public static InvalidValueException worded(
      String problem, String field, String value, String allowed) {
    return new InvalidValueException(problem, problem, field, value, allowed);
  }

  /**
   * Returns where the value stands in the thing that refuses it.
   *
   * @return the names of the fields with full stops between and indices in brackets, such as {@code
   *     setting.needleJet.bore}; empty where the message names it in words
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
