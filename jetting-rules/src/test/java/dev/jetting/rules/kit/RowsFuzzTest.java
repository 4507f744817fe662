package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.KitJson;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Fuzzes the readers of rows: one line of the text is a column, a bar and what stands in it. */
class RowsFuzzTest {

  private static final PartRows PARTS = PartRows.of(Shop.CATALOGUE);

  static Stream<byte[]> seeds() {
    return Stream.of(
            "id|main 128\nseries|mains\nbore|128 hundredths\nprice|2.50",
            "id|f\nseries|flow mains\nflow|210 cc/min\ndescription|by flow",
            "id|t\nseries|tubes\nbore|2.66 mm\nneck|3 mm",
            "id|s\nseries|slides\ncutaway|4.0 mm",
            "id|n\nseries|needles\ncylinder|2.5 mm\ntapers|3.6 mm 0.028; 12 mm 0.05\ngrooves|5"
                + "\ngroovePitch|1 mm\ntip|52 mm",
            "id|p\nseries|screws\nscrewKind|mixture\nareaPerTurn|0.11 mm²",
            "id|v\nseries|valves\nseat|2 mm\nsupplyHead|150 mm\ndischarge|0.6",
            "id|k\nfamily|slide 30\nparts|pilot 50; main 126\nmarket|seaside\nmachine|standard"
                + "\npilotJet|pilot 50\nscrewKind|air\nscrewTurns|1 1/2 turns\nslide|slide 40"
                + "\nidleLift|1 mm\nneedleJet|tube 266\nneedle|needle\nclip|3 of 5 from top"
                + "\nmainJet|main 126\nfittedScrew|p\nfloatValve|v",
            "id|\u202e\u001b[31m\nseries|mains\nbore|1e9999 mm",
            "id|x\nseries|mains\nbore|1 mm\nprice|1e-2147483647",
            "")
        .map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "\\x0Aid|",
    "\\x0Aseries|",
    "\\x0Abore|",
    "\\x0Aflow|",
    "\\x0Aprice|",
    "\\x0Atapers|",
    "\\x0Agrooves|",
    "\\x0Aclip|",
    "mains",
    "needles",
    "tubes",
    "slides",
    "screws",
    "valves",
    "flow mains",
    " mm",
    " hundredths"
  })
  @FuzzTest // Jazzer wants it last
  void read_ofAnyRow_readsOrRefuses(byte[] text) {
    Map<String, String> cells = cells(new String(text, StandardCharsets.UTF_8));
    try {
      Catalogue more = Shop.CATALOGUE.withParts(List.of(PARTS.read(1, cells)));
      assertThat(CatalogueJson.read(CatalogueJson.write(more))).isEqualTo(more);
    } catch (RowException e) {
      assertIsOneLine(e);
    } catch (IllegalArgumentException e) { // the catalogue has such a part
      assertThat(e).hasMessageContaining("allowed");
      assertIsOneLine(e);
    }
    try {
      Kit kit = KitRows.read(1, cells);
      assertThat(KitJson.read(KitJson.writeLine(kit))).isEqualTo(kit);
    } catch (RowException e) {
      assertIsOneLine(e);
    }
  }

  private static void assertIsOneLine(IllegalArgumentException e) {
    assertThat(e.getMessage())
        .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]")
        .hasSizeLessThan(1000);
  }

  private static Map<String, String> cells(String text) {
    Map<String, String> cells = new HashMap<>();
    text.lines()
        .map(line -> line.split("\\|", 2))
        .filter(cell -> cell.length == 2)
        .forEach(cell -> cells.put(cell[0], cell[1]));
    return cells;
  }
}
