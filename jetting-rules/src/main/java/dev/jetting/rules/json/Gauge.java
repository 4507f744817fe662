package dev.jetting.rules.json;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;

/** Where a measure that a condition names comes from. */
sealed interface Gauge {

  /** The name by which conditions call it. */
  String name();

  /** What it is, for people. */
  String words();

  /** A text. */
  record Word(String name, String words, Function<AssessedSetting, String> text) implements Gauge {}

  /** A number. */
  sealed interface Numeric extends Gauge {
    Dimension dimension();
  }

  /** One number of the whole setting; empty where it has none. */
  record Plain(
      String name,
      String words,
      Dimension dimension,
      Function<AssessedSetting, Optional<Double>> number)
      implements Numeric {}

  /** A number at each assessed throttle opening. */
  record Swept(
      String name,
      String words,
      Dimension dimension,
      Function<AssessedSetting, RiskProfile> profile,
      ToDoubleBiFunction<AssessedSetting, RiskPoint> number)
      implements Numeric {

    /** Reads one number in a throttle band; empty if no opening in it was assessed. */
    Optional<Reading> read(AssessedSetting setting, Take take, ThrottleBand within) {
      List<Reading> readings =
          profile.apply(setting).points().stream()
              .filter(point -> within.contains(point.mixture().throttle()))
              .map(
                  point ->
                      new Reading(
                          number.applyAsDouble(setting, point),
                          ThrottleBand.at(point.mixture().throttle())))
              .toList();
      return switch (take) {
        case LOWEST -> readings.stream().reduce((a, b) -> b.number() < a.number() ? b : a);
        case HIGHEST -> readings.stream().reduce((a, b) -> b.number() > a.number() ? b : a);
        case MEAN -> mean(readings);
      };
    }

    private static Optional<Reading> mean(List<Reading> readings) {
      double sum = 0;
      for (Reading reading : readings) {
        sum += reading.number();
      }
      return readings.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Reading(
                  sum / readings.size(),
                  new ThrottleBand(
                      readings.get(0).where().from(),
                      readings.get(readings.size() - 1).where().to())));
    }
  }

  /**
   * A number that was read.
   *
   * @param where the throttle opening it was found at, or the band it speaks of
   */
  record Reading(double number, ThrottleBand where) {}
}
