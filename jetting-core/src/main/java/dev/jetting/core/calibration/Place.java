package dev.jetting.core.calibration;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumMap;
import java.util.Map;

/**
 * What ln λ less the model's ln λ is a function of: how it answers to the error sources, and the
 * throttle opening for the residual. A source on its own is a place too, without residual.
 *
 * @param slopes ∂ ln λ/∂ z for each source
 * @param throttle throttle opening by share
 * @param hasResidual whether the residual counts here
 */
record Place(Sensitivities slopes, double throttle, boolean hasResidual) {

  static Place of(MixtureModel model, ThrottleOpening throttle, EngineSpeed speed) {
    return new Place(model.sensitivities(throttle, speed), throttle.share(), true);
  }

  static Place of(ErrorSource source) {
    Map<ErrorSource, Double> one = new EnumMap<>(ErrorSource.class);
    one.put(source, 1.0);
    return new Place(new Sensitivities(one), 0, false);
  }

  /** ln λ by the model. */
  static double modelled(MixtureModel model, ThrottleOpening throttle, EngineSpeed speed) {
    MixturePoint point = model.at(throttle, speed);
    return StrictMath.log(point.lambda().value());
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
