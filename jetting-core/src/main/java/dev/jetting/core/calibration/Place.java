package dev.jetting.core.calibration;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;

/**
 * What ln λ less the model's ln λ is a function of: how it answers to the error sources, and the
 * throttle opening for the residual. A source on its own is a place too, without residual.
 *
 * @param slopes ∂ ln λ/∂ z for each source
 * @param throttle throttle opening by share
 * @param hasResidual whether the residual counts here
 * @param disturbed whether a fault that is assumed counts here
 */
record Place(Sensitivities slopes, double throttle, boolean hasResidual, boolean disturbed) {

  /**
   * The chord's reach to each side, in standard deviations. By the three-point Gauss–Hermite rule,
   * its slope is that of the line that fits best under the normal distribution.
   */
  private static final double CHORD = Math.sqrt(3);

  /**
   * Where an engine was read. To the air it answers by the chord over the spread and not by the
   * slope at the model's own point, which has a kink where the main path cuts in.
   */
  static Place of(
      MixtureModel model, ThrottleOpening throttle, EngineSpeed speed, Spreads spreads) {
    double z = CHORD * spreads.air();
    double chord = 0;
    if (z > 0) {
      MixtureModel less = model.differing(ErrorSource.AIR, -z);
      MixtureModel more = model.differing(ErrorSource.AIR, z);
      chord =
          (more.fuelSensitivities(throttle, speed).lnLambda()
                  - less.fuelSensitivities(throttle, speed).lnLambda())
              / (2 * z);
    }
    return inUse(model.fuelSensitivities(throttle, speed).with(chord), throttle.share());
  }

  static Place of(ErrorSource source) {
    Sensitivities only =
        switch (source) {
          case PILOT -> new Sensitivities(1, 0, 0, 0);
          case NEEDLE -> new Sensitivities(0, 1, 0, 0);
          case MAIN -> new Sensitivities(0, 0, 1, 0);
          case AIR -> new Sensitivities(0, 0, 0, 1);
        };
    return new Place(only, 0, false, false);
  }

  /** A place of the engine as it is now, with a fault that is assumed. */
  static Place inUse(Sensitivities slopes, double throttle) {
    return new Place(slopes, throttle, true, true);
  }

  /** The same before any fault that is assumed. */
  Place beforeFaults() {
    return new Place(slopes, throttle, hasResidual, false);
  }

  /** Σ τ² S S' over the sources, and the residual's squared exponential over the throttle. */
  static Kernel<Place> kernel(Spreads spreads) {
    Kernel<Double> residual =
        Kernel.squaredExponential(spreads.residual(), spreads.residualLength());
    return (a, b) -> {
      double sum =
          a.hasResidual() && b.hasResidual() ? residual.covariance(a.throttle(), b.throttle()) : 0;
      for (ErrorSource source : ErrorSource.values()) {
        double spread = spreads.of(source);
        sum += spread * spread * a.slopes().to(source) * b.slopes().to(source);
      }
      return sum;
    };
  }
}
