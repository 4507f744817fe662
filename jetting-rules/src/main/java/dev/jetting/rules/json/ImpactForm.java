package dev.jetting.rules.json;

import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.SheetImpact;
import java.util.Map;
import java.util.Optional;

/**
 * What a change of the rules does to a sheet, in JSON.
 *
 * @param number number of the sheet in the stream, from 1
 * @param title title of the sheet; empty if it could not be read
 * @param difference what the two reports differ in; left out if there is a problem
 * @param problem why the sheet could not be read or assessed; empty if it was
 */
record ImpactForm(
    String format,
    int schemaVersion,
    long number,
    String title,
    Optional<ReportDifference> difference,
    String problem) {

  static final String FORMAT = "jetting sheet impact";
  static final int VERSION = 1;

  /** The fields that identify an impact, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  ImpactForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }

  static ImpactForm of(SheetImpact impact) {
    return new ImpactForm(
        FORMAT, VERSION, impact.number(), impact.title(), impact.difference(), impact.problem());
  }

  SheetImpact impact() {
    return new SheetImpact(number, title, difference, problem);
  }
}
