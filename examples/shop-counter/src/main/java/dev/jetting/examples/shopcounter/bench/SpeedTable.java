package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.risk.RiskMap;
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

  /** What the numbers of the map are computed with. */
  private record Source(
      RiskModel riskModel,
      MixtureNeed need,
      CalibratedModel engine,
      Probability accepted,
      Words words) {}

  static SpeedTable of(
      Setup setup,
      RiskModel riskModel,
      Calibration calibration,
      Probability accepted,
      Words words) {
    LoadLine line = setup.engine().loadLine();
    List<EngineSpeed> speeds = speeds(line);
    MixtureModel model = MixtureModel.of(setup);
    RiskMap map = RiskMap.of(riskModel, model, calibration, speeds, OPENINGS);
    Source source =
        new Source(riskModel, setup.engine().need(), calibration.on(model), accepted, words);
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < speeds.size(); i++) {
      rows.add(row(line, speeds, i, map.rows().get(i), source));
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
      LoadLine line, List<EngineSpeed> speeds, int i, List<Probability> risks, Source source) {
    List<Cell> cells = new ArrayList<>();
    for (int j = 0; j < risks.size(); j++) {
      ThrottleOpening throttle = OPENINGS.get(j);
      boolean ridden = nearest(speeds, line.at(throttle)) == i;
      Probability risk = risks.get(j);
      cells.add(
          new Cell(
              source.words().say(Argument.risk(risk, source.accepted())),
              level(risk, source.accepted()),
              ridden,
              about(source, throttle, speeds.get(i), risk, ridden)));
    }
    return new Row(Math.round(speeds.get(i).rpm()) + "", cells);
  }

  private static String about(
      Source source,
      ThrottleOpening throttle,
      EngineSpeed speed,
      Probability risk,
      boolean ridden) {
    double lambda = Math.exp(source.engine().lnLambda(throttle, speed).middle().mean());
    Message cell =
        Words.message(
            "bench.map.cell",
            "throttle",
            Argument.throttle(throttle),
            "speed",
            Argument.speed(speed),
            "lambda",
            Argument.lambda(Lambda.of(lambda)),
            "limit",
            Argument.lambdaNumber(source.riskModel().limits().lean(throttle, source.need())),
            "risk",
            Argument.risk(risk, source.accepted()));
    return source.words().say(ridden ? Words.message("bench.map.ridden", "cell", cell) : cell);
  }

  private static int nearest(List<EngineSpeed> speeds, EngineSpeed speed) {
    return IntStream.range(0, speeds.size())
        .boxed()
        .min(Comparator.comparingDouble(k -> Math.abs(speeds.get(k).rpm() - speed.rpm())))
        .orElse(0);
  }

  private static int level(Probability risk, Probability accepted) {
    if (risk.isMoreThan(accepted)) {
      return risk.value() > 0.5 ? 3 : 2;
    }
    return risk.value() > accepted.value() / 2 ? 1 : 0;
  }
}
