package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.ThrottleSeries;
import dev.jetting.rules.risk.ThrottleSeries.Row;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The numbers of the picture in columns, as the charts take them, with the texts that a hover or a
 * key press shows.
 *
 * @param throttle throttle opening, percent
 * @param where each opening as people say it
 * @param rpm engine speed at each on the level road
 * @param climbRpm engine speed at each on a climb
 * @param accepted the accepted risk, percent
 * @param days the columns of each day, by its name
 */
public record Charts(
    List<Double> throttle,
    List<String> where,
    List<Double> rpm,
    List<Double> climbRpm,
    double accepted,
    Map<String, Day> days) {

  /**
   * The columns of a day.
   *
   * @param lambda λ
   * @param rich λ at the rich end of its band
   * @param lean λ at the lean end of its band
   * @param needed λ that the engine wants
   * @param limit the lean limit
   * @param fitted λ of the setting that is on the machine
   * @param risk lean risk, percent
   * @param fittedRisk lean risk of the setting that is on the machine, percent
   * @param said the risk as people say it
   * @param climbRisk lean risk on a climb, percent
   * @param climbSaid that risk as people say it
   * @param shares share of the say of each circuit, percent, by its name
   */
  public record Day(
      List<Double> lambda,
      List<Double> rich,
      List<Double> lean,
      List<Double> needed,
      List<Double> limit,
      List<Double> fitted,
      List<Double> risk,
      List<Double> fittedRisk,
      List<String> said,
      List<Double> climbRisk,
      List<String> climbSaid,
      Map<String, List<Double>> shares) {}

  static Charts of(AssessedSetting fitted, AssessedSetting looked) {
    List<Row> rows = rows(looked, looked.profile());
    Map<String, Day> days = new LinkedHashMap<>();
    days.put("today", day(looked, looked.profile(), fitted.profile()));
    days.put("coldest", day(looked, looked.coldest(), fitted.coldest()));
    days.put("hottest", day(looked, looked.hottest(), fitted.hottest()));
    return new Charts(
        column(rows, row -> row.throttle().percent()),
        rows.stream().map(row -> TradeStyle.throttle(row.throttle())).toList(),
        column(rows, row -> row.speed().rpm()),
        column(looked.profile().points(), point -> point.uphill().speed().rpm()),
        looked.sheet().riding().acceptedRisk().percent(),
        days);
  }

  private static List<Row> rows(AssessedSetting setting, RiskProfile profile) {
    return ThrottleSeries.of(profile, setting.setup().engine().need()).rows();
  }

  private static Day day(AssessedSetting setting, RiskProfile profile, RiskProfile fitted) {
    List<Row> rows = rows(setting, profile);
    List<Row> before = rows(setting, fitted);
    Probability accepted = setting.sheet().riding().acceptedRisk();
    Map<String, List<Double>> shares = new LinkedHashMap<>();
    for (Circuit circuit : Circuit.values()) {
      shares.put(name(circuit), column(rows, row -> 100 * row.shares().getOrDefault(circuit, 0.0)));
    }
    return new Day(
        column(rows, row -> row.lambda().value()),
        column(rows, row -> row.band().rich()),
        column(rows, row -> row.band().lean()),
        column(rows, row -> row.needed().value()),
        column(rows, row -> row.limits().lean()),
        column(before, row -> row.lambda().value()),
        column(rows, row -> row.leanRisk().percent()),
        column(before, row -> row.leanRisk().percent()),
        rows.stream().map(row -> TradeStyle.probability(row.leanRisk(), accepted)).toList(),
        column(profile.points(), point -> point.uphill().leanRisk().percent()),
        profile.points().stream()
            .map(point -> TradeStyle.probability(point.uphill().leanRisk(), accepted))
            .toList(),
        shares);
  }

  private static String name(Circuit circuit) {
    return circuit == Circuit.CUTAWAY ? "slide" : circuit.name().toLowerCase(Locale.ROOT);
  }

  private static <T> List<Double> column(List<T> rows, ToDoubleFunction<T> number) {
    List<Double> column = new ArrayList<>(rows.size());
    rows.forEach(row -> column.add(Math.round(number.applyAsDouble(row) * 1e3) / 1e3));
    return column;
  }
}
