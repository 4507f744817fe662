package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import java.util.Map;

/** The two fields that identify a kind of document. */
final class Header {

  private Header() {}

  /** The fields with the one value that each must have, as it is written. */
  static Map<String, String> of(String format, int version) {
    return ImmutableMap.of("format", '"' + format + '"', "schemaVersion", String.valueOf(version));
  }

  static void check(String format, String formatAllowed, int version, int versionAllowed) {
    if (!format.equals(formatAllowed)) {
      throw new IllegalArgumentException(
          "format of another document: allowed \"" + formatAllowed + '"');
    }
    if (version != versionAllowed) {
      throw new IllegalArgumentException(
          "schemaVersion " + version + ": allowed " + versionAllowed);
    }
  }
}
