package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.jetting.rules.text.EachLanguage;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts and kits out of rows of a table. */
class RowsTest {

  private static final PartRows PARTS = PartRows.of(Shop.CATALOGUE);

  @Test
  void rowOfAJet_isTheJet() {
    Part part =
        PARTS.read(
            2,
            Map.of("id", "main 128", "series", "mains", "bore", "128 hundredths", "price", "2.50"));

    assertThat(part.shape()).isEqualTo(new PartShape.JetByBore(JetBore.ofHundredths(128)));
    assertThat(part.description()).isEqualTo("main 128");
    assertThat(part.price()).contains(new BigDecimal("2.5"));
  }

  @Test
  void rowOfAJetOfASeriesByFlow_isToldByItsFlow() {
    Part part = PARTS.read(2, Map.of("id", "f", "series", "flow mains", "flow", "210 cc/min"));

    assertThat(part.shape())
        .isEqualTo(new PartShape.JetByFlow(JetFlow.ofCubicCentimetresPerMinute(210)));
    assertThat(part.price()).isEmpty();
  }

  @Test
  void rowOfANeedle_hasItsTapers() {
    Map<String, String> row = needle();
    row.put("tapers", "4.7 mm 0.029; 20 mm 0.05");

    PartShape.NeedleShape rod = (PartShape.NeedleShape) PARTS.read(3, row).shape();

    assertThat(rod.needle().id()).isEqualTo("slow");
    assertThat(rod.needle().tapers())
        .extracting(taper -> taper.rate())
        .containsExactly(0.029, 0.05);
    assertThat(rod.needle().tapers().get(1).start().millimetres()).isEqualTo(20);
  }

  /** A million blanks between two tapers are gone through once, and a million digits not at all. */
  @Test
  void cellOfAMillionCharacters_isReadOrRefusedAtOnce() {
    Map<String, String> row = needle();
    row.put("tapers", "4.7 mm 0.029" + " ".repeat(1_000_000) + "; 20 mm 0.05 ; ;");
    PartShape.NeedleShape rod = (PartShape.NeedleShape) PARTS.read(3, row).shape();
    assertThat(rod.needle().tapers())
        .extracting(taper -> taper.rate())
        .containsExactly(0.029, 0.05);

    row.put("tapers", "4.7 mm 0.029" + " ".repeat(1_000_000) + "x");
    assertThatExceptionOfType(RowException.class).isThrownBy(() -> PARTS.read(3, row));
    assertThatExceptionOfType(RowException.class)
        .isThrownBy(
            () ->
                PARTS.read(
                    4,
                    Map.of(
                        "id",
                        "main 128",
                        "series",
                        "mains",
                        "bore",
                        "1.28 mm",
                        "price",
                        "0." + "0".repeat(1_000_000))))
        .satisfies(
            e -> {
              assertThat(e.column()).isEqualTo("price");
              assertThat(e.getMessage()).hasSizeLessThan(300);
            });
  }

  @Test
  void blankCells_areAsThoseThatAreNotThere() {
    Map<String, String> row = new HashMap<>();
    PartRows.COLUMNS.forEach(column -> row.put(column, " "));
    row.putAll(Map.of("id", "slide 50", "series", "slides", "cutaway", "50 tenths"));

    assertThat(PARTS.read(4, row).shape()).isEqualTo(new PartShape.Slide(Cutaway.ofMillimetres(5)));
  }

  /** Each part of the shop, written as a row, is the part. */
  @Test
  void everyPartOfTheShop_comesBackFromItsRow() {
    List<Part> read = new ArrayList<>();
    for (Part part : Shop.CATALOGUE.parts()) {
      if (!(part.shape() instanceof PartShape.Valve)) { // whose note does not stand in a row
        read.add(PARTS.read(1, row(part)));
      }
    }

    assertThat(read).hasSizeGreaterThan(20).isSubsetOf(Shop.CATALOGUE.parts());
  }

