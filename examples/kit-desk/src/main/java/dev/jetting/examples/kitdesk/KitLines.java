package dev.jetting.examples.kitdesk;

import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitRows;
import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The kits of a file, line by line. */
final class KitLines implements Closeable {

  private final String name;
  private final Lines lines;
  private final KitFormat format;
  private @Nullable CsvHeader header;

  KitLines(Source source, KitFormat format) throws UnusableException, IOException {
    this.name = source.name();
    this.lines = source.lines();
    this.format = format;
  }

  /** The next line that is not blank; empty at the end of the file. */
  Optional<Numbered> next() throws UnusableException, IOException {
    if (format == KitFormat.JSON) {
      return lines.rest().filter(all -> !all.isBlank()).map(all -> numbered(all, KitJson::read));
    }
    for (Optional<Line> next = lines.next(); next.isPresent(); next = lines.next()) {
      Line line = next.get();
      if (line.isBlank()) {
        continue;
      }
      if (format == KitFormat.JSONL) {
        return Optional.of(numbered(line, KitJson::read));
      }
      CsvHeader columns = header;
      if (columns != null) {
        return Optional.of(row(line, columns));
      }
      header = CsvHeader.of(name, line);
    }
    return Optional.empty();
  }

  private static Numbered numbered(Line line, Function<String, Kit> reader) {
    return new Numbered(
        line.number(),
        line.digest(),
        line.text().length(),
        () -> {
          if (!line.readable()) {
            throw new IllegalArgumentException(line.problem());
          }
          return reader.apply(line.text());
        });
  }

  private static Numbered row(Line line, CsvHeader columns) {
    Numbered row = numbered(line, text -> KitRows.read(line.number(), columns.row(text)));
    return new Numbered(
        row.line(), Sha256.of(columns.digest() + row.input()), row.length(), row.kit());
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
