package dev.jetting.rules.json;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;

/** Where a measure that a condition names comes from. */
sealed interface MeasureDefinition {

  /** The name by which conditions call it. */
  String name();

  /** What it is, for people. */
  String words();

  /** What it is, as a value of a message. */
  default Argument named() {
    return Argument.words(Message.named("measure", words()));
  }

  /** A text. */
  record Word(String name, String words, Function<AssessedSetting, String> text)
      implements MeasureDefinition {}

  /** A number. */
  sealed interface Numeric extends MeasureDefinition {
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
      List<RiskPoint> points =
          profile.apply(setting).points().stream()
              .filter(point -> within.contains(point.mixture().throttle()))
              .toList();
      Stream<Reading> readings =
          points.stream()
              .map(
                  point ->
                      new Reading(
                          number.applyAsDouble(setting, point),
                          ThrottleBand.at(point.mixture().throttle())));
      return switch (take) {
        case LOWEST -> readings.reduce((a, b) -> b.number() < a.number() ? b : a);
        case HIGHEST -> readings.reduce((a, b) -> b.number() > a.number() ? b : a);
        case MEAN -> points.isEmpty() ? Optional.empty() : mean(setting, points);
      };
    }

    private Optional<Reading> mean(AssessedSetting setting, List<RiskPoint> points) {
      ThrottleBand all =
          new ThrottleBand(
              points.get(0).mixture().throttle(),
              points.get(points.size() - 1).mixture().throttle());
      return new RiskProfile(points)
          .mean(RidingProfile.even(), point -> number.applyAsDouble(setting, point))
          .map(mean -> new Reading(mean, all));
    }
  }

  /**
   * A number that was read.
   *
   * @param where the throttle opening it was found at, or the band it speaks of
   */
  record Reading(double number, ThrottleBand where) {}
}
