package dev.jetting.rules.kit;

import dev.jetting.core.parts.Screw;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Kits as a table: from a row, its cells by the names of their columns, to a kit that is sold for
 * one machine. Reading the file is the caller's business.
 *
 * <p>Columns: {@code id}, {@code description}, {@code family}, {@code parts} (ids with semicolons
 * between), {@code market}, {@code machine}, {@code pilotJet}, {@code screwKind}, {@code
 * screwTurns}, {@code slide}, {@code idleLift}, {@code needleJet}, {@code needle}, {@code clip},
 * {@code mainJet}, {@code fittedScrew} and {@code floatValve}; all but {@code description} and the
 * last two must be filled. Float levels have a field in JSON only.
 */
public final class KitRows {

  /** The columns, in the order in which a list is best written. */
  public static final List<String> COLUMNS =
      List.of(
          "id",
          "description",
          "family",
          "parts",
          "market",
          "machine",
          "pilotJet",
          "screwKind",
          "screwTurns",
          "slide",
          "idleLift",
          "needleJet",
          "needle",
          "clip",
          "mainJet",
          "fittedScrew",
          "floatValve");

  private KitRows() {}

  /**
   * Reads one row.
   *
   * @param line the line in the file, as errors shall name it
   * @param cells the cells by the names of their columns
   * @return the kit
   * @throws RowException if the row is no kit
   */
  public static Kit read(long line, Map<String, String> cells) {
    Row row = new Row(line, Map.copyOf(cells), COLUMNS);
    String id = row.required("id");
    row.required("parts");
    Recommendation recommendation = row.made("*", () -> recommendation(row));
    return row.made(
        "*",
        () ->
            new Kit(
                id,
                row.text("description").orElse(id),
                row.required("family"),
                row.list("parts"),
                row.required("market"),
                List.of(recommendation)));
  }

  private static Recommendation recommendation(Row row) {
    return new Recommendation(
        row.required("machine"),
        row.required("pilotJet"),
        new Screw(
            row.constant("screwKind", ScrewKind.class),
            row.required("screwTurns", ScrewTurns::parse)),
        row.required("slide"),
        row.required("idleLift", Length::parse),
        row.required("needleJet"),
        row.required("needle"),
        row.required("clip", ClipPosition::parse),
        row.required("mainJet"),
        row.text("fittedScrew"),
        row.text("floatValve"),
        Optional.empty());
  }
}
