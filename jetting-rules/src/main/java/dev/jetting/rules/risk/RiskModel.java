package dev.jetting.rules.risk;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;
import org.hipparchus.special.Erf;

/**
 * From a mixture to the probability that it is too lean, on an engine that nobody has measured.
 *
 * <p>ln λ is taken as normal about the model's value; its variance is the sum of those of the four
 * error sources, each through its sensitivity, of the residual, and of the parts' tolerances. The
 * lean risk is P(ln λ &gt; ln λ_limit).
 *
 * @param limits how lean and how rich is too much
 * @param uncertainty how far an engine may differ from the model
 * @param steps the customary step of each part
 */
public record RiskModel(MixtureLimits limits, ModelUncertainty uncertainty, CustomarySteps steps) {

  private static final RiskModel ASSUMED =
      new RiskModel(MixtureLimits.assumed(), ModelUncertainty.assumed(), CustomarySteps.assumed());

  /**
   * Checks for nulls.
   *
   * @param limits how lean and how rich is too much
   * @param uncertainty how far an engine may differ from the model
   * @param steps the customary step of each part
   */
  public RiskModel {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Objects.requireNonNull(steps, "steps");
  }

  /** {@return the library's own assumed limits, spreads and steps} */
  public static RiskModel assumed() {
    return ASSUMED;
  }

  /**
   * The lean risk over throttle openings along the engine's load line.
   *
   * @param model the mixture model of a setup
   * @param throttles the openings, rising; at least one
   * @return the risk at each
   * @throws IllegalArgumentException if there is no opening
   */
  public RiskProfile profile(MixtureModel model, List<ThrottleOpening> throttles) {
    return new RiskProfile(throttles.stream().map(throttle -> point(model, throttle)).toList());
  }

  private RiskPoint point(MixtureModel model, ThrottleOpening throttle) {
    MixturePoint mixture = model.at(throttle);
    List<PartEffect> effects = model.effects(throttle, mixture.speed(), steps);
    double spread = spread(model.sensitivities(throttle, mixture.speed()), effects);
    MixtureNeed need = model.setup().engine().need();
    Lambda leanLimit = limits.lean(throttle, need);
    return new RiskPoint(
        mixture,
        spread,
        leanLimit,
        limits.rich(throttle, need),
        exceedance(mixture.lambda(), spread, leanLimit),
        effects);
  }

  private double spread(Sensitivities sensitivities, List<PartEffect> effects) {
    double variance = square(uncertainty.residual().value());
    for (ErrorSource source : ErrorSource.values()) {
      variance += square(sensitivities.to(source) * uncertainty.spread(source));
    }
    for (PartEffect effect : effects) {
      double perUnit = (effect.leaner() - effect.richer()) / 2 / steps.of(effect.part());
      variance += square(perUnit * uncertainty.tolerance(effect.part()));
    }
    return Math.sqrt(variance);
  }

  /** P(ln λ &gt; ln limit) for a normal ln λ; without spread, 0 or 1. */
  private static Probability exceedance(Lambda lambda, double spread, Lambda limit) {
    double below = StrictMath.log(limit.value() / lambda.value());
    if (spread == 0) {
      return Probability.of(below < 0 ? 1 : 0);
    }
    return Probability.of(Erf.erfc(below / (spread * Math.sqrt(2))) / 2);
  }

  private static double square(double x) {
    return x * x;
  }
}
