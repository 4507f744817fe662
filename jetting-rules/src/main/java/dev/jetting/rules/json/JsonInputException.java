package dev.jetting.rules.json;

import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.io.Serial;
import org.jspecify.annotations.Nullable;

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
public final class JsonInputException extends IllegalArgumentException implements Refusal {

  @Serial private static final long serialVersionUID = 1L;

  private static final String REFUSED = "error.allowed";

  private final String path;
  private final String value;
  private final String allowed;
  private final String problem;
  private final int line;
  private final int column;

  /** Not written with the exception, whose line is. */
  private final transient @Nullable Sentence sentence;

  JsonInputException(String path, Sentence said, String value, int line, int column) {
    this(
        Sentence.of("error.at-path").with("path", path).with("problem", said),
        path,
        value,
        said.key().equals(REFUSED) ? said.part("allowed").map(Sentence::toString).orElse("") : "",
        said.key().equals(REFUSED)
            ? said.part("problem").map(Sentence::toString).orElse("")
            : said.toString(),
        line,
        column);
  }

  private JsonInputException(
      Sentence sentence,
      String path,
      String value,
      String allowed,
      String problem,
      int line,
      int column) {
    super(sentence.toString());
    this.sentence = sentence;
    this.path = path;
    this.value = value;
    this.allowed = allowed;
    this.problem = problem;
    this.line = line;
    this.column = column;
  }

  /** {@return the place, what is wrong there, and what is allowed} */
  @Override
  public Sentence sentence() {
    return sentence == null ? Sentence.plain(String.valueOf(getMessage())) : sentence;
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
   *     empty if nothing does or the document cannot be read there, which {@link #problem()} says
   */
  public String value() {
    return value;
  }

  /**
   * What is wrong there, without the place and without what is allowed.
   *
   * @return a phrase in English, such as {@code missing} or {@code unknown field "nek"}; the value
   *     where that is what is wrong
   */
  public String problem() {
    return problem;
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
