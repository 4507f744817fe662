package dev.jetting.rules.kit;

import java.io.Serial;

/**
 * A row of a list that is no part or no kit. It has the line, the column, what stands there, and
 * what is allowed. The message is one line for people; programs read the accessors.
 */
public final class RowException extends IllegalArgumentException {

  @Serial private static final long serialVersionUID = 1L;

  private final long line;
  private final String column;
  private final String value;

  RowException(long line, String column, String value, String problem) {
    super("line " + line + ", column " + column + ": " + problem);
    this.line = line;
    this.column = column;
    this.value = value;
  }

  /** {@return the line, as the caller counted it} */
  public long line() {
    return line;
  }

  /** {@return the name of the column; {@code *} where it is the row as a whole} */
  public String column() {
    return column;
  }

  /** {@return what stands there, as written; empty if nothing does} */
  public String value() {
    return value;
  }
}
