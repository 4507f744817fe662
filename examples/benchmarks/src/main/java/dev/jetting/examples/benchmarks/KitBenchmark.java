package dev.jetting.examples.benchmarks;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import dev.jetting.rules.json.CatalogueJson;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartRows;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Kits from JSON lines on one thread, beside Jackson binding the same lines and doing no more. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class KitBenchmark {

  private static final String DEMO = "dev/jetting/examples/kitdesk/";

  /** The two demo kits that pass, in turn. */
  @State(Scope.Benchmark)
  public static class Desk {
    /** How many lines. */
    @Param({"1000", "10000", "100000"})
    public int kits;

    private final ObjectReader binding = JsonMapper.builder().build().readerFor(BoundKit.class);
    private final List<String> lines = new ArrayList<>();
    private final KitValidator validator = KitValidator.of(catalogue());

    /** Lays out the lines. */
    @Setup
    public void open() throws IOException {
      try (BufferedReader demo =
          new BufferedReader(new InputStreamReader(demo("kits.jsonl"), StandardCharsets.UTF_8))) {
        List<String> passing = List.of(demo.readLine(), demo.readLine());
        for (int i = 0; i < kits; i++) {
          lines.add(passing.get(i % passing.size()));
        }
      }
    }
  }

  private static Catalogue catalogue() {
    ObjectReader rowReader =
        new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader());
    try (InputStream in = demo("catalogue.json");
        InputStream list = demo("parts.csv");
        MappingIterator<Map<String, String>> table = rowReader.readValues(list)) {
      Catalogue catalogue = CatalogueJson.read(in);
      PartRows rows = PartRows.of(catalogue);
      List<Part> parts = new ArrayList<>();
      for (long line = 2; table.hasNext(); line++) {
        parts.add(rows.read(line, table.next()));
      }
      return catalogue.withParts(parts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream demo(String name) throws IOException {
    InputStream in = KitBenchmark.class.getClassLoader().getResourceAsStream(DEMO + name);
    if (in == null) {
      throw new IOException("no " + name + " on the class path");
    }
    return in;
  }

  /** A kit as Jackson alone binds it: quantities stay texts, and nothing is checked. */
  record BoundKit(
      String format,
      int schemaVersion,
      String id,
      String description,
      String family,
      List<String> parts,
      String market,
      List<BoundRecommendation> recommendations) {}

  /** A recommendation as Jackson alone binds it. */
  record BoundRecommendation(
      String machine,
      String pilotJet,
      BoundScrew screw,
      String slide,
      String idleLift,
      String needleJet,
      String needle,
      String clip,
      String mainJet,
      BoundFloats floats) {}

  /** A screw as Jackson alone binds it. */
  record BoundScrew(String kind, String turns) {}

  /** Floats as Jackson alone binds them. */
  record BoundFloats(String set, String nominal) {}

  /** Baseline: each line bound to records of texts. */
  @Benchmark
  public int binding(Desk desk) throws IOException {
    int parts = 0;
    for (String line : desk.lines) {
      parts += desk.binding.<BoundKit>readValue(line).parts().size();
    }
    return parts;
  }

  /** Each line read strictly: every quantity parsed, every field and limit checked. */
  @Benchmark
  public int read(Desk desk) {
    int parts = 0;
    for (String line : desk.lines) {
      parts += KitJson.read(line).parts().size();
    }
    return parts;
  }

  /** Each line read and looked into as far as the parts go. */
  @Benchmark
  public int validateFit(Desk desk) {
    int passing = 0;
    for (String line : desk.lines) {
      passing += desk.validator.validate(KitJson.read(line), KitDepth.FIT).passes() ? 1 : 0;
    }
    return passing;
  }

  /** One line, its setting held against the rulebook on three days. */
  @Benchmark
  public KitValidation validateSettingOfOne(Desk desk) {
    return desk.validator.validate(KitJson.read(desk.lines.get(0)), KitDepth.SETTING);
  }
}
