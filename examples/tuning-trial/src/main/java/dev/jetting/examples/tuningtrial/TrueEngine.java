package dev.jetting.examples.tuningtrial;

import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;

/** An engine as it really is, which only its readings tell. */
interface TrueEngine {

  /** ln λ with a setting, whose parts are those that this rider owns. */
  double lnLambda(Setting setting, ThrottleOpening throttle, EngineSpeed speed);
}
