package dev.jetting.units;

import java.io.Serial;
import java.util.ArrayList;
import java.util.List;

/**
 * A number or a text that is no value of the quantity asked for. The message names the quantity,
 * the value with its unit, and what is allowed; the accessors give the same pieces to programs.
 *
 * <p>Not for {@code null} arguments, which throw {@link NullPointerException}.
 */
public final class QuantityException extends IllegalArgumentException {
  @Serial private static final long serialVersionUID = 1L;

  private final String quantity;
  private final String value;
  private final String unit;
  private final String allowed;

  /** A list that can be written, since an exception can be. */
  private final ArrayList<String> readings;

  private QuantityException(
      String message,
      String quantity,
      String value,
      String unit,
      String allowed,
      List<String> readings) {
    super(message);
    this.quantity = quantity;
    this.value = value;
    this.unit = unit;
    this.allowed = allowed;
    this.readings = new ArrayList<>(readings);
  }

  private QuantityException(
      String message, String quantity, String value, String unit, String allowed) {
    this(message, quantity, value, unit, allowed, List.of());
  }

  static QuantityException outOfRange(String quantity, double value, String unit, String allowed) {
    String number = Text.number(value);
    return new QuantityException(
        quantity + " " + Text.withUnit(number, unit) + ": allowed " + allowed,
        quantity,
        number,
        unit,
        allowed);
  }

  static QuantityException refused(String quantity, String text, String allowed) {
    return new QuantityException(
        quantity + " " + OneLine.quoted(text) + ": allowed " + allowed,
        quantity,
        text,
        "",
        allowed);
  }

  static QuantityException unreadable(String quantity, String text, String allowed) {
    String hint = text.indexOf(',') < 0 ? "" : " (write a decimal point, not a comma)";
    return new QuantityException(
        quantity + " " + OneLine.quoted(text) + " cannot be read" + hint + ": allowed " + allowed,
        quantity,
        text,
        "",
        allowed);
  }

  /** A text that a person typed and that has another form than any known. */
  static QuantityException unreadableSuchAs(String quantity, String text, String sample) {
    String hint = text.indexOf(',') < 0 ? "" : " (write a decimal point, not a comma)";
    return new QuantityException(
        quantity
            + " "
            + OneLine.quoted(text)
            + " cannot be read"
            + hint
            + ": write it such as "
            + sample,
        quantity,
        text,
        "",
        sample);
  }

  /** A text that a person typed and that has more than one meaning, or hardly the plain one. */
  static QuantityException ambiguous(String quantity, String text, List<String> readings) {
    String offered = String.join(" or ", readings);
    return new QuantityException(
        quantity
            + " "
            + OneLine.quoted(text)
            + (readings.isEmpty()
                ? ": allowed a size that such a part can have"
                : " is ambiguous: did you mean " + offered + "?"),
        quantity,
        text,
        "",
        offered,
        readings);
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
