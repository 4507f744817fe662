package dev.jetting.examples.tuningtrial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** The figures as Markdown tables: one for each population, and one for all that may be wrong. */
final class FigureTables {

  private static final double AIM = 0.01;

  private static final Map<Way, String> WAYS =
      Map.of(
          Way.LIBRARY_WIDEBAND, "library, wideband",
          Way.LIBRARY_PLUG, "library, plug and feel",
          Way.HABIT, "habit, from the library's start",
          Way.HABIT_TAKEN_OVER, "habit, from a setting taken over");

  private static final String WORDS =
      "\n**1 % accepted, world by world: how it ends and what the session says**\n\n"
          + "| world | read by | engines | tests | changes | lean at the start | lean at the end |"
          + " at most 1 % | richer at the end | rode lean on the way | asks to look for a fault |"
          + " … and for this one | takes a reading again | left rich | with a reservation |"
          + " not to be ridden |\n"
          + "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n";

  private FigureTables() {}

  static String of(Figures figures) {
    StringBuilder text = new StringBuilder();
    int accepted = 0;
    World world = World.AS_ASSUMED;
    for (Row row : figures.rows()) {
      if (row.world().isOdd()) {
        continue;
      }
      if (row.acceptedPercent() != accepted || row.world() != world) {
        accepted = row.acceptedPercent();
        world = row.world();
        text.append(heading(row));
      }
      text.append(line(row));
    }
    return text + wordsOf(onePercent(figures.rows()));
  }

  /** A row by itself, as a line of one of the tables. */
  static String lineOf(Row row) {
    return (row.way().byLibrary() ? wordsLine(row) : line(row)).strip();
  }

  private static List<Row> onePercent(List<Row> rows) {
    return rows.stream()
        .filter(row -> row.way().byLibrary() && row.acceptedPercent() == 1)
        .toList();
  }

  private static String instrument(Row row) {
    return row.way() == Way.LIBRARY_WIDEBAND ? "sensor" : "plug and feel";
  }

  private static String heading(Row row) {
    return "\n**"
        + row.acceptedPercent()
        + " % accepted, "
        + row.world().title()
        + "** ("
        + row.engines()
        + " engines a row, which differ by "
        + fixed(row.spreadAtStart(), 2)
        + " of what the library assumes)\n\n"
        + "| tuned by | tests | changes | lean at the start | lean at the end |"
        + " richer at the start, at the end | band held, at the start, at the end |"
        + " risk reported at the end |\n|---|---|---|---|---|---|---|---|\n";
  }

  private static String line(Row row) {
    boolean byLibrary = row.way().byLibrary();
    return String.join(
            " | ",
            List.of(
                "| " + WAYS.get(row.way()),
                fixed(row.tests(), 1),
                fixed(row.changes(), 1),
                proportion(row.leanAtStart(), row.engines()),
                proportion(row.leanAtEnd(), row.engines()),
                percent(row.richerAtStart(), 1) + ", " + percent(row.richerAtEnd(), 1),
                byLibrary
                    ? percent(row.heldAtStart(), 1) + ", " + percent(row.heldAtEnd(), 1)
                    : "–",
                byLibrary ? percent(row.riskAtEnd(), 2) : "–"))
        + " |\n";
  }

  private static String wordsOf(List<Row> rows) {
    return rows.isEmpty()
        ? ""
        : WORDS + rows.stream().map(FigureTables::wordsLine).collect(Collectors.joining());
  }

  private static String wordsLine(Row row) {
    Words words = row.words();
    int of = row.engines();
    return String.join(
            " | ",
            List.of(
                "| " + row.world().title(),
                instrument(row),
                String.valueOf(of),
                fixed(row.tests(), 1),
                fixed(row.changes(), 1),
                share(row.leanAtStart(), of),
                proportion(row.leanAtEnd(), of),
                aim(row.leanAtEnd(), of),
                percent(row.richerAtEnd(), 1),
                share(words.rodeLean(), of),
                share(words.fault(), of),
                row.world().trouble().flatMap(Trouble::check).isPresent()
                    ? share(words.itsFault(), of)
                    : "–",
                share(words.readAgain(), of),
                share(words.leftRich(), of),
                share(words.reserved(), of),
                share(words.notToBeRidden(), of)))
        + " |\n";
  }

  private static String share(int count, int of) {
    return percent(new BigDecimal(count).divide(new BigDecimal(of), 8, RoundingMode.HALF_EVEN), 1);
  }

  /** Whether at most one in a hundred is shown, is ruled out, or is left open by the interval. */
  static String aim(int count, int of) {
    if (highest(count, of) <= AIM) {
      return "shown";
    }
    return lowest(count, of) > AIM ? "not met" : "open";
  }

  /** A share with its 95 % interval by Clopper and Pearson (1934), which is never too narrow. */
  private static String proportion(int count, int of) {
    BigDecimal share = new BigDecimal(count).divide(new BigDecimal(of), 8, RoundingMode.HALF_EVEN);
    return percent(share, 2)
        + " ("
        + percent(new BigDecimal(lowest(count, of)), 2)
        + " to "
        + percent(new BigDecimal(highest(count, of)), 2)
        + ")";
  }

  private static double lowest(int count, int of) {
    return count == 0 ? 0 : quantile(count, of - count + 1, 0.025);
  }

  private static double highest(int count, int of) {
    return count == of ? 1 : quantile(count + 1, of - count, 0.975);
  }

  private static double quantile(double alpha, double beta, double probability) {
    return new BetaDistribution(alpha, beta).inverseCumulativeProbability(probability);
  }

  private static String percent(BigDecimal share, int decimals) {
    return fixed(share.movePointRight(2), decimals) + " %";
  }

  private static String fixed(BigDecimal number, int decimals) {
    return number.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }
}
