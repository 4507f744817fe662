package dev.jetting.examples.tuningtrial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** The figures as Markdown tables. */
final class FigureTables {

  private static final Map<World, String> WORLDS =
      Map.of(
          World.RICHER, "engines and riders of the richer kind",
          World.AS_ASSUMED, "engines and riders just as the library assumes");

  private static final Map<Way, String> WAYS =
      Map.of(
          Way.LIBRARY_WIDEBAND, "library, wideband",
          Way.LIBRARY_PLUG, "library, plug and feel",
          Way.HABIT, "habit, from the library's start",
          Way.HABIT_TAKEN_OVER, "habit, from a setting taken over");

  private FigureTables() {}

  static String of(Figures figures) {
    StringBuilder text = new StringBuilder();
    int accepted = 0;
    World world = World.AS_ASSUMED;
    for (Row row : figures.rows()) {
      if (row.acceptedPercent() != accepted || row.world() != world) {
        accepted = row.acceptedPercent();
        world = row.world();
        text.append(heading(row));
      }
      text.append(line(row));
    }
    return text.toString();
  }

  private static String heading(Row row) {
    return "\n**"
        + row.acceptedPercent()
        + " % accepted, "
        + WORLDS.get(row.world())
        + "** ("
        + row.engines()
        + " engines a row, which differ by "
        + fixed(row.spreadAtStart(), 2)
        + " of what the library reckons with)\n\n"
        + "| tuned by | tests | changes | lean at the start | lean at the end |"
        + " richer at the start, at the end | band held, at the start, at the end |"
        + " risk told at the end |\n|---|---|---|---|---|---|---|---|\n";
  }

  private static String line(Row row) {
    boolean told = row.way().byLibrary();
    return String.join(
            " | ",
            List.of(
                "| " + WAYS.get(row.way()),
                fixed(row.tests(), 1),
                fixed(row.changes(), 1),
                proportion(row.leanAtStart(), row.engines()),
                proportion(row.leanAtEnd(), row.engines()),
                percent(row.richerAtStart(), 1) + ", " + percent(row.richerAtEnd(), 1),
                told ? percent(row.heldAtStart(), 1) + ", " + percent(row.heldAtEnd(), 1) : "–",
                told ? percent(row.riskAtEnd(), 2) : "–"))
        + " |\n";
  }

  /** A share with its 95 % interval by Clopper and Pearson (1934), which is never too narrow. */
  private static String proportion(int count, int of) {
    double lowest = count == 0 ? 0 : quantile(count, of - count + 1, 0.025);
    double highest = count == of ? 1 : quantile(count + 1, of - count, 0.975);
    BigDecimal share = new BigDecimal(count).divide(new BigDecimal(of), 8, RoundingMode.HALF_EVEN);
    return percent(share, 2)
        + " ("
        + percent(new BigDecimal(lowest), 2)
        + " to "
        + percent(new BigDecimal(highest), 2)
        + ")";
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
