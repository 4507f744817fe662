package dev.jetting.rules.standard;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.parts.Coefficient;
import java.util.Map;

/** The limits of the standard rules that do not come from the risk model. */
final class Limits {

  /** Least turns out at which a screw still meters. */
  static final Coefficient LEAST_TURNS =
      Coefficient.assumed(0.5, "turns", "closer in, a bigger change of pilot jet is due");

  /** Capacity of the float valve by the fuel that the engine draws at full throttle. */
  static final Coefficient FLOAT_VALVE_RESERVE =
      Coefficient.assumed(1.25, "1", "for a low tank, a tired tap and a hot hose");

  /** Difference of ln (λ by λ wanted) between the cutaway's and the needle's field. */
  static final Coefficient BALANCE =
      Coefficient.assumed(
          0.08, "1", "about what one needle jet or one slide brings out of balance");

  /** Area of the ring at full lift by the area of the main jet. */
  static final Coefficient RING_BY_MAIN =
      Coefficient.assumed(1.0, "1", "below, the ring is the smaller of the two in series");

  static final Map<String, Coefficient> BASIS =
      ImmutableMap.of(
          "least turns of a pilot screw", LEAST_TURNS,
          "float valve capacity by full-throttle flow", FLOAT_VALVE_RESERVE,
          "imbalance of cutaway and needle", BALANCE,
          "needle ring by main jet at full lift", RING_BY_MAIN);

  private Limits() {}
}
