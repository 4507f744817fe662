package dev.jetting.rules.json;

import dev.jetting.rules.kit.KitWaiver;
import java.util.List;
import java.util.Map;

/**
 * Waivers of kits in JSON.
 *
 * @param waivers the waivers, in the order in which they are tried
 */
record KitWaiversForm(String format, int schemaVersion, List<KitWaiver> waivers) {

  static final String FORMAT = "jetting kit waivers";
  static final int VERSION = 1;

  /** The fields that identify waivers of kits, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  static KitWaiversForm of(List<KitWaiver> waivers) {
    return new KitWaiversForm(FORMAT, VERSION, List.copyOf(waivers));
  }

  KitWaiversForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }
}
