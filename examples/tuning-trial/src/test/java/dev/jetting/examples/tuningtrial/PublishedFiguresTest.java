package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the documents show is what the program has counted. */
class PublishedFiguresTest {

  private static final Path DOCUMENT = Path.of("../../jetting-rules/TUNING.md");

  @Test
  void document_showsTheRecordedFigures() throws IOException {
    String document = Files.readString(DOCUMENT);
    String tables = FigureTables.of(Figures.published());
    assertThat(TuningTrial.withTables(document, tables)).isEqualTo(document);
    assertThat(document).contains(TuningTrial.BEGIN + tables);
  }

  @Test
  void figures_readAndWritten_areTheSame() throws IOException {
    Figures figures = Figures.published();
    assertThat(Figures.read(figures.json())).isEqualTo(figures);
  }

  /** Below one in a hundred lean at the end, few tests, bands that hold about 90 %. */
  @Test
  void library_enginesAsAssumedAndOnePercentAccepted_meetsTheAims() throws IOException {
    List<Row> rows = onePercent(World.AS_ASSUMED);
    assertThat(rows).hasSize(2);
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.engines()).isGreaterThanOrEqualTo(200);
              assertThat(row.leanAtEnd() * 100).isLessThan(row.engines());
              assertThat(row.tests()).isLessThan(new BigDecimal(5));
              assertThat(row.heldAtEnd()).isBetween(new BigDecimal("0.87"), new BigDecimal("0.93"));
            });
  }

  /** What owners accept is the bound there too; the bands may be wide, but not too narrow. */
  @Test
  void library_richerKindOfEngines_keepsWhatIsAccepted() throws IOException {
    List<Row> rows = onePercent(World.RICHER);
    assertThat(rows).hasSize(2);
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.leanAtEnd() * 100).isLessThanOrEqualTo(row.engines());
              assertThat(row.tests()).isLessThan(new BigDecimal(5));
              assertThat(row.heldAtEnd()).isGreaterThan(new BigDecimal("0.87"));
            });
  }

  /** What owners accept is kept, and every session came to an end by itself. */
  @Test
  void library_tenPercentAccepted_isKept_andEverySessionEnds() throws IOException {
    List<Row> byLibrary =
        Figures.published().rows().stream().filter(row -> row.way().byLibrary()).toList();
    assertThat(byLibrary).hasSize(8);
    assertThat(byLibrary)
        .allMatch(row -> row.leanAtEnd() * 100 <= row.acceptedPercent() * row.engines());
    assertThat(byLibrary).allMatch(row -> row.wentOn() == 0);
  }

  private static List<Row> onePercent(World world) throws IOException {
    return Figures.published().rows().stream()
        .filter(row -> row.acceptedPercent() == 1 && row.way().byLibrary())
        .filter(row -> row.world() == world)
        .toList();
  }

  /** An event that never came in a thousand: at most 1 − 0.025^(1/1000), by hand. */
  @Test
  void proportion_ofNone_hasTheUpperEndOfTheBinomial() {
    Row row = none();
    String table = FigureTables.of(new Figures(1, List.of(row), List.of()));
    double upper = 100 * (1 - StrictMath.pow(0.025, 1e-3));
    assertThat(table).contains("| 0.00 % (0.00 % to 0.37 %) |");
    assertThat(upper).isBetween(0.365, 0.375);
  }

  private static Row none() {
    BigDecimal one = BigDecimal.ONE;
    return new Row(
        World.RICHER, Way.HABIT, 1, 1000, 0, 0, 0, one, one, one, one, one, one, one, one);
  }
}
