package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/** The throttle range as a table: one row an opening, numbers to the right, words to the left. */
final class RangeTable {

  static final String LEAN = "LEAN";
  private static final String RICH = "RICH";
  private static final String BAR = "0 to 100 %";

  /** Above this many points only the openings that a grip is marked with have a row. */
  private static final int MOST_ROWS = 16;

  /** A column: its two lines of heading, its width (to the left if negative), its cells. */
  private record Column(String over, String under, int width, Function<RiskPoint, String> cell) {

    /** Both lines of the heading in one. */
    String heading() {
      return (over + " " + under).strip();
    }

    String padded(String content) {
      String gap = " ".repeat(Math.max(0, Math.abs(width) - content.length()));
      return width < 0 ? content + gap : gap + content;
    }
  }

  private final Report report;
  private final Probability accepted;
  private final List<Column> columns;

  RangeTable(Report report, String assumed) {
    this.report = report;
    this.accepted = report.sheet().riding().acceptedRisk();
    columns =
        List.of(
            new Column("", "throttle", -8, p -> throttle(p.mixture().throttle())),
            new Column("", "rpm", 6, p -> Decimals.fixed(p.mixture().speed().rpm(), 0)),
            new Column("", "λ", 5, p -> lambda(p.lambda().value())),
            new Column("90 % band", "of λ", 10, RangeTable::band),
            new Column("lean", "limit" + assumed, 6, p -> lambda(p.leanLimit().value())),
            new Column("lean", "risk", 10, p -> TradeStyle.probability(p.leanRisk(), accepted)),
            new Column("", BAR, -10, p -> bar(p.leanRisk())),
            new Column("circuit", "in charge", -9, RangeTable::circuit),
            new Column("", "", -4, this::mark));
  }

  List<String> lines() {
    Stream<String> heading = Stream.of(row(column -> column.over), row(column -> column.under));
    return Stream.concat(heading, rows().map(point -> row(column -> column.cell.apply(point))))
        .toList();
  }

  List<String> headings() {
    return plain().map(Column::heading).toList();
  }

  List<Boolean> rightAligned() {
    return plain().map(column -> column.width > 0).toList();
  }

  /** The cells of each row. */
  List<List<String>> cells() {
    return rows().map(point -> plain().map(column -> column.cell.apply(point)).toList()).toList();
  }

  /** The columns without the bar, which needs characters of equal width. */
  private Stream<Column> plain() {
    return columns.stream().filter(column -> !column.under.equals(BAR));
  }

  /** The word that marks a row that is too lean or too rich; empty for a good one. */
  String mark(RiskPoint point) {
    if (point.leanRisk().compareTo(accepted) > 0) {
      return LEAN;
    }
    return point.lambda().compareTo(point.richLimit()) < 0 ? RICH : "";
  }

  static String lambda(double lambda) {
    return lambda < 9.995 ? Decimals.fixed(lambda, 2) : "10+";
  }

  private Stream<RiskPoint> rows() {
    List<RiskPoint> points = report.profile().points();
    ThrottleOpening worst = report.profile().worst().mixture().throttle();
    return points.stream()
        .filter(
            p ->
                points.size() <= MOST_ROWS
                    || onGrip(p.mixture().throttle().share())
                    || p.mixture().throttle().equals(worst));
  }

  /** Sixteenths up to a quarter, where most changes, eighths above. */
  private static boolean onGrip(double share) {
    double marks = share <= 0.25 ? share * 16 : share * 8;
    return marks == Math.rint(marks);
  }

  private String row(Function<Column, String> content) {
    return columns.stream().map(c -> c.padded(content.apply(c))).collect(joining(" "));
  }

  /** As findings print it, without the word that the heading says. */
  private static String throttle(ThrottleOpening opening) {
    return TradeStyle.throttle(opening).replace(" throttle", "");
  }

  private static String band(RiskPoint point) {
    return lambda(point.richEnd()) + "–" + lambda(point.leanEnd());
  }

  private static String circuit(RiskPoint point) {
    return point.inCharge().name().toLowerCase(Locale.ROOT);
  }

  /** A stroke for each tenth. */
  private static String bar(Probability risk) {
    return "#".repeat((int) Math.rint(risk.value() * 10));
  }
}
