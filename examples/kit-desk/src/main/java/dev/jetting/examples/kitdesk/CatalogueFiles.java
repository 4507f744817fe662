package dev.jetting.examples.kitdesk;

import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartRows;
import java.io.IOException;
import java.io.InputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A catalogue together with the parts lists that belong to it.
 *
 * @param catalogue the catalogue, the parts of the lists in it
 * @param digest SHA-256 of the catalogue's file
 * @param partsDigests SHA-256 of the file of each parts list
 */
record CatalogueFiles(Catalogue catalogue, String digest, List<String> partsDigests) {

  static CatalogueFiles demo() throws UnusableException, IOException {
    return read(Source.demo("catalogue.json"), List.of(Source.demo("parts.csv")));
  }

  static CatalogueFiles read(Source file, List<Source> partsLists)
      throws UnusableException, IOException {
    MessageDigest digest = Sha256.digest();
    Catalogue catalogue;
    try (InputStream in = new DigestInputStream(file.open(), digest)) {
      catalogue = CatalogueJson.read(in);
    } catch (JsonInputException e) {
      throw new UnusableException(file.name() + ": " + e.getMessage());
    }
    String catalogueDigest = Sha256.hex(digest);
    List<String> partsDigests = new ArrayList<>();
    for (Source list : partsLists) {
      try (Lines lines = Lines.of(new DigestInputStream(list.open(), digest))) {
        catalogue = catalogue.withParts(parts(list.name(), lines, PartRows.of(catalogue)));
      } catch (IllegalArgumentException e) {
        throw new UnusableException(list.name() + ": " + e.getMessage());
      }
      partsDigests.add(Sha256.hex(digest));
    }
    return new CatalogueFiles(catalogue, catalogueDigest, List.copyOf(partsDigests));
  }

  private static List<Part> parts(String name, Lines lines, PartRows rows)
      throws UnusableException, IOException {
    List<Part> parts = new ArrayList<>();
    @Nullable CsvHeader header = null;
    for (Optional<Line> next = lines.next(); next.isPresent(); next = lines.next()) {
      Line line = next.get();
      if (line.isBlank()) {
        continue;
      }
      if (header == null) {
        header = CsvHeader.of(name, line);
      } else {
        parts.add(part(rows, header, line));
      }
    }
    return parts;
  }

  private static Part part(PartRows rows, CsvHeader header, Line line) {
    java.util.Map<String, String> row;
    try {
      if (!line.readable()) {
        throw new IllegalArgumentException(line.problem());
      }
      row = header.row(line.text());
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("line " + line.number() + ": " + e.getMessage(), e);
    }
    return rows.read(line.number(), row);
  }
}
