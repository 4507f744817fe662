package dev.jetting.rules.json;

import com.google.common.collect.Sets;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A tuning session in JSON, with its header.
 *
 * @param format always {@code jetting tuning session}
 * @param schemaVersion always 1
 * @param sheet the sheet it began with
 * @param checks what was looked at before the first test; left out where nothing was
 * @param steps the setups tried, the first being the sheet's own
 * @param tuner what the advice rested on; left out where the document is of the session alone
 */
record SessionForm(
    String format,
    int schemaVersion,
    SetupSheet sheet,
    Optional<List<Check>> checks,
    List<TuningStep> steps,
    Optional<TunerForm> tuner) {

  static final String FORMAT = "jetting tuning session";
  static final int VERSION = 1;

  /** The fields that identify a session, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  SessionForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }

  static SessionForm of(TuningSession session) {
    return of(session, Optional.empty());
  }

  static SessionForm of(TuningSession session, Optional<TunerForm> tuner) {
    return new SessionForm(
        FORMAT,
        VERSION,
        session.sheet(),
        Optional.of(List.copyOf(session.checks())).filter(checks -> !checks.isEmpty()),
        session.steps(),
        tuner);
  }

  TuningSession session() {
    return new TuningSession(sheet, Sets.immutableEnumSet(checks.orElse(List.of())), steps);
  }
}
