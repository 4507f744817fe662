package dev.jetting.rules.json;

import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.kit.Machine;
import dev.jetting.rules.kit.Market;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartSeries;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A catalogue in JSON, with its header.
 *
 * @param title a line for people
 * @param families carburettors that take the same parts
 * @param series the series of parts: what a family takes, it takes by series
 * @param parts the parts, each of one of these series; more may come in parts lists
 * @param machines the machines that kits are sold for
 * @param markets where kits are sold: air, fuels and riding
 */
record CatalogueForm(
    String format,
    int schemaVersion,
    String title,
    List<Family> families,
    List<PartSeries> series,
    List<Part> parts,
    Optional<List<Machine>> machines,
    Optional<List<Market>> markets) {

  static final String FORMAT = "jetting catalogue";
  static final int VERSION = 1;

  /** The fields that identify a catalogue, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  CatalogueForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
  }

  static CatalogueForm of(Catalogue catalogue) {
    return new CatalogueForm(
        FORMAT,
        VERSION,
        catalogue.title(),
        catalogue.families(),
        catalogue.series(),
        catalogue.parts(),
        Optional.of(catalogue.machines()).filter(list -> !list.isEmpty()),
        Optional.of(catalogue.markets()).filter(list -> !list.isEmpty()));
  }

  Catalogue catalogue() {
    return Catalogue.of(
        title, families, series, parts, machines.orElse(List.of()), markets.orElse(List.of()));
  }
}
