package dev.jetting.rules.json;

import dev.jetting.rules.Report;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Map;
import java.util.Objects;

/**
 * Reports as JSON, for programs that show, keep or compare them.
 *
 * <p>Each thing stands once. Fields have the names of the components of {@link Report} and the
 * records below it; {@code schemaVersion} is always {@code 1}. A profile is columns of numbers, one
 * number for each opening. {@code findings} gives the order of danger by places among the {@code
 * results}. The setting after a change states what differs from {@code sheet}, which is a setup
 * sheet as {@link SheetJson} writes it.
 *
 * <p>A computed quantity with a unit is an object such as {@code {"value": 8334.9, "unit": "Pa"}},
 * one without a unit a plain number. What people state is a text with its unit.
 *
 * <p>Limits: 8 000 000 characters, nested 200 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class ReportJson {

  private static final Codec<Report> CODEC =
      new Codec<>(
          Report.class,
          JettingModule.ofReader(),
          Map.of("schemaVersion", String.valueOf(Report.SCHEMA_VERSION)),
          new DocumentLimits(8_000_000, 200));

  private ReportJson() {}

  /**
   * Reads a report.
   *
   * @param json the document; not null
   * @return the report
   * @throws JsonInputException if the document is no report of this version
   */
  public static Report read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a report.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the report
   * @throws JsonInputException if the document is no report of this version
   * @throws IOException if the reader fails
   */
  public static Report read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a report.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the report
   * @throws JsonInputException if the document is no report of this version
   * @throws IOException if the stream fails
   */
  public static Report read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a report.
   *
   * @param report the report; not null
   * @return the document, lines ended by {@code \n}; the same for equal reports, and read back to
   *     an equal one if its ids and texts are within the limits
   * @throws IllegalArgumentException if a number in the report is not finite
   */
  public static String write(Report report) {
    return CODEC.write(Objects.requireNonNull(report, "report"));
  }

  /**
   * Writes a report on one line, for the way from one program to another.
   *
   * @param report the report; not null
   * @return the document without any line break, not even at its end
   * @throws IllegalArgumentException if a number in the report is not finite
   */
  public static String writeLine(Report report) {
    return CODEC.writeLine(Objects.requireNonNull(report, "report"));
  }
}
