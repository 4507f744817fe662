package dev.jetting.rules.standard;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.NormalCases;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a proven setting had in hand, a change since may have used up. */
final class ProvenRoom {

  /** The 95 % quantile of the standard normal distribution (from any table). */
  private static final double NORMAL_95 = 1.6448536269514722;

  static final Rule RULE =
      RulePages.draft("proven-room", "change")
          .severity(Severity.DANGER)
          .limit(RuleLimits.PROVEN_ROOM.name(), RuleLimits.PROVEN_ROOM.number())
          .judgingBy(ProvenRoom::judge)
          .when(
              setting -> setting.sheet().provenance().isProof(),
              Message.of("rule.proven-room.unknown"));

  private ProvenRoom() {}

  /** An opening, by how much ln λ has risen there, and how much room there was. */
  private record Place(RiskPoint point, double by, double room, double share) {
    double limit() {
      return share * Math.max(0, room);
    }

    double beyond() {
      return by - limit();
    }

    Margin margin(ThrottleBand band) {
      return Margin.atMost(
          LeanAnywhere.subject(point.inCharge()),
          Measure.logarithm(by),
          Measure.logarithm(limit()),
          band);
    }
  }

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    MixtureModel then;
    MixtureModel around;
    try {
      Setup proven = Change.proven(setting);
      then = MixtureModel.of(proven);
      around = MixtureModel.of(around(setting, proven));
    } catch (IllegalArgumentException e) {
      return Outcome.notEvaluated(Remedies.impossible("rule.proven-room.missing", e));
    }
    Calibration known = AssessedSetting.known(setting.sheet(), setting.riskModel());
    double share = RuleLimits.PROVEN_ROOM.in(limits);
    List<Place> places =
        setting.profile().points().stream()
            .map(point -> place(point, then, around, known, share))
            .toList();
    List<Place> beyond = places.stream().filter(place -> place.beyond() > 0).toList();
    Place worst = places.stream().max(comparingDouble(Place::beyond)).orElseThrow();
    return beyond.isEmpty()
        ? Outcome.passed(worst.margin(ThrottleBand.at(worst.point().mixture().throttle())))
        : Outcome.failed(finding(worst, beyond, setting, then.setup()));
  }

  /** The parts of now in what was around them then: a jet that was changed is no change around. */
  private static Setup around(AssessedSetting setting, Setup then) {
    Setting parts = setting.setting();
    Setting was = then.setting();
    if (!was.carburettor().equals(parts.carburettor())) {
      parts = parts.withCarburettor(was.carburettor());
    }
    if (setting.sheet().provenance().needleWear().isPresent()) {
      parts = parts.withNeedleJet(was.needleJet()).withNeedle(was.needle(), parts.clip());
    }
    return then.withSetting(parts.withIntake(was.intake()));
  }

  /** By how much it is leaner in all, and no more than by what changed around the parts. */
  private static Place place(
      RiskPoint now, MixtureModel then, MixtureModel around, Calibration known, double share) {
    return new Place(
        now,
        Math.min(Change.rise(now, then), Change.rise(now, around)),
        StrictMath.log(now.leanLimit().value()) - proven(now, then, known),
        share);
  }

  /**
   * ln λ that was proven: what was wanted, for so the setting ran well; leaner where what was seen
   * says so, and richer as far as it says so with 95 %.
   */
  private static double proven(RiskPoint now, MixtureModel then, Calibration known) {
    double wanted =
        StrictMath.log(then.setup().engine().need().at(now.mixture().throttle()).value());
    if (known.readings().isEmpty()) {
      return wanted;
    }
    NormalCases seen =
        known.lnLambda(
            then,
            now.mixture().throttle(),
            then.setup().engine().loadLine().at(now.mixture().throttle()));
    return Math.max(seen.mean(), Math.min(wanted, seen.mean() + NORMAL_95 * seen.deviation()));
  }

  private static Finding finding(
      Place worst, List<Place> beyond, AssessedSetting setting, Setup then) {
    List<RiskPoint> run = beyond.stream().map(Place::point).toList();
    return worst
        .margin(Bands.of(run))
        .finding()
        .with("changes", Argument.items(changes(setting.setup(), then)))
        .with("by", Argument.share(StrictMath.expm1(worst.by())))
        .with("room", Argument.share(Math.max(0, StrictMath.expm1(worst.room()))))
        .worstAt(worst.point())
        .with("throttle", Argument.throttle(worst.point().mixture().throttle()))
        .says(
            Message.of("rule.proven-room.finding"),
            Remedy.Aim.richer(worst.point().mixture().throttle(), worst.by())
                .saying(Message.of("rule.proven-room.remedy")));
  }

  private static List<Argument> changes(Setup now, Setup then) {
    List<Argument> changes = new ArrayList<>();
    Setting is = now.setting();
    Setting was = then.setting();
    if (!is.intake().equals(was.intake())) {
      changes.add(Argument.word("rule.proven-room.changed.intake"));
    }
    if (!is.carburettor().equals(was.carburettor())) {
      changes.add(Argument.word("rule.proven-room.changed.carburettor"));
    }
    if (!parts(is).equals(parts(was))) {
      changes.add(Argument.word("rule.proven-room.changed.parts"));
    }
    if (!now.fuel().equals(then.fuel())) {
      changes.add(Argument.word("rule.proven-room.changed.fuel"));
    }
    if (!now.air().equals(then.air())) {
      changes.add(Argument.word("rule.proven-room.changed.air"));
    }
    return changes;
  }

  private static List<Object> parts(Setting setting) {
    return List.of(
        setting.pilotJet(),
        setting.screw(),
        setting.cutaway(),
        setting.idleLift(),
        setting.needleJet(),
        setting.needle(),
        setting.clip(),
        setting.mainJet(),
        setting.floats());
  }
}
