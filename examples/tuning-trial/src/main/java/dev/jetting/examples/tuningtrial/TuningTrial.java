package dev.jetting.examples.tuningtrial;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Runs the trial, prints each row as it is counted and then the tables; with files it also records
 * the figures and puts the tables into a document, between the two lines that mark their place.
 */
public final class TuningTrial {

  static final String BEGIN = "<!-- figures: written by the tuning trial -->\n";
  static final String END = "<!-- end of the figures -->\n";

  private static final String USAGE =
      """
      usage: ENGINES [--rows=ROW,...] [--done=FILE] [FIGURES.json DOCUMENT.md]
        ROW   a world, or a world and a way: AIR_LEAK or AIR_LEAK/LIBRARY_PLUG; all where none is named
        FILE  keeps each row that is counted; the rows in it are not counted again
      Other rows of FIGURES.json stay as they are.""";

  private final Trial trial;
  private final PrintStream out;
  private final DoneRows done;
  private final Map<Integer, List<Machine>> machines = new HashMap<>();

  private TuningTrial(Trial trial, PrintStream out, DoneRows done) {
    this.trial = trial;
    this.out = out;
    this.done = done;
  }

  /**
   * The program.
   *
   * @param args number of engines a row, a quarter of it where owners accept more risk; optionally
   *     which rows, a file that keeps those that are counted, and where to record the figures and
   *     the document to put the tables into
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<String> plain = new ArrayList<>(List.of(args));
    plain.removeIf(arg -> arg.startsWith("--"));
    List<RowKey> rows = rows(option("--rows=", args));
    boolean counted = !plain.isEmpty() && plain.get(0).matches("[1-9][0-9]{0,5}");
    if (!counted || (plain.size() != 1 && plain.size() != 3) || rows.isEmpty()) {
      out.println(USAGE);
      return;
    }
    DoneRows done = new DoneRows(option("--done=", args).map(Path::of));
    List<Row> found =
        new TuningTrial(Trial.PUBLISHED, out, done).count(rows, Integer.parseInt(plain.get(0)));
    if (plain.size() == 3) {
      Path file = Path.of(plain.get(1));
      record(merged(file, found), file, Path.of(plain.get(2)));
    } else {
      out.println(FigureTables.of(new Figures(Trial.PUBLISHED.seed(), found, List.of())));
    }
  }

  private static Optional<String> option(String name, String[] args) {
    return List.of(args).stream()
        .filter(arg -> arg.startsWith(name))
        .map(arg -> arg.substring(name.length()))
        .findFirst();
  }

  /** The rows of some names; all where none is named, and none where a name is of no row. */
  static List<RowKey> rows(Optional<String> names) {
    if (names.isEmpty()) {
      return RowKey.all();
    }
    List<RowKey> rows = new ArrayList<>();
    for (String name : names.get().split(",", -1)) {
      List<RowKey> named = RowKey.all().stream().filter(key -> key.isNamed(name)).toList();
      if (named.isEmpty()) {
        return List.of();
      }
      rows.addAll(named);
    }
    return rows;
  }

  private List<Row> count(List<RowKey> keys, int engines) throws IOException {
    List<Row> rows = new ArrayList<>();
    for (RowKey key : keys) {
      Row row = row(key, key.engines(engines));
      out.println(key + " " + FigureTables.lineOf(row));
      rows.add(row);
    }
    return rows;
  }

  private Row row(RowKey key, int engines) throws IOException {
    Optional<Row> before = done.row(key, engines);
    if (before.isPresent()) {
      return before.get();
    }
    int accepted = key.acceptedPercent();
    List<Machine> kinds = machines.computeIfAbsent(accepted, trial::machines);
    Row row = trial.row(key.world(), key.way(), kinds, engines, accepted);
    done.add(row);
    return row;
  }

  /** The recorded figures with some rows counted anew, and with the short form of today. */
  private static Figures merged(Path file, List<Row> counted) throws IOException {
    List<Row> recorded =
        Files.exists(file) ? Figures.read(Files.readString(file)).rows() : List.of();
    return new Figures(
        Trial.PUBLISHED.seed(), merged(recorded, counted), Figures.shortFormOf(Trial.PUBLISHED));
  }

  /** In the order of the tables. */
  static List<Row> merged(List<Row> recorded, List<Row> counted) {
    Map<RowKey, Row> rows = new HashMap<>();
    recorded.forEach(row -> rows.put(RowKey.of(row), row));
    counted.forEach(row -> rows.put(RowKey.of(row), row));
    return RowKey.all().stream()
        .flatMap(key -> Optional.ofNullable(rows.get(key)).stream())
        .toList();
  }

  private static void record(Figures figures, Path file, Path document) throws IOException {
    Files.writeString(file, figures.json());
    String tables = FigureTables.of(figures);
    Files.writeString(document, withTables(Files.readString(document), tables));
  }

  /** The document with the tables in their place. */
  static String withTables(String document, String tables) {
    int begin = document.indexOf(BEGIN) + BEGIN.length();
    int end = document.indexOf(END);
    return document.substring(0, begin) + tables + "\n" + document.substring(end);
  }
}
