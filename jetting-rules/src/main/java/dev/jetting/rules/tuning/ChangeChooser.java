package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Chooses the part to change next, out of those at hand.
 *
 * <p>Where the risk is above what is accepted, at any throttle opening or on the overrun, today or
 * on the coldest or hottest day of the sheet, the change that brings it down, and of those that
 * bring it down far enough the one that comes nearest to what the engine needs; of those about as
 * near, the part with most authority where the risk is highest. Where it is not, the change that
 * comes nearer to what the engine needs without taking the risk anywhere above half of what is
 * accepted (the rest is kept for what the spreads do not reckon with: assumed) and without a great
 * move towards lean; none if there is no such change: then the setting is as good as these parts
 * make it.
 *
 * <p>How near: the mean of |ln (λ by λ needed)| over the riding, leaner than needed counting twice
 * (assumed).
 */
final class ChangeChooser {

  /** Below this gain a change is not worth its risk of a mistake (assumed). */
  private static final double WORTH_CHANGING = 0.01;

  /**
   * The share of the accepted risk up to which a change may only come nearer to need: the rest is
   * kept for what the spreads do not reckon with (assumed).
   */
  private static final double SHARE_FOR_NEARER = 0.5;

  /** More than this in ln λ at any opening is no single step towards lean (assumed). */
  private static final double MOST_LEANING = 0.12;

  private ChangeChooser() {}

  static Optional<NextChange> choose(
      SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    return choose(sheet, riskModel, calibration, SHARE_FOR_NEARER);
  }

  /** With another share of the accepted risk for a change that only comes nearer to need. */
  static Optional<NextChange> choose(
      SetupSheet sheet, RiskModel riskModel, Calibration calibration, double share) {
    Scales scales = new Scales(sheet, riskModel, calibration);
    List<Alternative> others = Alternatives.to(sheet.setup().setting(), sheet.parts());
    boolean everyDay = sheet.days().size() > 1;
    return accepts(sheet, riskModel, calibration)
        ? nearer(scales, others, share, everyDay)
        : safer(scales, others);
  }

  /** Whether a setting needs no safer one. */
  static boolean accepts(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    Scales scales = new Scales(sheet, riskModel, calibration);
    return scales.excess(sheet.setup().setting(), 0).isPresent();
  }

  private static Optional<NextChange> safer(Scales scales, List<Alternative> others) {
    double now = scales.excess(scales.setting(), Double.MAX_VALUE).orElseThrow();
    RiskPoint worst = scales.worst(scales.setting());
    Optional<Weighed> best = Optional.empty();
    for (Alternative other : others) {
      double most = best.map(Weighed::excess).orElse(now);
      OptionalDouble excess = scales.excess(other.setting(), most);
      if (excess.isEmpty() || excess.getAsDouble() >= now) {
        continue;
      }
      boolean alike = best.isPresent() && excess.getAsDouble() == most;
      double farthest = alike ? best.get().asNear() : Double.MAX_VALUE;
      OptionalDouble distance = scales.distance(other.setting(), farthest);
      if (distance.isPresent()) {
        Weighed weighed =
            new Weighed(
                other,
                excess.getAsDouble(),
                distance.getAsDouble(),
                authority(other.part(), worst));
        best = best.filter(weighed::comesAfter).or(() -> Optional.of(weighed));
      }
    }
    return best.map(
        found ->
            change(
                scales,
                found.alternative,
                found.excess == 0
                    ? "It brings the lean risk to what is accepted and stays nearest to what is needed."
                    : "It takes most off the lean risk; more changes must follow."));
  }

  private static Optional<NextChange> nearer(
      Scales scales, List<Alternative> others, double share, boolean everyDay) {
    double least =
        scales.distance(scales.setting(), Double.MAX_VALUE).orElseThrow() - WORTH_CHANGING;
    Optional<Weighed> best = Optional.empty();
    for (Alternative other : others) {
      double farthest = best.map(Weighed::asNear).orElse(least);
      OptionalDouble distance = scales.distance(other.setting(), farthest);
      if (distance.isEmpty() || distance.getAsDouble() >= least) {
        continue;
      }
      Weighed weighed = new Weighed(other, 0, distance.getAsDouble(), 0);
      if (best.filter(weighed::comesAfter).isEmpty()
          && scales.leansAtMost(MOST_LEANING, other.setting())
          && scales.excess(other.setting(), 0).isPresent()
          && scales.keepsInHand(other.setting(), share)) {
        best = Optional.of(weighed);
      }
    }
    return best.map(
        found ->
            change(
                scales,
                found.alternative,
                "It comes nearer to what the engine needs; the risk stays within what is accepted"
                    + (everyDay ? ", on the coldest and the hottest day as well." : ".")));
  }

  private static double authority(MeteringPart part, RiskPoint at) {
    return at.effects().stream()
        .filter(effect -> effect.part() == part)
        .mapToDouble(PartEffect::authority)
        .sum();
  }

  /**
   * An alternative on the scales: the safer goes first, then the nearer; of those that are as near
   * as makes no change worth while, the part with the most authority where it is needed.
   */
  private record Weighed(
      Alternative alternative, double excess, double distance, double authority) {

    private static final Comparator<Weighed> ORDER =
        comparingDouble(Weighed::excess)
            .thenComparingDouble(Weighed::nearness)
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

  private static NextChange change(Scales scales, Alternative to, String why) {
    return new NextChange(
        to.part(),
        to.what(),
        to.setting(),
        scales.profile(scales.setting()),
        scales.profile(to.setting()),
        why);
  }
}
