package dev.jetting.rules.kit;

import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.io.Serial;
import org.jspecify.annotations.Nullable;

/**
 * A row of a list that is no part or no kit. It has the line, the column, what stands there, and
 * what is allowed. The message is one line for people; programs read the accessors.
 */
public final class RowException extends IllegalArgumentException implements Refusal {

  @Serial private static final long serialVersionUID = 1L;

  private final long line;
  private final String column;
  private final String value;

  /** Not written with the exception, whose line is. */
  private final transient @Nullable Sentence sentence;

  RowException(long line, String column, String value, Sentence problem) {
    this(
        Sentence.of("error.at-row")
            .with("line", line)
            .with("column", column)
            .with("problem", problem),
        line,
        column,
        value);
  }

  private RowException(Sentence sentence, long line, String column, String value) {
    super(sentence.toString());
    this.sentence = sentence;
    this.line = line;
    this.column = column;
    this.value = value;
  }

  /** {@return line and column, what is wrong there, and what is allowed} */
  @Override
  public Sentence sentence() {
    return sentence == null ? Sentence.plain(String.valueOf(getMessage())) : sentence;
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
