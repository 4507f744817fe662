package dev.jetting.examples.kitdesk;

import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartRows;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A catalogue together with the parts lists that belong to it. */
final class CatalogueFiles {

  private CatalogueFiles() {}

  static Catalogue demo() throws UnusableException, IOException {
    return read(Source.demo("catalogue.json"), List.of(Source.demo("parts.csv")));
  }

  static Catalogue read(Source file, List<Source> partsLists)
      throws UnusableException, IOException {
    Catalogue catalogue;
    try (InputStream in = file.open()) {
      catalogue = CatalogueJson.read(in);
    } catch (JsonInputException e) {
      throw new UnusableException(file.name() + ": " + e.getMessage());
    }
    for (Source list : partsLists) {
      try {
        catalogue = catalogue.withParts(parts(list, PartRows.of(catalogue)));
      } catch (IllegalArgumentException e) {
        throw new UnusableException(list.name() + ": " + e.getMessage());
      }
    }
    return catalogue;
  }

  private static List<Part> parts(Source list, PartRows rows)
      throws UnusableException, IOException {
    List<Part> parts = new ArrayList<>();
    @Nullable CsvHeader header = null;
    try (BufferedReader lines = list.lines()) {
      long number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        if (line.isBlank()) {
          continue;
        }
        if (header == null) {
          header = CsvHeader.of(line);
        } else {
          parts.add(part(rows, number, header, line));
        }
      }
    }
    return parts;
  }

  private static Part part(PartRows rows, long number, CsvHeader header, String line) {
    java.util.Map<String, String> row;
    try {
      row = header.row(line);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("line " + number + ": " + e.getMessage(), e);
    }
    return rows.read(number, row);
  }
}
