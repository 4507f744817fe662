package dev.jetting.rules.kit;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.Sentence;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * Parts lists as tables: from a row, its cells by the names of their columns, to a part. Reading
 * the file is the caller's business.
 *
 * <p>Columns of every part: {@code id}, {@code description}, {@code series}, {@code price}. By what
 * the part is, it has more:
 *
 * <ul>
 *   <li>jets: {@code bore} or {@code flow}
 *   <li>needle jets: {@code bore} and {@code neck}, 0 mm unless given
 *   <li>slides: {@code cutaway}
 *   <li>needles: {@code cylinder}, {@code tapers}, {@code grooves}, {@code groovePitch}, {@code
 *       tip}
 *   <li>screws: {@code screwKind} and {@code areaPerTurn}
 *   <li>float valves: {@code seat}, {@code supplyHead} and {@code discharge}
 * </ul>
 *
 * <p>Quantities have their units; tapers are a start and a rate each, such as {@code 3.6 mm 0.028;
 * 12 mm 0.05}. A cell that is blank is as one that is not there; one that the part has no use for
 * is refused.
 */
public final class PartRows {

  /** The columns, in the order in which a list is best written. */
  public static final List<String> COLUMNS =
      List.of(
          "id",
          "description",
          "series",
          "price",
          "bore",
          "flow",
          "neck",
          "cutaway",
          "cylinder",
          "tapers",
          "grooves",
          "groovePitch",
          "tip",
          "screwKind",
          "areaPerTurn",
          "seat",
          "supplyHead",
          "discharge");

  private static final List<String> COMMON = COLUMNS.subList(0, 4);

  /** As in JSON; a number of a million digits would take seconds to read. */
  private static final int LONGEST_NUMBER = 100;

  private final Map<String, PartSeries> series;

  private PartRows(Map<String, PartSeries> series) {
    this.series = series;
  }

  /**
   * A reader of parts lists for a catalogue.
   *
   * @param catalogue the catalogue whose series the parts are of
   * @return the reader
   */
  public static PartRows of(Catalogue catalogue) {
    return new PartRows(catalogue.seriesById());
  }

  /**
   * Reads one row.
   *
   * @param line the line in the file, as errors shall name it
   * @param cells the cells by the names of their columns
   * @return the part
   * @throws RowException if the row is no part of one of the series
   */
  public Part read(long line, Map<String, String> cells) {
    Row row = new Row(line, Map.copyOf(cells), COLUMNS);
    String id = row.required("id");
    PartSeries of = series.get(row.required("series"));
    if (of == null) {
      throw row.refused(
          "series",
          Sentence.refused(
              Sentence.plain(Row.quoted(row.required("series"))),
              Sentence.of("error.one-of").with("names", String.join(", ", series.keySet()))));
    }
    List<String> own = columns(of);
    COLUMNS.stream()
        .filter(column -> !COMMON.contains(column) && !own.contains(column))
        .filter(column -> row.text(column).isPresent())
        .findFirst()
        .ifPresent(
            column -> {
              throw row.refused(
                  column,
                  Sentence.refused(
                      Sentence.of("error.column-for")
                          .with("value", Row.quoted(row.required(column)))
                          .with("series", of.id()),
                      Sentence.of("error.cell-in").with("columns", String.join(", ", own))));
            });
    PartShape shape = shape(row, id, of);
    row.inRange(() -> PartRanges.check("", of, shape));
    return row.made(
        "*",
        () ->
            Part.builder()
                .id(id)
                .description(row.text("description").orElse(id))
                .series(of.id())
                .shape(shape)
                .price(row.optional("price", PartRows::price))
                .build());
  }

  private static List<String> columns(PartSeries series) {
    return switch (series.kind()) {
      case PILOT_JET, MAIN_JET -> List.of(series.bench().isPresent() ? "flow" : "bore");
      case NEEDLE_JET -> List.of("bore", "neck");
      case SLIDE -> List.of("cutaway");
      case NEEDLE -> List.of("cylinder", "tapers", "grooves", "groovePitch", "tip");
      case SCREW -> List.of("screwKind", "areaPerTurn");
      case FLOAT_VALVE -> List.of("seat", "supplyHead", "discharge");
    };
  }

  private static PartShape shape(Row row, String id, PartSeries series) {
    return switch (series.kind()) {
      case PILOT_JET, MAIN_JET ->
          series.bench().isPresent()
              ? new PartShape.JetByFlow(row.required("flow", JetFlow::parse))
              : new PartShape.JetByBore(row.required("bore", JetBore::parse));
      case NEEDLE_JET ->
          new PartShape.NeedleJetShape(
              new NeedleJet(
                  row.required("bore", Diameter::parse),
                  row.optional("neck", Length::parse).orElse(Length.ofMillimetres(0))));
      case SLIDE -> new PartShape.Slide(row.required("cutaway", Cutaway::parse));
      case NEEDLE -> new PartShape.NeedleShape(row.made("*", () -> needle(row, id)));
      case SCREW ->
          row.made(
              "areaPerTurn",
              () ->
                  new PartShape.PilotScrew(
                      row.constant("screwKind", ScrewKind.class),
                      row.required("areaPerTurn", Area::parse)));
      case FLOAT_VALVE -> new PartShape.Valve(row.made("*", () -> valve(row)));
    };
  }

  private static Needle needle(Row row, String id) {
    return Needle.builder()
        .id(id)
        .cylinder(row.required("cylinder", Diameter::parse))
        .tapers(
            row.list("tapers").stream()
                .map(taper -> row.made("tapers", () -> taper(taper)))
                .toList())
        .grooves(row.whole("grooves"))
        .groovePitch(row.required("groovePitch", Length::parse))
        .tip(row.required("tip", Length::parse))
        .build();
  }

  private static Taper taper(String text) {
    int at = text.lastIndexOf(' ');
    if (at < 0) {
      throw InvalidValueException.of(
          Sentence.of("error.name.taper"),
          Row.quoted(text),
          Sentence.of("error.start-and-rate").with("sample", "3.6 mm 0.028"));
    }
    return new Taper(Length.parse(text.substring(0, at)), number(text.substring(at + 1)));
  }

  private static FloatValve valve(Row row) {
    return new FloatValve(
        row.required("seat", Diameter::parse),
        row.required("supplyHead", Length::parse),
        Coefficient.assumed(
            row.required("discharge", PartRows::number), "1", "as the parts list states"));
  }

  private static BigDecimal price(String text) {
    return decimal(text, "error.name.price");
  }

  private static double number(String text) {
    return decimal(text, "error.name.number").doubleValue();
  }

  private static BigDecimal decimal(String text, String key) {
    try {
      if (text.length() > LONGEST_NUMBER) {
        throw new NumberFormatException("longer than a number of a JSON document");
      }
      return new BigDecimal(text);
    } catch (NumberFormatException e) {
      throw InvalidValueException.of(
              Sentence.of(key),
              Row.quoted(text),
              Sentence.of("error.decimal-such-as").with("sample", "2.5"))
          .causedBy(e);
    }
  }
}
