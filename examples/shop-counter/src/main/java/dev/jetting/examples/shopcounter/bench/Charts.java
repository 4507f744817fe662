package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.MixtureSeries.Row;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Probability;
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
 * @param where each opening, for people
 * @param whereAndSpeed each opening with its engine speed on the level road, for people
 * @param accepted the accepted risk, percent
 * @param days the columns of each day, by its name
 * @param words what the charts write, by its name
 */
public record Charts(
    List<Double> throttle,
    List<String> where,
    List<String> whereAndSpeed,
    double accepted,
    Map<String, Day> days,
    Map<String, String> words) {

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
   * @param climbSaid that risk and its engine speed as people say it
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

  static Charts of(AssessedSetting fitted, AssessedSetting looked, Words words) {
    List<Row> rows = rows(looked, looked.profile());
    Map<String, Day> days = new LinkedHashMap<>();
    days.put("today", day(looked, looked.profile(), fitted.profile(), words));
    days.put("coldest", day(looked, looked.coldest(), fitted.coldest(), words));
    days.put("hottest", day(looked, looked.hottest(), fitted.hottest(), words));
    return new Charts(
        column(rows, row -> row.throttle().percent()),
        rows.stream()
            .map(row -> words.say("chart.where", "throttle", Argument.throttle(row.throttle())))
            .toList(),
        rows.stream().map(row -> words.say(whereAndSpeed(row))).toList(),
        looked.sheet().riding().acceptedRisk().percent(),
        days,
        said(words));
  }

  private static Message whereAndSpeed(Row row) {
    return Words.message(
        "chart.where.speed",
        "throttle",
        Argument.throttle(row.throttle()),
        "speed",
        Argument.speed(row.speed()));
  }

  private static Map<String, String> said(Words words) {
    Map<String, String> said = new LinkedHashMap<>();
    for (String name :
        List.of(
            "closed", "full", "band", "limit", "wanted", "risk", "climb", "metered", "beside")) {
      said.put(name, words.say("chart." + name));
    }
    said.put("point", words.say(Argument.fixed(0, "1", 1)).replace("0", ""));
    return said;
  }

  private static List<Row> rows(AssessedSetting setting, RiskProfile profile) {
    return MixtureSeries.of(profile, setting.setup().engine().need()).rows();
  }

  private static Day day(
      AssessedSetting setting, RiskProfile profile, RiskProfile fitted, Words words) {
    List<Row> rows = rows(setting, profile);
    List<Row> before = rows(setting, fitted);
    Probability accepted = setting.sheet().riding().acceptedRisk();
    Map<String, List<Double>> shares = new LinkedHashMap<>();
    for (Circuit circuit : Circuit.values()) {
      shares.put(
          name(circuit, words), column(rows, row -> 100 * row.shares().getOrDefault(circuit, 0.0)));
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
        rows.stream().map(row -> words.say(Argument.risk(row.leanRisk(), accepted))).toList(),
        column(profile.points(), point -> point.uphill().leanRisk().percent()),
        profile.points().stream().map(point -> words.say(climb(point.uphill(), accepted))).toList(),
        shares);
  }

  private static Message climb(UphillRisk uphill, Probability accepted) {
    return Words.message(
        "chart.climb.at",
        "risk",
        Argument.risk(uphill.leanRisk(), accepted),
        "speed",
        Argument.speed(uphill.speed()));
  }

  private static String name(Circuit circuit, Words words) {
    return words.say("circuit." + circuit.name().toLowerCase(Locale.ROOT));
  }

  private static <T> List<Double> column(List<T> rows, ToDoubleFunction<T> number) {
    List<Double> column = new ArrayList<>(rows.size());
    rows.forEach(row -> column.add(Math.round(number.applyAsDouble(row) * 1e3) / 1e3));
    return column;
  }
}
