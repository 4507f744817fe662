package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chooses the part that answers a sign: one that acts where the sign was, in the order of the
 * trade. Among the sizes of that part it is the smallest that is enough, or the one that goes
 * furthest.
 */
final class SignedChange {

  /** A part that does less in ln λ does not act there (assumed). */
  private static final double ACTS = 0.01;

  /**
   * More than this in ln λ is leaner somewhere else (assumed: rounding, and the needle's flank).
   */
  static final double NO_LEANER = 0.002;

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

  /** The change that makes an opening richer, and none leaner; empty if no part at hand does. */
  Optional<Alternative> richer(Sign sign) {
    double missing = sign.missing(scorer.setting());
    double now = sign.lnLambda(scorer.setting());
    for (MeteringPart part : TradeOrder.at(sign)) {
      List<Alternative> acting =
          alternatives(part)
              .filter(to -> now - sign.lnLambda(to.setting()) >= Math.min(ACTS, missing))
              .filter(to -> scorer.leansAtMost(NO_LEANER, to.setting()))
              .toList();
      Optional<Alternative> enough =
          acting.stream()
              .filter(to -> !sign.isOpen(to.setting()))
              .max(comparingDouble(to -> sign.lnLambda(to.setting())));
      Optional<Alternative> found =
          enough.or(() -> acting.stream().min(comparingDouble(to -> sign.lnLambda(to.setting()))));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /**
   * The change that makes the opening richer at which faults that are not ruled out leave most
   * risk, and none leaner; empty if no part at hand does.
   */
  Optional<Alternative> richer(Hypotheses hypotheses) {
    ThrottleOpening worst = hypotheses.worst(sheet);
    double accepted = sheet.riding().acceptedRisk().value();
    double now = riskWith(scorer.setting(), worst, hypotheses);
    for (MeteringPart part : TradeOrder.at(worst)) {
      List<Alternative> acting =
          alternatives(part)
              .filter(to -> riskWith(to.setting(), worst, hypotheses) < WORTH * now)
              .filter(to -> scorer.leansAtMost(NO_LEANER, to.setting()))
              .toList();
      Optional<Alternative> found =
          acting.stream()
              .filter(to -> riskWith(to.setting(), worst, hypotheses) <= accepted)
              .max(comparingDouble(to -> riskWith(to.setting(), worst, hypotheses)))
              .or(
                  () ->
                      acting.stream()
                          .min(comparingDouble(to -> riskWith(to.setting(), worst, hypotheses))));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private double riskWith(Setting setting, ThrottleOpening throttle, Hypotheses hypotheses) {
    return hypotheses
        .leanRisk(sheet.withSetup(sheet.setup().withSetting(setting)), throttle)
        .value();
  }

  /** The change by one size that makes an opening leaner and stays safe; empty if there is none. */
  Optional<Alternative> leaner(Sign sign) {
    for (MeteringPart part : TradeOrder.at(sign)) {
      Optional<Alternative> found =
          alternatives(part)
              .filter(to -> !sign.isOpen(to.setting()))
              .filter(to -> isSafeStepTowardsLean(to.setting()))
              .min(comparingDouble(to -> sign.lnLambda(to.setting())));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private boolean isSafeStepTowardsLean(Setting to) {
    return new LeanStep(sheet, findings).allows(to)
        && scorer.leansAtMost(LeanStep.MOST_LEANING, to)
        && scorer.excess(to, 0).isPresent();
  }

  private Stream<Alternative> alternatives(MeteringPart part) {
    return Alternatives.to(scorer.setting(), sheet.parts()).stream()
        .filter(to -> to.part() == part);
  }
}
