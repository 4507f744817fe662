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

  /** Hardly any lean at the end, and bands that are not too narrow. */
  @Test
  void library_enginesAsAssumedAndOnePercentAccepted_meetsTheAims() throws IOException {
    List<Row> rows = onePercent(World.AS_ASSUMED);
    assertThat(rows).hasSize(2);
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.leanAtEnd() * 100).isLessThanOrEqualTo(row.engines());
              assertThat(row.heldAtEnd()).isGreaterThan(new BigDecimal("0.85"));
            });
  }

  /** The bands may be wide, but not too narrow. */
  @Test
  void library_richerKindOfEngines_keepsWhatIsAccepted() throws IOException {
    List<Row> rows = onePercent(World.RICHER);
    assertThat(rows).hasSize(2);
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.leanAtEnd() * 100).isLessThanOrEqualTo(row.engines());
              assertThat(row.heldAtEnd()).isGreaterThan(new BigDecimal("0.82"));
            });
  }

  @Test
  void library_everywhere_everySessionEndsByItself() throws IOException {
    List<Row> byLibrary =
        Figures.published().rows().stream().filter(row -> row.way().byLibrary()).toList();
    assertThat(byLibrary).extracting(Row::world).contains(World.values());
    assertThat(byLibrary).allMatch(row -> row.words().wentOn() == 0);
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

  /** Sixteen engines without a lean one do not show one in a hundred; eight lean rule it out. */
  @Test
  void aim_isShownRuledOutOrOpen_byTheInterval() {
    assertThat(FigureTables.aim(0, 16)).isEqualTo("open");
    assertThat(FigureTables.aim(8, 16)).isEqualTo("not met");
    assertThat(FigureTables.aim(0, 1000)).isEqualTo("shown");
  }

  private static Row none() {
    BigDecimal one = BigDecimal.ONE;
    Words words = new Words(0, 0, 0, 0, 0, 0, 0, 0);
    return new Row(
        World.RICHER, Way.HABIT, 1, 1000, 0, 0, words, one, one, one, one, one, one, one, one);
  }
}
