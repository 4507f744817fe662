package dev.jetting.examples.kitdesk;

import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.KitRows;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The kits of a file, line by line, of which no more are in memory than are asked for. */
final class KitLines implements Closeable {

  private final BufferedReader lines;
  private final KitFormat format;
  private @Nullable CsvHeader header;
  private long number;

  KitLines(BufferedReader lines, KitFormat format) {
    this.lines = lines;
    this.format = format;
  }

  /** The next lines that are not blank, at most so many; none at the end of the file. */
  List<Numbered> next(int most) throws IOException {
    List<Numbered> next = new ArrayList<>();
    if (format == KitFormat.JSON) {
      addDocument(next);
      return next;
    }
    while (next.size() < most) {
      String line = lines.readLine();
      if (line == null) {
        return next;
      }
      number++;
      if (!line.isBlank()) {
        add(next, number, line);
      }
    }
    return next;
  }

  private void add(List<Numbered> next, long at, String line) {
    if (format == KitFormat.JSONL) {
      next.add(new Numbered(at, () -> KitJson.read(line)));
      return;
    }
    CsvHeader columns = header;
    if (columns == null) {
      header = CsvHeader.of(line);
    } else {
      next.add(new Numbered(at, () -> KitRows.read(at, columns.row(line))));
    }
  }

  private void addDocument(List<Numbered> next) throws IOException {
    StringBuilder text = new StringBuilder();
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      text.append(line).append('\n');
    }
    if (number == 0) {
      number = 1;
      next.add(new Numbered(1, () -> KitJson.read(text.toString())));
    }
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
