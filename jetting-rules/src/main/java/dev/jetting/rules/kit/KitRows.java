package dev.jetting.rules.kit;

import dev.jetting.core.parts.Screw;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.List;
import java.util.Map;

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
            Kit.builder()
                .id(id)
                .description(row.text("description").orElse(id))
                .family(row.required("family"))
                .parts(row.list("parts"))
                .market(row.required("market"))
                .recommendations(List.of(recommendation))
                .build());
  }

  private static Recommendation recommendation(Row row) {
    return Recommendation.builder()
        .machine(row.required("machine"))
        .pilotJet(row.required("pilotJet"))
        .screw(
            new Screw(
                row.constant("screwKind", ScrewKind.class),
                row.required("screwTurns", ScrewTurns::parse)))
        .slide(row.required("slide"))
        .idleLift(row.required("idleLift", Length::parse))
        .needleJet(row.required("needleJet"))
        .needle(row.required("needle"))
        .clip(row.required("clip", ClipPosition::parse))
        .mainJet(row.required("mainJet"))
        .fittedScrew(row.text("fittedScrew"))
        .floatValve(row.text("floatValve"))
        .build();
  }
}
