package dev.jetting.rules.risk;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * The lean risk by throttle opening and engine speed, for a chart or a spreadsheet.
 *
 * <p>An engine reaches only a part of the map: at a small opening it does not rev high, at full
 * throttle it hardly runs slow. The load line of the engine marks where it is ridden steadily.
 *
 * @param speeds the engine speeds, at least one
 * @param throttles the openings, at least one
 * @param rows for each speed, in their order, the lean risk at each opening, in theirs
 */
public record RiskMap(
    List<EngineSpeed> speeds, List<ThrottleOpening> throttles, List<List<Probability>> rows) {

  /**
   * Copies the lists.
   *
   * @param speeds the engine speeds, at least one
   * @param throttles the openings, at least one
   * @param rows for each speed, in their order, the lean risk at each opening, in theirs
   * @throws IllegalArgumentException if there is no opening or speed, or the rows do not match them
   */
  public RiskMap {
    throttles = List.copyOf(throttles);
    speeds = List.copyOf(speeds);
    rows = rows.stream().map(List::copyOf).toList();
    int width = throttles.size();
    if (width == 0
        || speeds.isEmpty()
        || rows.size() != speeds.size()
        || rows.stream().anyMatch(row -> row.size() != width)) {
      throw new IllegalArgumentException(
          "risk map of "
              + width
              + " openings and "
              + speeds.size()
              + " speeds with "
              + rows.size()
              + " rows: allowed a row for each speed with a risk for each opening");
    }
  }

  /**
   * Computes the map of a setup.
   *
   * @param riskModel limits, spreads and steps
   * @param model the mixture model of the setup
   * @param calibration what readings have taught about the engine
   * @param speeds the engine speeds, each more than zero, at least one
   * @param throttles the openings, at least one
   * @return the map
   * @throws IllegalArgumentException if a speed is zero, or there is no opening or speed
   */
  public static RiskMap of(
      RiskModel riskModel,
      MixtureModel model,
      Calibration calibration,
      List<EngineSpeed> speeds,
      List<ThrottleOpening> throttles) {
    Objects.requireNonNull(riskModel, "riskModel");
    CalibratedModel engine = calibration.on(model);
    return new RiskMap(
        speeds,
        throttles,
        speeds.stream()
            .map(
                speed ->
                    throttles.stream()
                        .map(throttle -> riskModel.leanRisk(engine, throttle, speed))
                        .toList())
            .toList());
  }

  /**
   * Returns the map as comma-separated values with a header line: one line for each speed and
   * opening, lines ended by a line feed.
   *
   * @return the text
   */
  public String csv() {
    StringBuilder text = new StringBuilder("speed_rpm,throttle_percent,lean_risk\n");
    for (int i = 0; i < speeds.size(); i++) {
      for (int j = 0; j < throttles.size(); j++) {
        text.append(CsvNumber.text(speeds.get(i).rpm())).append(',');
        text.append(CsvNumber.text(throttles.get(j).percent())).append(',');
        text.append(CsvNumber.text(rows.get(i).get(j).value())).append('\n');
      }
    }
    return text.toString();
  }
}
