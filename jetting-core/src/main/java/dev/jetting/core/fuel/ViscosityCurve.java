package dev.jetting.core.fuel;

import dev.jetting.core.checks.Checks;
import java.util.Comparator;
import java.util.List;

/**
 * Kinematic viscosity over temperature: ln ν is linear in 1/T between two points and beyond the
 * outer ones, the law of Andrade (1930), exact at the points.
 */
final class ViscosityCurve {

  private final List<ViscosityPoint> points;

  /** ln of ν in mm²/s at each point. */
  private final double[] logs;

  ViscosityCurve(List<ViscosityPoint> unsorted) {
    points = unsorted.stream().sorted(Comparator.comparing(ViscosityPoint::temperature)).toList();
    Checks.that(
        points.size() >= 2,
        "number of viscosity points",
        points.size(),
        "2 or more, at different temperatures");
    for (int i = 1; i < points.size(); i++) {
      ViscosityPoint colder = points.get(i - 1);
      ViscosityPoint warmer = points.get(i);
      Checks.that(
          colder.temperature().kelvin() < warmer.temperature().kelvin(),
          "second viscosity point at",
          warmer.temperature(),
          "one at each temperature");
      Checks.that(
          colder.viscosity().value() > warmer.viscosity().value(),
          "kinematic viscosity in mm²/s",
          warmer.viscosity().value(),
          "less than at the next colder temperature");
    }
    logs = points.stream().mapToDouble(p -> StrictMath.log(p.viscosity().value())).toArray();
  }

  List<ViscosityPoint> points() {
    return points;
  }

  /** ln of ν in mm²/s. */
  double logAt(double kelvin) {
    int upper = 1;
    while (upper < points.size() - 1 && points.get(upper).temperature().kelvin() < kelvin) {
      upper++;
    }
    double inverse = 1 / points.get(upper - 1).temperature().kelvin();
    double along =
        (inverse - 1 / kelvin) / (inverse - 1 / points.get(upper).temperature().kelvin());
    return logs[upper - 1] + along * (logs[upper] - logs[upper - 1]);
  }
}
