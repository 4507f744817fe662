package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Chooses the part that answers a sign: one that acts where the sign was, in the order of the
 * trade. After a sign without harm, and where needle and main act together, it is the first that is
 * enough by itself. Among the sizes of that part it is the smallest that is enough, or the one that
 * goes furthest.
 */
final class SignedChange {

  /** A part that does less in ln λ does not act there (assumed). */
  private static final double ACTS = 0.01;

  /**
   * More than this in ln λ is leaner somewhere else (assumed: rounding, and the needle's flank).
   */
  static final double NO_LEANER = 0.002;

  /** In ln λ. */
  private static final double ROUNDING = 1e-12;

  /** A part that leaves more of a risk does not act on it (assumed). */
  private static final double WORTH = 0.9;

  private final SetupSheet sheet;
  private final SettingScorer scorer;
  private final Findings findings;

  SignedChange(SetupSheet sheet, SettingScorer scorer, Findings findings) {
    this.sheet = sheet;
    this.scorer = scorer;
    this.findings = findings;
  }

  /**
   * The change that makes an opening richer, and none leaner; empty if no part at hand does. One on
   * which the engine would not run comes last: it harms no piston.
   */
  Optional<Alternative> richer(Sign sign) {
    return richer(sign, scorer::runs).or(() -> richer(sign, to -> true));
  }

  private Optional<Alternative> richer(Sign sign, Predicate<Setting> allowed) {
    double missing = sign.missing(sheet.setup());
    double now = sign.lnLambda(sheet.setup());
    return richer(
        TradeOrder.at(sign),
        sign.kind() == Sign.Kind.STOP && TradeOrder.isNeedleAndMain(sign),
        to -> sign.lnLambda(with(to)),
        lean -> now - lean >= Math.min(ACTS, missing),
        lean -> now - lean >= missing + ROUNDING,
        allowed);
  }

  /**
   * The change that makes the opening richer at which faults that are not ruled out leave most
   * risk, and none leaner; empty if no part at hand does.
   */
  Optional<Alternative> richer(Hypotheses hypotheses) {
    ThrottleOpening worst = hypotheses.worst(sheet);
    double accepted = sheet.riding().acceptedRisk().value();
    double now = riskWith(scorer.setting(), worst, hypotheses);
    return richer(
        TradeOrder.at(worst),
        false,
        to -> riskWith(to, worst, hypotheses),
        risk -> risk < WORTH * now,
        risk -> risk <= accepted,
        scorer::runs);
  }

  private record Acting(Alternative to, double lean) {}

  /**
   * The first part in the order that acts, by the size that does least of those that are enough, or
   * by the one that does most.
   *
   * @param passingOver whether a part that acts and is not enough by itself is passed over for one
   *     that is: so no three parts are changed for what one does
   * @param lean how lean a setting is at the opening
   * @param acts whether that is less than now
   * @param enough whether that is as little as is asked for
   * @param allowed which settings may be chosen
   */
  private Optional<Alternative> richer(
      List<MeteringPart> order,
      boolean passingOver,
      ToDoubleFunction<Setting> lean,
      DoublePredicate acts,
      DoublePredicate enough,
      Predicate<Setting> allowed) {
    Optional<Acting> furthest = Optional.empty();
    for (MeteringPart part : order) {
      List<Acting> acting =
          alternatives(part)
              .map(to -> new Acting(to, lean.applyAsDouble(to.setting())))
              .filter(to -> acts.test(to.lean))
              .filter(to -> scorer.leansAtMost(NO_LEANER, to.to.setting()))
              .filter(to -> allowed.test(to.to.setting()))
              .toList();
      Optional<Acting> least =
          acting.stream().filter(to -> enough.test(to.lean)).max(comparingDouble(Acting::lean));
      if (least.isPresent()) {
        return least.map(Acting::to);
      }
      furthest = furthest.or(() -> acting.stream().min(comparingDouble(Acting::lean)));
      if (furthest.isPresent() && !passingOver) {
        break;
      }
    }
    return furthest.map(Acting::to);
  }

  private double riskWith(Setting setting, ThrottleOpening throttle, Hypotheses hypotheses) {
    return hypotheses.leanRisk(sheet.withSetup(with(setting)), throttle).value();
  }

  private Setup with(Setting setting) {
    return sheet.setup().withSetting(setting);
  }

  /**
   * The change by one size that makes an opening leaner and stays safe, among those that are
   * allowed; empty if there is none.
   */
  Optional<Alternative> leaner(Sign sign, Predicate<Setting> allowed) {
    boolean below = sign.observation().throttle().compareTo(TradeOrder.FROM_HERE_THE_MAIN) < 0;
    for (MeteringPart part : TradeOrder.at(sign)) {
      if (part == MeteringPart.MAIN_JET
          && below
          && !findings.trail().isRich(ThrottleOpening.FULL)) {
        continue; // it would lean full throttle, which is right
      }
      Optional<Alternative> found =
          alternatives(part)
              .filter(to -> !sign.isOpen(with(to.setting())))
              .filter(to -> isSafeStepTowardsLean(to.setting()) && allowed.test(to.setting()))
              .min(comparingDouble(to -> sign.lnLambda(with(to.setting()))));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private boolean isSafeStepTowardsLean(Setting to) {
    return new LeanStep(sheet, scorer, findings).allows(to)
        && scorer.leansAtMost(LeanStep.MOST_LEANING, to)
        && scorer.excess(to, 0).isPresent();
  }

  private Stream<Alternative> alternatives(MeteringPart part) {
    return Alternatives.to(scorer.setting(), sheet.parts()).stream()
        .filter(to -> to.part() == part);
  }
}
