package dev.jetting.examples.tuningtrial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/**
 * Rows that were counted, one a line in a file, so that a run that was stopped goes on. They hold
 * for one state of the library: who changes that begins a new file.
 *
 * @param file where they stand; empty to keep none
 */
record DoneRows(Optional<Path> file) {

  Optional<Row> row(RowKey key, int engines) throws IOException {
    if (file.isEmpty() || !Files.exists(file.get())) {
      return Optional.empty();
    }
    for (String line : Files.readAllLines(file.get())) {
      Row row = Figures.readRow(line);
      if (RowKey.of(row).equals(key) && row.engines() == engines) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  void add(Row row) throws IOException {
    if (file.isPresent()) {
      Files.write(
          file.get(),
          List.of(Figures.line(row)),
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    }
  }
}
