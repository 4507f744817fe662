package dev.jetting.rules.json;

import dev.jetting.rules.ReportDifference;
import java.util.Map;
import java.util.Objects;

/**
 * The difference of two reports as a document.
 *
 * @param difference what they differ in
 */
record DifferenceDocument(String format, int schemaVersion, ReportDifference difference) {

  static final String FORMAT = "jetting report difference";
  static final int VERSION = 1;

  /** The fields that identify a difference, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  static DifferenceDocument of(ReportDifference difference) {
    return new DifferenceDocument(
        FORMAT, VERSION, Objects.requireNonNull(difference, "difference"));
  }

  DifferenceDocument {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }
}
