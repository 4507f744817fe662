package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;

/** An engine as it really is, which only its readings tell. */
interface TrueEngine {

  /** The air of the day on which it is tuned. */
  Air today();

  /** ln λ in some air with a setting, whose parts are those that this rider owns. */
  double lnLambda(Setting setting, Air air, ThrottleOpening throttle, EngineSpeed speed);

  /** ln λ today. */
  default double lnLambda(Setting setting, ThrottleOpening throttle, EngineSpeed speed) {
    return lnLambda(setting, today(), throttle, speed);
  }
}
