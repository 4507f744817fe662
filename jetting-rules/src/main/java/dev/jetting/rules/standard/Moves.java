package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Lambda;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Which moves of a part can be advised. */
final class Moves {

  private static final double QUARTER_TURN = 0.25;

  private static final NormalDistribution STANDARD = new NormalDistribution();

  private Moves() {}

  /** Whether the carburettor has a step left that way; of parts to buy there always is one. */
  static boolean isPossible(MeteringPart part, boolean richer, Setting setting) {
    return switch (part) {
      case CLIP ->
          (richer ? setting.clip().nextTowardsBottom() : setting.clip().nextTowardsTop())
              .isPresent();
      case SCREW -> isPossibleForScrew(richer, setting);
      case CUTAWAY -> !richer || setting.cutaway().millimetres() > 0;
      case PILOT_JET, NEEDLE_JET, NEEDLE_DIAMETER, NEEDLE_TAPER, MAIN_JET -> true;
    };
  }

  private static boolean isPossibleForScrew(boolean richer, Setting setting) {
    boolean airScrew = setting.carburettor().pilot().screwKind() == ScrewKind.AIR;
    double turns = setting.screw().turns().turns();
    return richer == airScrew
        ? turns >= QUARTER_TURN
        : turns + QUARTER_TURN <= setting.carburettor().pilot().mostTurns().turns();
  }

  /**
   * Whether it is known that the lean risk stays within what is accepted, at every assessed opening
   * and on every day, and the overrun rich enough, with a part one customary step leaner: by the
   * shift of ln λ that the step makes there, the spread staying.
   */
  static boolean leavesRiskAccepted(MeteringPart part, AssessedSetting assessed) {
    double accepted = assessed.sheet().riding().acceptedRisk().value();
    double most = STANDARD.inverseCumulativeProbability(accepted);
    return seesAll(assessed)
        && Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
            .map(RiskProfile::points)
            .flatMap(points -> points.stream())
            .allMatch(point -> leaned(point, part) <= most)
        && leavesOverrun(part, assessed);
  }

  /** What a part does outside of a band, a rule that was narrowed to it cannot know. */
  private static boolean seesAll(AssessedSetting assessed) {
    List<RiskPoint> points = assessed.profile().points();
    return points.get(0).mixture().throttle().equals(ThrottleOpening.CLOSED)
        && points.get(points.size() - 1).mixture().throttle().equals(ThrottleOpening.FULL);
  }

  private static boolean leavesOverrun(MeteringPart part, AssessedSetting assessed) {
    if (part.circuit() != Circuit.PILOT) {
      return true;
    }
    Lambda limit = assessed.riskModel().limits().overrun(assessed.setup().engine().need());
    return Room.log(assessed.overrun().lambda(), limit)
            + PilotOnOverrun.stepped(part, false, assessed)
        <= 0;
  }

  /** The risk after the step, as a quantile of the standard normal distribution. */
  private static double leaned(RiskPoint point, MeteringPart part) {
    double by =
        point.effects().stream()
            .filter(effect -> effect.part() == part)
            .mapToDouble(PartEffect::leaner)
            .sum();
    double now = STANDARD.inverseCumulativeProbability(point.leanRisk().value());
    double over = StrictMath.log(point.lambda().value() / point.leanLimit().value()) + by;
    if (point.spread() == 0) {
      return over > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
    // Far below the limit the risk has no quantile left, and λ itself tells how far.
    return Math.max(now + by / point.spread(), over / point.spread());
  }
}
