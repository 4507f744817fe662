package dev.jetting.core.fuel;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;
import java.util.Comparator;
import java.util.List;

/**
 * Kinematic viscosity over temperature: ln ν is linear in 1/T between two points and beyond the
 * outer ones, the law of Andrade (1930), exact at the points.
 */
final class ViscosityCurve {

  private static final int MOST_POINTS = 50;

  /** What fuel and oil may come to where they are still used, mm²/s: thinner than any, and tar. */
  private static final double LEAST = 0.02;

  private static final double GREATEST = 200_000;

  private final List<ViscosityPoint> points;

  /** ln of ν in mm²/s at each point. */
  private final double[] logs;

  ViscosityCurve(List<ViscosityPoint> unsorted) {
    Checks.atMost(
        "viscosity",
        () -> Sentence.of("error.name.points-of-a-viscosity"),
        unsorted.size(),
        MOST_POINTS);
    points = unsorted.stream().sorted(Comparator.comparing(ViscosityPoint::temperature)).toList();
    Checks.that(
        points.size() >= 2,
        () -> Sentence.of("error.name.viscosity-count"),
        points.size(),
        () -> Sentence.of("error.viscosity-points"));
    for (int i = 1; i < points.size(); i++) {
      ViscosityPoint colder = points.get(i - 1);
      ViscosityPoint warmer = points.get(i);
      Checks.that(
          colder.temperature().kelvin() < warmer.temperature().kelvin(),
          () -> Sentence.of("error.name.viscosity-second"),
          warmer.temperature(),
          () -> Sentence.of("error.viscosity-once"));
      Checks.that(
          colder.viscosity().value() > warmer.viscosity().value(),
          () -> Sentence.of("error.name.viscosity-in"),
          warmer.viscosity().value(),
          () -> Sentence.of("error.viscosity-falls"));
    }
    logs = points.stream().mapToDouble(p -> StrictMath.log(p.viscosity().value())).toArray();
    checkedAt(FuelComponent.LEAST_CELSIUS);
    checkedAt(FuelComponent.GREATEST_CELSIUS);
  }

  /** Points at nearly one temperature lead to anything beyond them. */
  private void checkedAt(double celsius) {
    double log = logAt(Temperature.ofCelsius(celsius).kelvin());
    Checks.that(
        log >= StrictMath.log(LEAST) && log <= StrictMath.log(GREATEST),
        () ->
            Sentence.of("error.name.viscosity-at")
                .with("temperature", Decimals.shortest(celsius) + " °C"),
        Decimals.fixed(StrictMath.exp(Math.min(Math.max(log, -20), 20)), 2),
        () ->
            Sentence.of("error.to")
                .with("low", Decimals.shortest(LEAST))
                .with("high", Decimals.shortest(GREATEST)));
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
