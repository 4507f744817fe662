package dev.jetting.examples.shopcounter.kit;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartRows;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The catalogue that kits are checked against, and some kits to try it with. */
public final class Stock {

  private static final String DEMO = "/dev/jetting/examples/shopcounter/demo/";

  private final Catalogue catalogue;
  private final String example;

  private Stock(Catalogue catalogue, String example) {
    this.catalogue = catalogue;
    this.example = example;
  }

  /** {@return the invented catalogue of the examples, with invented kits} */
  public static Stock demo() {
    try (InputStream catalogue = demo("catalogue.json");
        InputStream parts = demo("parts.csv");
        InputStream kits = demo("kits.jsonl")) {
      return new Stock(
          withParts(CatalogueJson.read(catalogue), parts),
          new String(kits.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a shop's own catalogue.
   *
   * @param file the catalogue, JSON
   * @param partsLists lists of parts, CSV
   * @return the stock
   * @throws IOException if a file cannot be read
   */
  public static Stock read(Path file, List<Path> partsLists) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      Catalogue catalogue = CatalogueJson.read(in);
      for (Path list : partsLists) {
        try (InputStream parts = Files.newInputStream(list)) {
          catalogue = withParts(catalogue, parts);
        }
      }
      return new Stock(catalogue, "");
    }
  }

  private static InputStream demo(String name) {
    return Objects.requireNonNull(Stock.class.getResourceAsStream(DEMO + name), name);
  }

  private static Catalogue withParts(Catalogue catalogue, InputStream csv) throws IOException {
    PartRows rows = PartRows.of(catalogue);
    List<Part> parts = new ArrayList<>();
    CsvSchema header = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> lines =
        new CsvMapper().readerForMapOf(String.class).with(header).readValues(csv)) {
      long line = 1;
      while (lines.hasNext()) {
        parts.add(rows.read(++line, lines.next()));
      }
    }
    return catalogue.withParts(parts);
  }

  /** {@return the catalogue} */
  public Catalogue catalogue() {
    return catalogue;
  }

  /** {@return kits to try the check with, a JSON object a line; empty with a shop's catalogue} */
  public String example() {
    return example;
  }
}
