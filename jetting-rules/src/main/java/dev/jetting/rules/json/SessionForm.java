package dev.jetting.rules.json;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import java.util.List;
import java.util.Map;

/** A tuning session in JSON, with its header. */
record SessionForm(String format, int schemaVersion, SetupSheet sheet, List<TuningStep> steps) {

  static final String FORMAT = "jetting tuning session";
  static final int VERSION = 1;

  /** The fields that tell a session from other documents, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  SessionForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }

  static SessionForm of(TuningSession session) {
    return new SessionForm(FORMAT, VERSION, session.sheet(), session.steps());
  }

  TuningSession session() {
    return new TuningSession(sheet, steps);
  }
}
