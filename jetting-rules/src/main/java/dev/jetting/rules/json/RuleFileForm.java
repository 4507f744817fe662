package dev.jetting.rules.json;

import java.util.List;
import java.util.Map;

/**
 * A rule file in JSON.
 *
 * @param name name of the rulebook
 * @param version version of the rulebook, which every report names
 * @param rules the rules, 1 to 200
 */
record RuleFileForm(
    String format, int schemaVersion, String name, String version, List<RuleForm> rules) {

  static final String FORMAT = "jetting rule file";
  static final int VERSION = 1;

  /** The fields that identify a rule file, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  RuleFileForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }
}
