package dev.jetting.rules.advice;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * One part put on another rung.
 *
 * @param ladder the part's ladder
 * @param rung the rung it is put on
 * @param from the setting before
 * @param to the setting after
 */
record Step(Ladder ladder, int rung, Judged from, Judged to) {

  Remedy.Change change(ThrottleOpening throttle, boolean enough) {
    Rung now = ladder.rungs().get(ladder.own());
    Rung then = ladder.rungs().get(rung);
    return new Remedy.Change(
        ladder.part(),
        direction(throttle),
        now.name(),
        then.name(),
        Math.abs(rung - ladder.own()),
        then.atHand() ? Remedy.Source.AT_HAND : Remedy.Source.TO_BUY,
        new Remedy.Effect(
            throttle, state(from.assessed(), throttle), state(to.assessed(), throttle)),
        enough ? Remedy.Relief.WHOLE : Remedy.Relief.PARTIAL,
        to.setting());
  }

  /** Needles can be richer here and leaner there; every other part goes one way. */
  private Remedy.Direction direction(ThrottleOpening throttle) {
    boolean richer =
        ladder.part() == MeteringPart.NEEDLE_DIAMETER
            ? lnLambda(throttle) < 0
            : rung > ladder.own();
    if (ladder.part() == MeteringPart.NEEDLE_DIAMETER && lnLambda(throttle) == 0) {
      return Remedy.Direction.OTHER;
    }
    return richer ? Remedy.Direction.RICHER : Remedy.Direction.LEANER;
  }

  /** By how much ln λ of the day changes at an opening. */
  double lnLambda(ThrottleOpening throttle) {
    return StrictMath.log(
        to.assessed().profile().nearest(throttle).lambda().value()
            / from.assessed().profile().nearest(throttle).lambda().value());
  }

  /**
   * The opening where the step matters most: where it is too lean on any day, or else too rich, and
   * the step does most; or where the step does most.
   */
  ThrottleOpening where() {
    Probability accepted = from.assessed().sheet().riding().acceptedRisk();
    List<RiskPoint> points = from.assessed().profile().points();
    ThrottleOpening where = points.get(0).mixture().throttle();
    double most = -1;
    for (int i = 0; i < points.size(); i++) {
      RiskPoint today = points.get(i);
      double lean = 0;
      for (RiskProfile day : Judged.days(from.assessed())) {
        RiskPoint point = day.points().get(i);
        lean =
            Math.max(lean, point.leanRisk().isMoreThan(accepted) ? point.leanBeyond(accepted) : 0);
      }
      double rich = Math.max(0, StrictMath.log(today.richLimit().value() / today.lambda().value()));
      double does = Math.abs(lnLambda(today.mixture().throttle()));
      double weight = does * (lean > 0 ? 1000 + lean : rich > 0 ? 1 + rich : 1e-3);
      if (weight > most) {
        most = weight;
        where = today.mixture().throttle();
      }
    }
    return where;
  }

  /** Climbs included, as the verdict judges. */
  private static Remedy.State state(AssessedSetting assessed, ThrottleOpening throttle) {
    Probability there = assessed.profile().nearest(throttle).riddenRisk();
    for (RiskProfile day : Judged.days(assessed)) {
      there = greater(there, day.nearest(throttle).riddenRisk());
    }
    return new Remedy.State(
        assessed.profile().nearest(throttle).lambda(),
        there,
        assessed.worst().leanRisk(),
        assessed.overrun().lambda());
  }

  private static Probability greater(Probability a, Probability b) {
    return b.isMoreThan(a) ? b : a;
  }
}
