package dev.jetting.rules.json;

import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.Recommendation;
import java.util.List;
import java.util.Map;

/** A kit in JSON, with its header. */
record KitForm(
    String format,
    int schemaVersion,
    String id,
    String description,
    String family,
    List<String> parts,
    String market,
    List<Recommendation> recommendations) {

  static final String FORMAT = "jetting kit";
  static final int VERSION = 1;

  /** The fields that identify a kit, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  KitForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }

  static KitForm of(Kit kit) {
    return new KitForm(
        FORMAT,
        VERSION,
        kit.id(),
        kit.description(),
        kit.family(),
        kit.parts(),
        kit.market(),
        kit.recommendations());
  }

  Kit kit() {
    return Kit.builder()
        .id(id)
        .description(description)
        .family(family)
        .parts(parts)
        .market(market)
        .recommendations(recommendations)
        .build();
  }
}
