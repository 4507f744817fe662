package dev.jetting.rules.standard;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What the model says has changed since a setup was as it was before: it leaves out the level,
 * which both have in common.
 *
 * @param subject path of what has changed
 * @param before what there was, in words such as "with E5"
 * @param after what there is, in the same words
 * @param remedy what to do; empty to say which way and how far it moved
 */
record Change(String subject, Message before, Message after, Optional<Message> remedy) {

  Change(String subject, Message before, Message after) {
    this(subject, before, after, Optional.empty());
  }

  /**
   * A throttle opening, by how much ln λ has risen there by this change alone and by all changes,
   * and by how much it may.
   */
  private record At(RiskPoint point, double by, double inAll, double limit) {
    /** By how much it has moved, as far as other changes did not make it good. */
    double moved() {
      return by > 0 ? Math.min(by, inAll) : Math.min(-by, -inAll);
    }

    double beyond() {
      return moved() - limit;
    }

    Margin margin(String subject, ThrottleBand band) {
      return Margin.atMost(subject, Measure.logarithm(moved()), Measure.logarithm(limit), band);
    }
  }

  /** Judges a setting against the same one in a setup that may prove impossible. */
  Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits, Supplier<Setup> former) {
    return judge(setting, limits, former, former);
  }

  /** The same of what has changed since it was proven, unless other changes made it good. */
  Outcome judgeSinceProven(
      AssessedSetting setting, Map<String, Coefficient> limits, Supplier<Setup> former) {
    return judge(setting, limits, former, () -> proven(setting));
  }

  private Outcome judge(
      AssessedSetting setting,
      Map<String, Coefficient> limits,
      Supplier<Setup> former,
      Supplier<Setup> whole) {
    double share = RuleLimits.CHANGE.in(limits);
    MixtureModel model;
    MixtureModel proven;
    try {
      model = MixtureModel.of(former.get());
      proven = MixtureModel.of(whole.get());
    } catch (IllegalArgumentException e) {
      return Outcome.notEvaluated(Remedies.impossible("change.missing", e));
    }
    List<At> places =
        setting.profile().points().stream().map(p -> at(p, model, proven, setting, share)).toList();
    return Outcome.of(
        Stream.of(
                places.stream().filter(place -> place.by() > 0).toList(),
                places.stream().filter(place -> place.by() < 0).toList())
            .flatMap(side -> finding(side).stream())
            .toList(),
        places.stream()
            .max(comparingDouble(At::beyond))
            .map(at -> at.margin(subject, ThrottleBand.at(at.point().mixture().throttle())))
            .stream()
            .toList());
  }

  /**
   * The proven setup on the engine as it is: another engine's air is no matter of the carburettor.
   *
   * @throws IllegalArgumentException if its parts do not go together
   */
  static Setup proven(AssessedSetting setting) {
    Setup now = setting.setup();
    Provenance then = setting.sheet().provenance();
    return now.withSetting(then.provenSetting(now.setting()))
        .withAir(then.air().orElse(now.air()))
        .withFuel(then.fuel().orElse(now.fuel()));
  }

  private static At at(
      RiskPoint point,
      MixtureModel former,
      MixtureModel proven,
      AssessedSetting setting,
      double share) {
    return new At(
        point,
        rise(point, former),
        rise(point, proven),
        share * Headroom.forLeaning(point, setting));
  }

  /** By how much ln λ is higher at an opening now than in another setup. */
  static double rise(RiskPoint now, MixtureModel then) {
    return Headroom.log(now.mixture().lambda(), then.at(now.mixture().throttle()).lambda());
  }

  private Optional<Finding> finding(List<At> side) {
    List<At> beyond = side.stream().filter(place -> place.beyond() > 0).toList();
    return beyond.stream()
        .max(comparingDouble(At::beyond))
        .map(worst -> finding(worst, Bands.of(beyond.stream().map(At::point).toList())));
  }

  private Finding finding(At worst, ThrottleBand band) {
    boolean leaner = worst.by() > 0;
    return worst
        .margin(subject, band)
        .finding()
        .with("before", Argument.words(before))
        .with("after", Argument.words(after))
        .with("by", Argument.share(StrictMath.expm1(worst.moved())))
        .with("side", Remedies.side(leaner))
        .worstAt(worst.point())
        .with("throttle", Argument.throttle(worst.point().mixture().throttle()))
        .says(
            Message.of("change.finding"),
            new Remedy.Advice(remedy.orElseGet(() -> remedy(worst, band))));
  }

  /** What is too lean or too rich by it, other rules find and remedy. */
  private static Message remedy(At worst, ThrottleBand band) {
    ThrottleOpening throttle = worst.point().mixture().throttle();
    Message where =
        Message.of(band.equals(ThrottleBand.WHOLE) ? "change.where.whole" : "change.where.part");
    return Message.joined(
        worst.by() > 0
            ? List.of(
                Remedy.Aim.richer(throttle, worst.by()).message(), Message.of("change.back"), where)
            : List.of(Message.of("change.safe"), where));
  }
}
