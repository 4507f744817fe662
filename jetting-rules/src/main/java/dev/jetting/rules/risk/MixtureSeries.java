package dev.jetting.rules.risk;

import com.google.common.collect.Maps;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The mixture as rows of numbers, for a chart or a spreadsheet: over the throttle, or over engine
 * speed and throttle.
 *
 * <p>Each row has λ with its band, what the engine wants, the limits, the lean risk, and how much
 * of the say each circuit has. Example: {@code MixtureSeries.of(report.profile(),
 * sheet.setup().engine().need()).csv()}.
 *
 * <p>Not for judging a setting: a rulebook does that.
 *
 * @param rows the rows, at least one: by rising throttle those of a profile; those of a map speed
 *     by speed, and for each speed opening by opening
 */
public record MixtureSeries(List<Row> rows) {

  /** The first line of {@link #csv()}: the names of its columns. */
  public static final String CSV_HEADER =
      "throttle_percent,speed_rpm,lambda,lambda_rich_end,lambda_lean_end,lambda_needed,"
          + "lambda_rich_limit,lambda_lean_limit,lean_risk,"
          + "share_pilot,share_cutaway,share_needle,share_main";

  /**
   * The numbers at one throttle opening.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed; in the series of a profile that of the load line
   * @param lambda the mixture expected there
   * @param band the band that holds λ with 90 % probability
   * @param needed the mixture that the engine wants
   * @param limits the richest mixture that runs cleanly and the leanest that does no harm
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   * @param shares how much of the say each circuit has, by {@link PartEffect#authority()}; each 0
   *     to 1, together 1, or all 0 where no part has any; in the order of {@link Circuit}
   */
  public record Row(
      ThrottleOpening throttle,
      EngineSpeed speed,
      Lambda lambda,
      Interval band,
      Lambda needed,
      Interval limits,
      Probability leanRisk,
      Map<Circuit, Double> shares) {

    /**
     * Copies the shares.
     *
     * @param throttle throttle opening by lift
     * @param speed engine speed
     * @param lambda the mixture expected there
     * @param band the band that holds λ with 90 % probability
     * @param needed the mixture that the engine wants
     * @param limits the rich and the lean limit
     * @param leanRisk probability that the true mixture is leaner than the lean limit
     * @param shares how much of the say each circuit has
     * @throws NullPointerException if an argument is null
     */
    public Row {
      Objects.requireNonNull(throttle, "throttle");
      Objects.requireNonNull(speed, "speed");
      Objects.requireNonNull(lambda, "lambda");
      Objects.requireNonNull(band, "band");
      Objects.requireNonNull(needed, "needed");
      Objects.requireNonNull(limits, "limits");
      Objects.requireNonNull(leanRisk, "leanRisk");
      shares = Maps.immutableEnumMap(shares);
    }

    private String csv() {
      List<String> cells = new ArrayList<>();
      cells.add(CsvNumber.text(throttle.percent()));
      cells.add(CsvNumber.text(speed.rpm()));
      cells.add(CsvNumber.text(lambda.value()));
      cells.add(CsvNumber.text(band.rich()));
      cells.add(CsvNumber.text(band.lean()));
      cells.add(CsvNumber.text(needed.value()));
      cells.add(CsvNumber.text(limits.rich()));
      cells.add(CsvNumber.text(limits.lean()));
      cells.add(CsvNumber.text(leanRisk.value()));
      for (Circuit circuit : Circuit.values()) {
        cells.add(CsvNumber.text(shares.getOrDefault(circuit, 0.0)));
      }
      return String.join(",", cells);
    }
  }

  /**
   * Two values of λ, the richer first.
   *
   * @param rich the richer one
   * @param lean the leaner one, not less than the richer
   */
  public record Interval(double rich, double lean) {

    /**
     * Checks the order.
     *
     * @param rich the richer one
     * @param lean the leaner one, not less than the richer
     * @throws IllegalArgumentException if the ends are not finite or the first is the leaner one
     */
    public Interval {
      if (!(rich <= lean) || !Double.isFinite(rich) || !Double.isFinite(lean)) {
        throw new IllegalArgumentException(
            "λ from " + rich + " to " + lean + ": allowed finite numbers, the richer first");
      }
    }
  }

  /**
   * Copies the rows.
   *
   * @param rows the rows, at least one
   * @throws IllegalArgumentException if there is none
   */
  public MixtureSeries {
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("mixture series without rows: allowed at least one");
    }
  }

  /**
   * Creates the series of a profile.
   *
   * @param profile the lean risk over the throttle
   * @param need the mixture that the engine wants
   * @return one row for each point of the profile
   */
  public static MixtureSeries of(RiskProfile profile, MixtureNeed need) {
    Objects.requireNonNull(need, "need");
    return new MixtureSeries(profile.points().stream().map(point -> row(point, need)).toList());
  }

  /**
   * Creates the series of a map by engine speed and throttle opening.
   *
   * <p>An engine reaches only a part of it: at a small opening it does not rev high, at full
   * throttle it hardly runs slow. The load line of the engine marks where it is ridden steadily.
   *
   * @param riskModel limits, spreads and steps
   * @param engine the engine with its setup and what readings have taught about it
   * @param speeds the engine speeds, each more than zero, at least one
   * @param throttles the openings, at least one
   * @return one row for each speed and opening: for the first speed all openings, then for the next
   * @throws IllegalArgumentException if a speed is zero, there is no opening or speed, or the
   *     limits contradict each other
   */
  public static MixtureSeries map(
      RiskModel riskModel,
      CalibratedModel engine,
      List<EngineSpeed> speeds,
      List<ThrottleOpening> throttles) {
    MixtureNeed need = engine.setup().engine().need();
    return new MixtureSeries(
        riskModel.map(engine, speeds, throttles).stream().map(point -> row(point, need)).toList());
  }

  /**
   * Returns the series as comma-separated values with a header line: percent, revolutions a minute
   * and plain numbers with at most five digits and a decimal point, lines ended by a line feed.
   *
   * @return the text
   */
  public String csv() {
    return rows.stream().map(Row::csv).collect(Collectors.joining("\n", CSV_HEADER + "\n", "\n"));
  }

  private static Row row(RiskPoint point, MixtureNeed need) {
    ThrottleOpening throttle = point.mixture().throttle();
    return new Row(
        throttle,
        point.mixture().speed(),
        point.lambda(),
        new Interval(point.richEnd(), point.leanEnd()),
        need.at(throttle),
        new Interval(point.richLimit().value(), point.leanLimit().value()),
        point.leanRisk(),
        shares(point.effects()));
  }

  private static Map<Circuit, Double> shares(List<PartEffect> effects) {
    double all = effects.stream().mapToDouble(PartEffect::authority).sum();
    Map<Circuit, Double> shares = new EnumMap<>(Circuit.class);
    for (Circuit circuit : Circuit.values()) {
      shares.put(circuit, 0.0);
    }
    for (PartEffect effect : effects) {
      shares.merge(effect.part().circuit(), all == 0 ? 0 : effect.authority() / all, Double::sum);
    }
    return shares;
  }
}
