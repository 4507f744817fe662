package dev.jetting.rules.standard;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Lambda;

/** Where a mixture stands between the limits, in ln λ. */
final class Headroom {

  private Headroom() {}

  /** From what is wanted to the lean limit; 0 where a policy leaves none. */
  static double forLeaning(RiskPoint point, AssessedSetting setting) {
    return Math.max(0, log(point.leanLimit(), wanted(point, setting)));
  }

  /** From the rich limit to the lean limit; 0 where a policy leaves none. */
  static double inAll(RiskPoint point) {
    return Math.max(0, log(point.leanLimit(), point.richLimit()));
  }

  /** By how much a mixture is leaner than wanted; below zero if richer. */
  static double offset(RiskPoint point, AssessedSetting setting) {
    return log(point.lambda(), wanted(point, setting));
  }

  static double log(Lambda leaner, Lambda richer) {
    return StrictMath.log(leaner.value() / richer.value());
  }

  private static Lambda wanted(RiskPoint point, AssessedSetting setting) {
    MixtureNeed need = setting.setup().engine().need();
    return need.at(point.mixture().throttle());
  }
}
