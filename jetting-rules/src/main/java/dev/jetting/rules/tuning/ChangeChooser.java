package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import com.google.common.base.Suppliers;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Chooses the part to change next by what the readings as a whole say, out of those at hand.
 *
 * <p>Safer: the change that brings the risk down, where it is above what is accepted. That counts
 * any throttle opening and the overrun, today and on the coldest and hottest day of the sheet. Of
 * changes that bring it down far enough, it is the one that comes nearest to what the engine needs;
 * of those about as near, the part with most authority where the risk is highest.
 *
 * <p>Nearer: where the risk is accepted, the change that comes nearer to what the engine needs
 * without a great move towards lean. It takes the risk nowhere above half of what is accepted. The
 * other half is kept for what the spreads do not cover (assumed).
 *
 * <p>How near: the mean of |ln (λ by λ needed)| over the riding, leaner than needed counting twice
 * (assumed).
 */
final class ChangeChooser {

  /** Below this gain a change is not worth its risk of a mistake (assumed). */
  private static final double WORTH_CHANGING = 0.005;

  /**
   * The share of the accepted risk up to which a change may only come nearer to need: the rest is
   * kept for what the spreads do not cover (assumed).
   */
  static final double SHARE_FOR_NEARER = 0.5;

  private final SettingScorer scorer;
  private final Setting home;
  private final List<Alternative> others;
  private final Supplier<Boolean> accepts;

  ChangeChooser(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    this(sheet, sheet.setup().setting(), riskModel, calibration);
  }

  /**
   * Chooses for a setting that was moved away from another.
   *
   * @param home the setting that was ridden; of changes as good, the one that keeps more of it
   */
  ChangeChooser(SetupSheet sheet, Setting home, RiskModel riskModel, Calibration calibration) {
    scorer = new SettingScorer(sheet, riskModel, sheet.calibration(riskModel, calibration));
    this.home = home;
    others = Alternatives.to(sheet.setup().setting(), sheet.parts());
    accepts = Suppliers.memoize(() -> scorer.excess(scorer.setting(), 0).isPresent());
  }

  /** A safer setting if it needs one, otherwise a nearer one. */
  Optional<NextChange> choose() {
    return accepts() ? nearer(to -> true) : safer(to -> true);
  }

  /** Whether the setting needs no safer one. */
  boolean accepts() {
    return accepts.get();
  }

  SettingScorer scorer() {
    return scorer;
  }

  /** The safer change among those that are allowed. */
  Optional<NextChange> safer(Predicate<Setting> allowed) {
    double now = scorer.excess(scorer.setting(), Double.MAX_VALUE).orElseThrow();
    RiskPoint worst = scorer.worst(scorer.setting());
    Optional<Weighed> best = Optional.empty();
    for (Alternative other : others) {
      double most = best.map(Weighed::excess).orElse(now);
      OptionalDouble excess = scorer.excess(other.setting(), most);
      if (excess.isEmpty() || excess.getAsDouble() >= now || !allowed.test(other.setting())) {
        continue;
      }
      boolean alike = best.isPresent() && excess.getAsDouble() == most;
      double farthest = alike ? best.get().asNear() : Double.MAX_VALUE;
      OptionalDouble distance = scorer.distance(other.setting(), farthest);
      if (distance.isPresent()) {
        Weighed weighed =
            new Weighed(
                other,
                excess.getAsDouble(),
                distance.getAsDouble(),
                Alternatives.partsChanged(home, other.setting()),
                authority(other.part(), worst));
        best = best.filter(weighed::comesAfter).or(() -> Optional.of(weighed));
      }
    }
    return best.map(
        found ->
            change(
                found.alternative,
                found.excess == 0 ? NextChange.Reason.SAFE : NextChange.Reason.SAFER));
  }

  /** The nearer change among those that are allowed. */
  Optional<NextChange> nearer(Predicate<Setting> allowed) {
    double least =
        scorer.distance(scorer.setting(), Double.MAX_VALUE).orElseThrow() - WORTH_CHANGING;
    Optional<Weighed> best = Optional.empty();
    for (Alternative other : others) {
      double farthest = best.map(Weighed::asNear).orElse(least);
      OptionalDouble distance = scorer.distance(other.setting(), farthest);
      if (distance.isEmpty() || distance.getAsDouble() >= least || !allowed.test(other.setting())) {
        continue;
      }
      Weighed weighed =
          new Weighed(
              other,
              0,
              distance.getAsDouble(),
              Alternatives.partsChanged(home, other.setting()),
              0);
      if (best.filter(weighed::comesAfter).isEmpty()
          && scorer.leansAtMost(LeanStep.MOST_LEANING, other.setting())
          && scorer.excess(other.setting(), 0).isPresent()
          && scorer.keepsInHand(other.setting(), SHARE_FOR_NEARER)) {
        best = Optional.of(weighed);
      }
    }
    return best.map(found -> change(found.alternative, NextChange.Reason.NEARER));
  }

  /** The nearest change that makes no opening leaner, among those that are allowed. */
  Optional<NextChange> richer(Predicate<Setting> allowed) {
    return others.stream()
        .filter(to -> scorer.leansAtMost(SignedChange.NO_LEANER, to.setting()))
        .filter(to -> allowed.test(to.setting()))
        .min(
            comparingDouble(
                to -> scorer.distance(to.setting(), Double.MAX_VALUE).orElse(Double.MAX_VALUE)))
        .map(to -> change(to, NextChange.Reason.RULE));
  }

  NextChange change(Alternative to, NextChange.Reason reason) {
    return new NextChange(
        to.part(),
        to.what(),
        to.setting(),
        scorer.profile(scorer.setting()),
        scorer.profile(to.setting()),
        reason);
  }

  private static double authority(MeteringPart part, RiskPoint at) {
    return at.effects().stream()
        .filter(effect -> effect.part() == part)
        .mapToDouble(PartEffect::authority)
        .sum();
  }

  /**
   * An alternative with its scores: the safer goes first, then the nearer; of those that are as
   * near as makes no change worth while, the one that keeps more of what was ridden, then the part
   * with the most authority where it is needed.
   */
  private record Weighed(
      Alternative alternative,
      double excess,
      double distance,
      long partsChanged,
      double authority) {

    private static final Comparator<Weighed> ORDER =
        comparingDouble(Weighed::excess)
            .thenComparingDouble(Weighed::nearness)
            .thenComparingLong(Weighed::partsChanged)
            .thenComparing(comparingDouble(Weighed::authority).reversed())
            .thenComparingDouble(Weighed::distance)
            .thenComparing(weighed -> weighed.alternative.what());

    private double nearness() {
      return Math.floor(distance / WORTH_CHANGING);
    }

    /** The distance up to which another is no farther. */
    double asNear() {
      return (nearness() + 1) * WORTH_CHANGING;
    }

    boolean comesAfter(Weighed other) {
      return ORDER.compare(this, other) >= 0;
    }
  }
}
