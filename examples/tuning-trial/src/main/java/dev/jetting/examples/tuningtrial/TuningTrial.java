package dev.jetting.examples.tuningtrial;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs the trial and prints its tables; with files it also records the figures and puts the tables
 * into a document, between the two lines that mark their place.
 */
public final class TuningTrial {

  static final String BEGIN = "<!-- figures: written by the tuning trial -->\n";
  static final String END = "<!-- end of the figures -->\n";

  private static final String USAGE = "usage: ENGINES [FIGURES.json DOCUMENT.md]";

  private TuningTrial() {}

  /**
   * The program.
   *
   * @param args number of engines a row, a quarter of it where owners accept more risk, and
   *     optionally where to record the figures and the document to put the tables into
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    boolean counted = args.length >= 1 && args[0].matches("[1-9][0-9]{0,5}");
    if (!counted || (args.length != 1 && args.length != 3)) {
      out.println(USAGE);
      return;
    }
    Figures figures = count(Integer.parseInt(args[0]));
    String tables = FigureTables.of(figures);
    out.println(tables);
    if (args.length == 3) {
      Files.writeString(Path.of(args[1]), figures.json());
      Path document = Path.of(args[2]);
      Files.writeString(document, withTables(Files.readString(document), tables));
    }
  }

  private static Figures count(int engines) {
    List<Row> rows = new ArrayList<>(Trial.PUBLISHED.rows(List.of(World.values()), engines, 1));
    rows.addAll(Trial.PUBLISHED.rows(World.TRIED_TWICE, (engines + 3) / 4, 10));
    return new Figures(Trial.PUBLISHED.seed(), rows, Figures.shortFormOf(Trial.PUBLISHED));
  }

  /** The document with the tables in their place. */
  static String withTables(String document, String tables) {
    int begin = document.indexOf(BEGIN) + BEGIN.length();
    int end = document.indexOf(END);
    return document.substring(0, begin) + tables + "\n" + document.substring(end);
  }
}
