package dev.jetting.rules.json;

import dev.jetting.rules.Waiver;
import java.util.List;
import java.util.Map;

/**
 * Waivers of findings in JSON.
 *
 * @param waivers the waivers, in the order in which they are tried
 */
record WaiversForm(String format, int schemaVersion, List<Waiver> waivers) {

  static final String FORMAT = "jetting waivers";
  static final int VERSION = 1;

  /** The fields that identify waivers, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  static WaiversForm of(List<Waiver> waivers) {
    return new WaiversForm(FORMAT, VERSION, List.copyOf(waivers));
  }

  WaiversForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }
}
