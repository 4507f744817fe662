package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The lean risk by throttle and speed, as a table with a number in each cell.
 *
 * @param columns the throttle openings, for people
 * @param rows a row for each speed, the highest first
 */
public record SpeedTable(List<String> columns, List<Row> rows) {

  private static final int SPEEDS = 8;
  private static final List<ThrottleOpening> OPENINGS =
      IntStream.rangeClosed(0, 8).mapToObj(ThrottleOpening::ofEighths).toList();

  /**
   * A speed.
   *
   * @param rpm the speed, for people
   * @param cells the risk at each opening
   */
  public record Row(String rpm, List<Cell> cells) {}

  /**
   * The risk at an opening and a speed.
   *
   * @param text the risk, for people
   * @param level 0 below half of what is accepted, 1 below what is accepted, 2 above, 3 above a
   *     half
   * @param ridden whether the engine is ridden here on a steady road
   * @param about place, λ, lean limit and risk, for people
   */
  public record Cell(String text, int level, boolean ridden, String about) {}

  /** For whom the numbers of the map are printed. */
  private record Reader(Probability accepted, Words words) {}

  static SpeedTable of(
      Setup setup,
      RiskModel riskModel,
      Calibration calibration,
      Probability accepted,
      Words words) {
    LoadLine line = setup.engine().loadLine();
    List<EngineSpeed> speeds = speeds(line);
    CalibratedModel engine = calibration.on(MixtureModel.of(setup));
    Reader reader = new Reader(accepted, words);
    List<MixtureSeries.Row> map = MixtureSeries.map(riskModel, engine, speeds, OPENINGS).rows();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < map.size(); i += OPENINGS.size()) {
      rows.add(row(line, speeds, map.subList(i, i + OPENINGS.size()), reader));
    }
    return new SpeedTable(
        OPENINGS.stream().map(opening -> words.say(Argument.opening(opening))).toList(), rows);
  }

  /** From the highest speed down to idle, in round numbers. */
  private static List<EngineSpeed> speeds(LoadLine line) {
    double idle = line.idle().rpm();
    double step = (line.peak().rpm() - idle) / (SPEEDS - 1);
    return IntStream.range(0, SPEEDS)
        .mapToObj(i -> EngineSpeed.ofRpm(Math.round((line.peak().rpm() - i * step) / 50) * 50.0))
        .toList();
  }

  private static Row row(
      LoadLine line, List<EngineSpeed> speeds, List<MixtureSeries.Row> points, Reader reader) {
    EngineSpeed speed = points.get(0).speed();
    List<Cell> cells = new ArrayList<>();
    for (MixtureSeries.Row point : points) {
      boolean ridden = nearest(speeds, line.at(point.throttle())).equals(speed);
      cells.add(
          new Cell(
              reader.words.say(Argument.risk(point.leanRisk(), reader.accepted)),
              level(point.leanRisk(), reader.accepted),
              ridden,
              about(point, ridden, reader)));
    }
    return new Row(Math.round(speed.rpm()) + "", cells);
  }

  private static String about(MixtureSeries.Row point, boolean ridden, Reader reader) {
    Message cell =
        Words.message(
            "bench.map.cell",
            "throttle",
            Argument.throttle(point.throttle()),
            "speed",
            Argument.speed(point.speed()),
            "lambda",
            Argument.lambda(point.lambda()),
            "limit",
            Argument.lambdaNumber(Lambda.of(point.limits().lean())),
            "risk",
            Argument.risk(point.leanRisk(), reader.accepted));
    return reader.words.say(ridden ? Words.message("bench.map.ridden", "cell", cell) : cell);
  }

  private static EngineSpeed nearest(List<EngineSpeed> speeds, EngineSpeed speed) {
    return speeds.stream()
        .min(Comparator.comparingDouble(other -> Math.abs(other.rpm() - speed.rpm())))
        .orElseThrow();
  }

  private static int level(Probability risk, Probability accepted) {
    if (risk.isMoreThan(accepted)) {
      return risk.value() > 0.5 ? 3 : 2;
    }
    return risk.value() > accepted.value() / 2 ? 1 : 0;
  }
}
