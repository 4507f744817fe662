package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The first line of a table, by which the cells of the others are named. A record is a line: a
 * quotation mark that is left open spoils its own line and no other.
 */
final class CsvHeader {

  private static final ObjectReader READER =
      CsvMapper.builder().enable(CsvParser.Feature.TRIM_SPACES).build().readerFor(String[].class);

  private final List<String> columns;
  private final String digest;

  private CsvHeader(List<String> columns, String digest) {
    this.columns = columns;
    this.digest = digest;
  }

  /** The first line of a file of this name. */
  static CsvHeader of(String file, Line line) throws UnusableException {
    try {
      if (!line.readable()) {
        throw new IllegalArgumentException(line.problem());
      }
      List<String> columns = cells(line.text());
      checkOnce(columns);
      return new CsvHeader(columns, line.digest());
    } catch (IllegalArgumentException e) {
      throw new UnusableException(file + ", line " + line.number() + ": " + e.getMessage());
    }
  }

  private static void checkOnce(List<String> columns) {
    Set<String> seen = new HashSet<>();
    for (String column : columns) {
      if (!seen.add(column)) {
        throw new IllegalArgumentException(
            "column \"" + Table.fitted(column, 60) + "\" twice: allowed once");
      }
    }
  }

  /** SHA-256 of the line. */
  String digest() {
    return digest;
  }

  /** The cells of a line by their columns. */
  Map<String, String> row(String line) {
    List<String> cells = cells(line);
    if (cells.size() > columns.size()) {
      throw new IllegalArgumentException(
          cells.size() + " cells: allowed at most the " + columns.size() + " of the first line");
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      row.put(columns.get(i), cells.get(i));
    }
    return row;
  }

  private static List<String> cells(String line) {
    try {
      String[] cells = READER.readValue(line);
      return List.of(cells);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(
          "not a line of a table: allowed cells with commas between, in quotation marks where they"
              + " hold one",
          e);
    }
  }
}
