package dev.jetting.rules.json;

import dev.jetting.rules.ReportDifference;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * What two reports differ in, as JSON. Findings are written as {@link ReportJson} writes them.
 *
 * <p>The schema is {@link JsonSchemas#reportDifference()}.
 *
 * <p>Limits: 8 000 000 characters, nested 32 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class ReportDifferenceJson {

  private static final Codec<DifferenceDocument> CODEC =
      new Codec<>(
          DifferenceDocument.class,
          JettingModule.ofReader(),
          DifferenceDocument.HEADER,
          new DocumentLimits(8_000_000, 32));

  private ReportDifferenceJson() {}

  /**
   * Reads the difference of two reports.
   *
   * @param json the document; not null
   * @return the difference
   * @throws JsonInputException if the document is another one
   */
  public static ReportDifference read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json")).difference();
  }

  /**
   * Reads the difference of two reports.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the difference
   * @throws JsonInputException if the document is another one
   * @throws IOException if the reader fails
   */
  public static ReportDifference read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads the difference of two reports.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the difference
   * @throws JsonInputException if the document is another one
   * @throws IOException if the stream fails
   */
  public static ReportDifference read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Writes the difference of two reports.
   *
   * @param difference the difference; not null
   * @return the document, lines ended by {@code \n}; the same for equal ones, and read back to an
   *     equal one
   */
  public static String write(ReportDifference difference) {
    return CODEC.write(DifferenceDocument.of(difference));
  }

  /**
   * Writes the difference of two reports on one line.
   *
   * @param difference the difference; not null
   * @return the document without any line break, not even at its end
   */
  public static String writeLine(ReportDifference difference) {
    return CODEC.writeLine(DifferenceDocument.of(difference));
  }
}
