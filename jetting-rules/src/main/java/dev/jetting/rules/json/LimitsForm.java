package dev.jetting.rules.json;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Sentence;
import java.util.Map;

/**
 * Limits of rules in JSON.
 *
 * @param limits the numbers by the name of the limit
 */
record LimitsForm(String format, int schemaVersion, Map<String, Coefficient> limits) {

  static final String FORMAT = "jetting rule limits";
  static final int VERSION = 1;
  private static final int LONGEST_NAME = 200;

  /** The fields that identify limits, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  LimitsForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
    limits
        .keySet()
        .forEach(
            name ->
                Checks.line(
                    "", () -> Sentence.of("error.name.name-of-a-limit"), name, LONGEST_NAME));
  }
}
