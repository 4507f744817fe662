package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TuningTrialTest {

  @Test
  void withTables_replacesWhatStoodBetweenTheMarks() {
    String document = "before\n" + TuningTrial.BEGIN + "old\n" + TuningTrial.END + "after\n";
    assertThat(TuningTrial.withTables(document, "new\n"))
        .isEqualTo("before\n" + TuningTrial.BEGIN + "new\n\n" + TuningTrial.END + "after\n");
  }

  @Test
  void rows_byName_areThoseOfTheWorldOrTheWay_andNoneOfAnUnknownName() {
    assertThat(TuningTrial.rows(Optional.empty())).isEqualTo(RowKey.all());
    assertThat(TuningTrial.rows(Optional.of("AIR_LEAK")))
        .extracting(RowKey::toString)
        .containsExactly("AIR_LEAK/LIBRARY_WIDEBAND/1", "AIR_LEAK/LIBRARY_PLUG/1");
    assertThat(TuningTrial.rows(Optional.of("SENSOR_OFF,AIR_LEAK/LIBRARY_PLUG"))).hasSize(2);
    assertThat(TuningTrial.rows(Optional.of("SENSOR_OFF,LEAK"))).isEmpty();
  }

  @Test
  void merged_rowCountedAnew_takesThePlaceOfTheRecordedOneAlone() throws IOException {
    List<Row> recorded = Figures.published().rows();
    Row old = recorded.get(3);
    Row counted =
        new Row(
            old.world(),
            old.way(),
            old.acceptedPercent(),
            old.engines() + 1,
            old.leanAtStart(),
            old.leanAtEnd(),
            old.words(),
            old.tests(),
            old.changes(),
            old.heldAtStart(),
            old.spreadAtStart(),
            old.heldAtEnd(),
            old.richerAtStart(),
            old.richerAtEnd(),
            old.riskAtEnd());
    List<Row> merged = TuningTrial.merged(recorded, List.of(counted));

    assertThat(merged).hasSize(recorded.size()).contains(counted).doesNotContain(old);
    assertThat(merged.get(3)).isEqualTo(counted);
    assertThat(TuningTrial.merged(recorded, List.of())).isEqualTo(recorded);
  }

  @Test
  void doneRows_ofTheSameNumberOfEngines_areReadBack(@TempDir Path folder) throws IOException {
    Row row = Figures.published().rows().get(0);
    DoneRows done = new DoneRows(Optional.of(folder.resolve("rows")));
    done.add(row);

    assertThat(done.row(RowKey.of(row), row.engines())).contains(row);
    assertThat(done.row(RowKey.of(row), row.engines() + 1)).isEmpty();
    assertThat(new DoneRows(Optional.empty()).row(RowKey.of(row), row.engines())).isEmpty();
  }
}
