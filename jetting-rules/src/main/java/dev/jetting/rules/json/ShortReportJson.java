package dev.jetting.rules.json;

import dev.jetting.rules.Report;
import dev.jetting.rules.text.Wording;
import java.util.Objects;

/**
 * Reports in short as JSON, for a page that shows one: the verdict, the worst spot of each day, the
 * findings and the plan in words, and the columns of a chart. A few kilobytes on one line.
 *
 * <p>The schema is {@link JsonSchemas#shortReport()}. Not for keeping or comparing reports, because
 * it is not read back: {@link ReportJson} has everything.
 */
public final class ShortReportJson {

  private static final Codec<ShortReportForm> CODEC =
      new Codec<>(
          ShortReportForm.class,
          JettingModule.ofReader(),
          ShortReportForm.HEADER,
          new DocumentLimits(8_000_000, 16));

  private ShortReportJson() {}

  /**
   * Writes a report in short, in English.
   *
   * @param report the report; not null
   * @return the document on one line, without a line break
   */
  public static String write(Report report) {
    return write(report, Wording.english());
  }

  /**
   * Writes a report in short.
   *
   * @param report the report; not null
   * @param wording the words of its language; not null
   * @return the document on one line, without a line break
   */
  public static String write(Report report, Wording wording) {
    Objects.requireNonNull(report, "report");
    Objects.requireNonNull(wording, "wording");
    return CODEC.writeLine(ShortReportForm.of(report, wording));
  }
}
