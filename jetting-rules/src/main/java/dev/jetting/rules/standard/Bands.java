package dev.jetting.rules.standard;

import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Runs of neighbouring throttle openings at which something holds. */
final class Bands {

  private Bands() {}

  static List<List<RiskPoint>> where(List<RiskPoint> points, Predicate<RiskPoint> holds) {
    List<List<RiskPoint>> runs = new ArrayList<>();
    boolean inside = false;
    for (RiskPoint point : points) {
      boolean before = inside;
      inside = holds.test(point);
      if (inside && !before) {
        runs.add(new ArrayList<>());
      }
      if (inside) {
        runs.get(runs.size() - 1).add(point);
      }
    }
    return runs;
  }

  static ThrottleBand of(List<RiskPoint> run) {
    return new ThrottleBand(
        run.get(0).mixture().throttle(), run.get(run.size() - 1).mixture().throttle());
  }
}
