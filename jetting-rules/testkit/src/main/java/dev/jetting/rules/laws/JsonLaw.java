package dev.jetting.rules.laws;

import dev.jetting.rules.Report;
import dev.jetting.rules.json.ReportJson;

/** The report through JSON and back. */
final class JsonLaw {

  private JsonLaw() {}

  static LawVerdict check(Experiment experiment) {
    Report report = experiment.candidate().rulebook().evaluate(experiment.before());
    String json;
    Report read;
    try {
      json = ReportJson.write(report);
      read = ReportJson.read(json);
    } catch (IllegalArgumentException e) {
      return LawVerdict.violated("", "the report cannot be read back: " + e.getMessage());
    }
    if (!read.equals(report)) {
      return LawVerdict.violated("", "the report, read back, is another");
    }
    return ReportJson.write(read).equals(json)
        ? LawVerdict.held()
        : LawVerdict.violated("", "the report, read back, is written otherwise");
  }
}
