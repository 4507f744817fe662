package dev.jetting.examples.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;

/** The table of the README, out of the results file. */
final class Table {

  private static final String BEGIN = "<!-- results -->";
  private static final String END = "<!-- end of results -->";

  private Table() {}

  /** Puts the table of the results between the two markers. */
  static void into(Path readme, Results results) throws IOException {
    String text = Files.readString(readme);
    int begin = text.indexOf(BEGIN) + BEGIN.length();
    int end = text.indexOf(END);
    Files.writeString(
        readme, text.substring(0, begin) + "\n" + of(results) + text.substring(end));
  }

  static String of(Results results) {
    Results.Machine machine = results.machine();
    return String.format(
            Locale.ROOT,
            "%s, %d cores, %s; %s.%n%n| benchmark | time | ± | bytes |%n|---|---|---|---|%n",
            machine.processor(),
            machine.cores(),
            machine.java(),
            results.form())
        + results.results().stream().map(Table::row).collect(Collectors.joining());
  }

  private static String row(Results.Line line) {
    String parameters =
        line.parameters().entrySet().stream()
            .map(entry -> ", " + entry.getKey() + " " + entry.getValue())
            .collect(Collectors.joining());
    return String.format(
        Locale.ROOT,
        "| %s%s | %s %s | %s | %.0f |%n",
        line.benchmark(),
        parameters,
        digits(line.score()),
        line.unit(),
        line.error() == 0 ? "" : digits(line.error()),
        line.bytes());
  }

  /** Three digits that count. */
  private static String digits(double number) {
    int whole = (int) Math.floor(Math.log10(Math.max(number, 1e-9)));
    return String.format(Locale.ROOT, "%." + Math.max(0, 2 - whole) + "f", number);
  }
}
