package dev.jetting.rules.render;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.Report;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/** The throttle range as a table: one row an opening, numbers to the right, words to the left. */
final class RangeTable {

  /** How wide a bar of ten strokes is. */
  private static final int BAR = 10;

  /** Above this many points only the openings that a grip is marked with have a row. */
  private static final int MOST_ROWS = 16;

  /** A column: its two lines of heading, its least width (to the left if negative), its cells. */
  private record Column(String over, String under, int width, Function<RiskPoint, String> cell) {

    /** Both lines of the heading in one. */
    String heading() {
      return (over + " " + under).strip();
    }

    Column fitting(Stream<RiskPoint> rows) {
      int widest = rows.mapToInt(row -> cell.apply(row).length()).max().orElse(0);
      int all = Math.max(widest, Math.max(over.length(), under.length()));
      int least = Math.max(Math.abs(width), all);
      return new Column(over, under, width < 0 ? -least : least, cell);
    }

    String padded(String content) {
      String gap = " ".repeat(Math.max(0, Math.abs(width) - content.length()));
      return width < 0 ? content + gap : gap + content;
    }
  }

  private final Report report;
  private final Wording wording;
  private final Probability accepted;
  private final List<Column> columns;

  RangeTable(Report report, String assumed, Wording wording) {
    this.report = report;
    this.wording = wording;
    this.accepted = report.sheet().riding().acceptedRisk();
    Message limit = Message.of("table.limit.under").with("mark", Argument.name(assumed));
    columns =
        List.of(
            column("", "table.throttle", -8, p -> Argument.opening(p.mixture().throttle())),
            column("", "table.speed", 6, p -> whole(p.mixture().speed().rpm())),
            column("", "table.lambda", 5, p -> lambda(p.lambda().value())),
            column("table.band.over", "table.band.under", 10, RangeTable::band),
            new Column(
                say("table.limit.over"),
                wording.text(limit),
                6,
                p -> wording.text(lambda(p.leanLimit().value()))),
            column(
                "table.risk.over",
                "table.risk.under",
                10,
                p -> Argument.risk(p.leanRisk(), accepted)),
            column("", "table.bar", -BAR, p -> bar(p.leanRisk())),
            column(
                "table.circuit.over",
                "table.circuit.under",
                -9,
                p -> Argument.word("circuit." + p.inCharge().name().toLowerCase(Locale.ROOT))),
            new Column("", "", -4, this::mark));
  }

  private Column column(String over, String under, int width, Function<RiskPoint, Argument> cell) {
    return new Column(
        over.isEmpty() ? "" : say(over),
        say(under),
        width,
        point -> wording.text(cell.apply(point)));
  }

  private String say(String key) {
    return wording.text(Message.of(key));
  }

  List<String> lines() {
    List<Column> fitting = columns.stream().map(column -> column.fitting(rows())).toList();
    Stream<String> heading =
        Stream.of(row(fitting, column -> column.over), row(fitting, column -> column.under));
    return Stream.concat(
            heading, rows().map(point -> row(fitting, column -> column.cell.apply(point))))
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
    return columns.stream().filter(column -> column.width != -BAR);
  }

  /** The word that marks a row that is too lean or too rich; empty for a good one. */
  private String mark(RiskPoint point) {
    if (isLean(point)) {
      return say("table.lean");
    }
    return point.lambda().compareTo(point.richLimit()) < 0 ? say("table.rich") : "";
  }

  boolean isLean(RiskPoint point) {
    return point.leanRisk().compareTo(accepted) > 0;
  }

  /** A λ in its column; far from all that burns it is not written out. */
  static Argument lambda(double lambda) {
    return lambda < 9.995
        ? Argument.lambdaNumber(Lambda.of(Math.max(lambda, Double.MIN_VALUE)))
        : Argument.name("10+");
  }

  static Argument whole(double number) {
    return Argument.name(Decimals.fixed(number, 0));
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

  private static String row(List<Column> columns, Function<Column, String> content) {
    return columns.stream().map(c -> c.padded(content.apply(c))).collect(joining(" "));
  }

  private static Argument band(RiskPoint point) {
    return Argument.words(
        Message.plain("{rich}–{lean}")
            .with("rich", lambda(point.richEnd()))
            .with("lean", lambda(point.leanEnd())));
  }

  /** A stroke for each tenth. */
  private static Argument bar(Probability risk) {
    return Argument.name("#".repeat((int) Math.rint(risk.value() * 10)));
  }
}
