package dev.jetting.rules.standard;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What the model says has changed since a setup was as it was before: it leaves out the level,
 * which both have in common.
 *
 * @param subject path of what has changed
 * @param before what there was, as words after "before"
 * @param after what there is, in the same words
 * @param remedy what to do; empty to name the parts that make the change good
 */
record Change(String subject, String before, String after, Optional<String> remedy) {

  Change(String subject, String before, String after) {
    this(subject, before, after, Optional.empty());
  }

  /** A throttle opening, by how much ln λ has risen there, and by how much it may. */
  private record At(RiskPoint point, double by, double limit) {
    double beyond() {
      return Math.abs(by) - limit;
    }
  }

  /** Judges a setting against the same one in a setup that may prove impossible. */
  Outcome judge(AssessedSetting setting, Supplier<Setup> former) {
    MixtureModel model;
    try {
      model = MixtureModel.of(former.get());
    } catch (IllegalArgumentException e) {
      return Outcome.notEvaluated("a setup that goes together: " + e.getMessage());
    }
    List<At> places = setting.profile().points().stream().map(p -> at(p, model, setting)).toList();
    return Outcome.of(
        Stream.of(
                places.stream().filter(place -> place.by() > 0).toList(),
                places.stream().filter(place -> place.by() < 0).toList())
            .flatMap(side -> finding(side, setting).stream())
            .toList());
  }

  private static At at(RiskPoint point, MixtureModel former, AssessedSetting setting) {
    double by = Room.log(point.mixture().lambda(), former.at(point.mixture().throttle()).lambda());
    return new At(point, by, Limits.CHANGE.value() * Room.forLeaning(point, setting));
  }

  private Optional<Finding> finding(List<At> side, AssessedSetting setting) {
    List<At> beyond = side.stream().filter(place -> place.beyond() > 0).toList();
    return beyond.stream()
        .max(comparingDouble(At::beyond))
        .map(worst -> finding(worst, Bands.of(beyond.stream().map(At::point).toList()), setting));
  }

  private Finding finding(At worst, ThrottleBand band, AssessedSetting setting) {
    boolean leaner = worst.by() > 0;
    return Finding.above(
            subject, Measure.ratio(Math.abs(worst.by())), Measure.ratio(worst.limit()), band)
        .with("before", before)
        .with("after", after)
        .with("by", Remedies.percent(Math.abs(StrictMath.expm1(worst.by()))))
        .with("side", leaner ? "leaner" : "richer")
        .with("throttle", TradeStyle.throttle(worst.point().mixture().throttle()))
        .says(
            "Proven {before}, now {after}: up to {by} {side} than it was, most at {throttle}.",
            remedy.orElseGet(() -> everywhere(band) + parts(worst, setting)));
  }

  private static String everywhere(ThrottleBand band) {
    return band.equals(ThrottleBand.WHOLE)
        ? "Every circuit, not one jet alone; at the worst: "
        : "";
  }

  private static String parts(At place, AssessedSetting setting) {
    return place.by() > 0
        ? Remedies.richer(place.point(), setting.setting(), place.by())
        : Remedies.leaner(place.point(), setting.setting(), place.by());
  }
}
