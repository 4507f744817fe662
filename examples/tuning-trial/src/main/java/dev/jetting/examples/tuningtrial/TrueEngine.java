package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;

/** An engine as it really is. Only its readings show it. */
interface TrueEngine {

  /** The speed of its peak power. */
  EngineSpeed peak();

  /** The air of the day on which it is tuned. */
  Air today();

  /** ln λ in some air with a setting, whose parts are those that this rider owns. */
  double lnLambda(Setting setting, Air air, ThrottleOpening throttle, EngineSpeed speed);

  /** ln λ in some air with the throttle shut at peak speed, on the pilot's fuel alone. */
  double lnOverrun(Setting setting, Air air);

  /** ln of all the air at idle by that which the slide lets in, in the air of the day. */
  default double falseAir(Setting setting) {
    return 0;
  }

  /** How far the slide is open where a rider means to hold an opening. */
  default ThrottleOpening opened(ThrottleOpening meant) {
    return meant;
  }

  /** ln λ today. */
  default double lnLambda(Setting setting, ThrottleOpening throttle, EngineSpeed speed) {
    return lnLambda(setting, today(), throttle, speed);
  }
}
