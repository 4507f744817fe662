package dev.jetting.rules.json;

import java.io.Serial;

/**
 * A JSON document that is no setup sheet or no report: what is wrong where, and what is allowed
 * there. The message is one line for people; programs read the accessors.
 *
 * <p>Unchecked, as everything that this library throws at bad input. Reading a sheet is the {@code
 * parse} of a large value. A caller that reads its own resource need not handle what cannot happen.
 * A program that reads what others wrote catches it.
 *
 * <p>No text quoted from the document is longer than about 80 characters, and none of it can break
 * the line.
 */
public final class JsonInputException extends IllegalArgumentException {

  @Serial private static final long serialVersionUID = 1L;

  private final String path;
  private final String value;
  private final String allowed;
  private final int line;
  private final int column;

  JsonInputException(
      String path, String problem, String value, String allowed, int line, int column) {
    super(path + ": " + problem + (allowed.isEmpty() ? "" : ": allowed " + allowed));
    this.path = path;
    this.value = value;
    this.allowed = allowed;
    this.line = line;
    this.column = column;
  }

  /**
   * Where in the document's tree.
   *
   * @return a path such as {@code $.setting.needleJet.bore} or {@code
   *     $.riding.profile.points[2].weight}; {@code $} for the whole document
   */
  public String path() {
    return path;
  }

  /**
   * What stands there.
   *
   * @return the text, number or word as written, shortened; {@code an object} or {@code an array};
   *     empty if nothing does or the document cannot be read there
   */
  public String value() {
    return value;
  }

  /**
   * What may stand there.
   *
   * @return a phrase in English; empty where the message says it all
   */
  public String allowed() {
    return allowed;
  }

  /** {@return the line in the document, from 1} */
  public int line() {
    return line;
  }

  /** {@return the column in the line, in UTF-16 units from 1} */
  public int column() {
    return column;
  }
}
