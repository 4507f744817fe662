package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The first line of a table, by which the cells of the others are named. A record is a line: a
 * quotation mark that is left open spoils its own line and no other.
 */
final class CsvHeader {

  private static final ObjectReader READER =
      CsvMapper.builder().enable(CsvParser.Feature.TRIM_SPACES).build().readerFor(String[].class);

  private final List<String> columns;

  private CsvHeader(List<String> columns) {
    this.columns = columns;
  }

  static CsvHeader of(String line) {
    return new CsvHeader(cells(line));
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
