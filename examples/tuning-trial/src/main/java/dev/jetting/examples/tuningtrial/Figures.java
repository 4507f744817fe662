package dev.jetting.examples.tuningtrial;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a run of the trial has counted.
 *
 * @param seed of everything that was drawn
 * @param rows over the engines of the long form
 * @param shortForm over the first engines alone, which the tests count again
 */
record Figures(long seed, List<Row> rows, List<Row> shortForm) {

  /** Engines of the short form: one of each machine of what is assumed, and of the rest one. */
  private static final int SHORT = 4;

  private static final int SHORTEST = 1;

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  /** The short form of a trial. */
  static List<Row> shortFormOf(Trial trial) {
    List<Row> rows = new ArrayList<>(trial.rows(World.TRIED_TWICE, SHORT, 1));
    List<World> rest = new ArrayList<>(List.of(World.values()));
    rest.removeAll(World.TRIED_TWICE);
    rows.addAll(trial.rows(rest, SHORTEST, 1));
    return rows;
  }

  /** The figures that the documents show. */
  static Figures published() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(Figures.class.getResourceAsStream("figures.json"), "figures")) {
      return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  static Figures read(String json) throws JsonProcessingException {
    return MAPPER.readValue(json, Figures.class);
  }

  /** A row on a line of its own. */
  static String line(Row row) throws JsonProcessingException {
    return MAPPER.writeValueAsString(row);
  }

  static Row readRow(String line) throws JsonProcessingException {
    return MAPPER.readValue(line, Row.class);
  }

  String json() throws JsonProcessingException {
    var printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
    return MAPPER.writer(printer).writeValueAsString(this) + "\n";
  }
}
