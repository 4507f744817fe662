package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;

/**
 * What no reading at another opening shows: the mixture may swing with the engine speed, by waves
 * in intake and exhaust, so that it is leaner between two readings than at both.
 */
final class Swing {

  /** Standard deviation of ln λ (assumed; not measured). */
  private static final double DEVIATION = 0.04;

  private Swing() {}

  /** The lean risk at an opening that was not read, on the load line. */
  static Probability leanRisk(
      RiskModel riskModel, CalibratedModel engine, ThrottleOpening throttle) {
    LoadLine line = engine.setup().engine().loadLine();
    var need = engine.setup().engine().need();
    return Probability.of(
        engine
            .lnLambda(
                throttle,
                line.at(throttle),
                there ->
                    riskModel.uncertainty().partsVariance(there.sizes()) + DEVIATION * DEVIATION)
            .above(StrictMath.log(riskModel.limits().lean(throttle, need).value())));
  }
}