  private static Map<String, String> row(Part part) {
    Map<String, String> row = new HashMap<>();
    row.put("id", part.id());
    row.put("description", part.description());
    row.put("series", part.series());
    part.price().ifPresent(price -> row.put("price", price.toPlainString()));
    PartShape shape = part.shape();
    if (shape instanceof PartShape.JetByBore jet) {
      row.put("bore", jet.bore().toString());
    } else if (shape instanceof PartShape.JetByFlow jet) {
      row.put("flow", jet.flow().toString());
    } else if (shape instanceof PartShape.NeedleJetShape tube) {
      row.put("bore", tube.needleJet().bore().toString());
      row.put("neck", tube.needleJet().neck().toString());
    } else if (shape instanceof PartShape.Slide slide) {
      row.put("cutaway", slide.cutaway().toString());
    } else if (shape instanceof PartShape.PilotScrew screw) {
      row.put("screwKind", screw.kind().name().toLowerCase(java.util.Locale.ROOT));
      row.put("areaPerTurn", screw.areaPerTurn().toString());
    } else if (shape instanceof PartShape.NeedleShape rod) {
      row.put("cylinder", rod.needle().cylinder().toString());
      row.put("tapers", "5.1 mm 0.0226");
      row.put("grooves", "5");
      row.put("groovePitch", rod.needle().groovePitch().toString());
      row.put("tip", rod.needle().tip().toString());
    }
    return row;
  }

