package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * What is true of a setting on one engine, as far as the grip opens it.
 *
 * @param leanAnywhere whether any opening is leaner than the lean limit, on the level road or on a
 *     climb, on any day ridden in
 * @param richer by how much richer than needed in ln λ, the mean over the riding, today
 */
record Truth(boolean leanAnywhere, double richer) {

  /** Finer than the library looks, by the stop as well. */
  static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(129);

  static Truth of(TrueEngine engine, SetupSheet sheet, Setting setting, MixtureLimits limits) {
    boolean lean = false;
    double richer = 0;
    double weights = 0;
    var need = sheet.setup().engine().need();
    ThrottleOpening widest = engine.opened(ThrottleOpening.FULL);
    LoadLine line = sheet.setup().engine().loadLine();
    for (ThrottleOpening throttle : OPENINGS) {
      if (throttle.compareTo(widest) > 0) {
        break;
      }
      EngineSpeed level = line.at(throttle);
      EngineSpeed uphill = sheet.riding().speeds().uphill(line, throttle);
      double limit = StrictMath.log(limits.lean(throttle, need).value());
      for (Air day : sheet.days()) {
        lean |= engine.lnLambda(setting, day, throttle, level) > limit;
        lean |= engine.lnLambda(setting, day, throttle, uphill) > limit;
      }
      double lnLambda = engine.lnLambda(setting, throttle, level);
      double weight = sheet.riding().profile().weightAt(throttle);
      richer += weight * (StrictMath.log(need.at(throttle).value()) - lnLambda);
      weights += weight;
    }
    return new Truth(lean, richer / weights);
  }
}
