package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
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
      throw InvalidValueException.worded(
          Sentence.of("error.other-format"), Sentence.plain('"' + formatAllowed + '"'));
    }
    if (version != versionAllowed) {
      throw InvalidValueException.of(
          Sentence.of("error.name.schema-version"),
          version,
          Sentence.plain(String.valueOf(versionAllowed)));
    }
  }
}
