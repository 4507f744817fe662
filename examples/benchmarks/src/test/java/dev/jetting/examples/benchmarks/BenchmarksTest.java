package dev.jetting.examples.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchmarksTest {

  /** No stopwatch: only that each runs and its result can be written, read and printed. */
  @Test
  void everyBenchmark_runsAndStandsInTheTable(@TempDir Path folder) throws Exception {
    Results results = Benchmarks.smoke();
    assertThat(results.results())
        .extracting(Results.Line::benchmark)
        .contains(
            "AssessmentBenchmark.bareSweep",
            "SearchBenchmark.best",
            "KitBenchmark.validateFit",
            "LawKitBenchmark.laws",
            "QuantityBenchmark.createQuantity");

    Path file = folder.resolve("results.json");
    results.write(file);
    assertThat(Results.read(file)).isEqualTo(results);
    assertThat(Table.of(results).lines()).hasSize(results.results().size() + 4);
  }

  @Test
  void table_replacesWhatStandsBetweenTheMarkers(@TempDir Path folder) throws Exception {
    Path readme = folder.resolve("README.md");
    Files.writeString(readme, "# x\n<!-- results -->\nold\n<!-- end of results -->\nrest\n");
    Results results =
        new Results(
            new Results.Machine("a processor", 2, "a Java"),
            "once",
            List.of(new Results.Line("A.b", Map.of("n", "3"), 1234.5, 0.0123, "ns/op", 16)));
    Table.into(readme, results);
    assertThat(Files.readString(readme))
        .isEqualToNormalizingNewlines(
            """
            # x
            <!-- results -->
            a processor, 2 cores, a Java; once.

            | benchmark | time | ± | bytes |
            |---|---|---|---|
            | A.b, n 3 | 1235 ns/op | 0.0123 | 16 |
            <!-- end of results -->
            rest
            """);
  }
}