  @Test
  void rowOfAFloatValve_isTheValve() {
    Part part =
        PARTS.read(
            9,
            Map.of(
                "id",
                "valve",
                "series",
                "valves",
                "seat",
                "2 mm",
                "supplyHead",
                "150 mm",
                "discharge",
                "0.6"));

    PartShape.Valve valve = (PartShape.Valve) part.shape();
    assertThat(valve.floatValve().seat().millimetres()).isEqualTo(2);
    assertThat(valve.floatValve().discharge().value()).isEqualTo(0.6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          id => '' => line 7, column id: missing: allowed a text
          series => rods => line 7, column series: "rods": allowed one of pilots, slides, tubes, needles, mains, flow mains, screws, valves, mains of others
          cylinder => 2.5 => line 7, column cylinder: diameter "2.5" cannot be read: allowed a decimal number with mm
          cylinder => '' => line 7, column cylinder: diameter "" cannot be read: allowed a decimal number with mm
          grooves => five => line 7, column grooves: "five": allowed a whole number
          grooves => 12 => line 7, column *: grooves of needle slow 12: allowed 1 to 9
          tapers => 4.7mm => line 7, column tapers: taper "4.7mm": allowed start and rate, such as 3.6 mm 0.028
          tapers => 4.7 mm x => line 7, column tapers: number "x": allowed a decimal number, such as 2.5
          tapers => 4.7 mm 0.9 => line 7, column tapers: rate of a needle's taper in mm/mm 0.9: allowed 0 to 0.5
          price => cheap => line 7, column price: price "cheap": allowed a decimal number, such as 2.5
          price => -1 => line 7, column *: price of part slow -1: allowed 0 to 1000000, at most 4 decimals
          cutaway => 4 mm => line 7, column cutaway: "4 mm" for a part of series needles: allowed in cylinder, tapers, grooves, groovePitch, tip
          colour => red => line 7, column colour: unknown column: allowed id, description, series, price, bore, flow, neck, cutaway, cylinder, tapers, grooves, groovePitch, tip, screwKind, areaPerTurn, seat, supplyHead, discharge
          """)
  void spoiltRow_isRefusedByLineAndColumn(String column, String value, String message) {
    RowException refused = refused(column, value);

    assertThat(refused).hasMessage(message);
    assertThat(refused.line()).isEqualTo(7);
    EachLanguage.of(refused);
  }

  private static RowException refused(String column, String value) {
    Map<String, String> row = needle();
    row.put(column, value);
    return catchThrowableOfType(RowException.class, () -> PARTS.read(7, row));
  }

  /** What a parts list is refused for, in all languages, to be read. */
  @Test
  void everyRefusalOfAPart_isOnThePage() throws IOException {
    Set<String> page = new TreeSet<>();
    for (List<String> cell :
        List.of(
            List.of("id", ""),
            List.of("series", "rods"),
            List.of("cylinder", "2.5"),
            List.of("grooves", "five"),
            List.of("grooves", "12"),
            List.of("tapers", "4.7mm"),
            List.of("tapers", "4.7 mm x"),
            List.of("price", "cheap"),
            List.of("price", "-1"),
            List.of("cutaway", "4 mm"),
            List.of("colour", "red"))) {
      page.add(EachLanguage.of(refused(cell.get(0), cell.get(1))));
    }
    EachLanguage.assertPage(
        Path.of("src/test/resources/dev/jetting/rules/text/row-errors.txt"), page);
  }

  /** A character may be two units long; half of one can be written nowhere. */
  @Test
  void longCell_isCutBetweenCharacters() {
    Map<String, String> row = needle();
    row.put("grooves", "5" + "🛵".repeat(70));

    assertThatExceptionOfType(RowException.class)
        .isThrownBy(() -> PARTS.read(7, row))
        .withMessageContaining("\"5" + "🛵".repeat(59) + "…\": allowed a whole number");
  }

  private static Map<String, String> needle() {
    return new HashMap<>(
        Map.of(
            "id",
            "slow",
            "series",
            "needles",
            "cylinder",
            "2.5 mm",
            "tapers",
            "5.1 mm 0.0226",
            "grooves",
            "5",
            "groovePitch",
            "0.9 mm",
            "tip",
            "45 mm"));
  }

  @Test
  void rowOfAKit_isTheKit() {
    assertThat(KitRows.read(2, kitRow())).isEqualTo(Shop.kit());
  }

  @Test
  void rowOfAKitWithScrewAndValve_namesThem() {
    Map<String, String> row = kitRow();
    row.put("fittedScrew", "fine screw");
    row.put("floatValve", "big valve");

    Recommendation read = KitRows.read(2, row).recommendations().get(0);

    assertThat(read.fittedScrew()).contains("fine screw");
    assertThat(read.floatValve()).contains("big valve");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          parts => '' => line 3, column parts: missing: allowed a text
          screwKind => fuel => line 3, column screwKind: "fuel": allowed mixture, air
          clip => 9 of 5 from top => line 3, column clip: clip position 9 of 5 from top: allowed from 1 to 5
          mainJet => ' ' => line 3, column mainJet: missing: allowed a text
          """)
  void spoiltKitRow_isRefusedByLineAndColumn(String column, String value, String message) {
    Map<String, String> row = kitRow();
    row.put(column, value);

    assertThatExceptionOfType(RowException.class)
        .isThrownBy(() -> KitRows.read(3, row))
        .withMessage(message)
        .satisfies(
            e -> {
              assertThat(e.column()).isEqualTo(column);
              assertThat(e.value()).isEqualTo(value.strip());
              EachLanguage.of(e);
            });
  }

  private static Map<String, String> kitRow() {
    Kit kit = Shop.kit();
    Map<String, String> row = new HashMap<>();
    row.put("id", kit.id());
    row.put("description", kit.description());
    row.put("family", kit.family());
    row.put("parts", String.join("; ", kit.parts()));
    row.put("market", kit.market());
    row.put("machine", "standard");
    row.put("pilotJet", "pilot 55");
    row.put("screwKind", "mixture");
    row.put("screwTurns", "1 1/2");
    row.put("slide", "slide 40");
    row.put("idleLift", "2 mm");
    row.put("needleJet", "tube 266");
    row.put("needle", "needle");
    row.put("clip", "2 of 5 from top");
    row.put("mainJet", "main 126");
    return row;
  }

  /** A list may say what an assessment can compute with, not what a quantity may be. */
  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          mains => bore => 9 mm => 0.3 mm to 5 mm
          pilots => bore => 0.05 mm => 0.1 mm to 3 mm
          slides => cutaway => 45 mm => 0 mm to 40 mm
          tubes => bore => 7 mm => 0.5 mm to 6 mm
          """)
  void sizeThatNoAssessmentComputesWith_isRefusedByItsColumn(
      String series, String column, String size, String allowed) {
    assertThatExceptionOfType(RowException.class)
        .isThrownBy(() -> PARTS.read(3, Map.of("id", "odd", "series", series, column, size)))
        .withMessage("line 3, column %s: %s: allowed %s", column, size, allowed)
        .satisfies(e -> assertThat(e.column()).isEqualTo(column))
        .satisfies(EachLanguage::of);
  }

  @Test
  void idThatSteersATerminal_isRefusedByItsColumn() {
    assertThatExceptionOfType(RowException.class)
        .isThrownBy(
            () -> PARTS.read(3, Map.of("id", "a\u202eb", "series", "mains", "bore", "1 mm")))
        .withMessage(
            "line 3, column id: id of the part with the character U+0202E:"
                + " allowed one line of visible characters");
  }

  @Test
  void flowOfABoreThatNoAssessmentComputesWith_isRefusedWithTheBore() {
    assertThatExceptionOfType(RowException.class)
        .isThrownBy(
            () -> PARTS.read(3, Map.of("id", "f", "series", "flow mains", "flow", "3000 cc/min")))
        .withMessageStartingWith("line 3, column flow: 3000 cm³/min, a bore of ")
        .withMessageEndingWith(" mm: allowed a bore of 0.3 mm to 5 mm")
        .satisfies(EachLanguage::of);
  }
}
