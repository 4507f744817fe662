package dev.jetting.rules.risk;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.Map;

/**
 * The engine speeds at which a throttle opening is ridden: from that of the level road, on the
 * engine's load line, down to that of a climb.
 *
 * <p>On the load line the road's load grows with the square of the speed above idle, and so with
 * the opening. Uphill the same opening carries more load. If the whole load is twice that of the
 * level road, half of what the opening gives is left for the road. The engine then turns as fast as
 * on the level at half the opening. The shape follows from the load line.
 *
 * <p>The load is this project's own assumption, half as much again. With 200 kg, a drag area of 0.6
 * m² and a rolling resistance of 2 %, 70 km/h need 178 N on the level. A climb of 4.5 % needs 88 N
 * more. On a steeper one a rider opens the throttle further or changes down.
 *
 * <p>Not for higher speeds in a lower gear.
 *
 * @param uphillLoad whole load on a climb by that of the level road at the same speed, 1 (level
 *     roads only) to 10
 */
public record RiddenSpeeds(double uphillLoad) {

  private static final double ASSUMED_LOAD = 1.5;

  /**
   * Checks the load.
   *
   * @param uphillLoad whole load on a climb by that of the level road at the same speed
   * @throws IllegalArgumentException if it is outside 1 to 10
   */
  public RiddenSpeeds {
    if (!(uphillLoad >= 1 && uphillLoad <= 10)) {
      String shown = Double.isFinite(uphillLoad) ? Decimals.shortest(uphillLoad) : "not finite";
      throw InvalidValueException.of(
          Sentence.of("error.name.load-uphill"),
          shown,
          Sentence.of("error.to").with("low", 1).with("high", 10));
    }
  }

  /** {@return climbs on which the load is half as much again as on the level road, as assumed} */
  public static RiddenSpeeds assumed() {
    return new RiddenSpeeds(ASSUMED_LOAD);
  }

  /** {@return level roads only} */
  public static RiddenSpeeds levelRoad() {
    return new RiddenSpeeds(1);
  }

  /**
   * The lowest speed at which an opening is ridden.
   *
   * @param line the engine's load line
   * @param throttle throttle opening
   * @return the speed on a climb; at closed throttle that of idle
   */
  public EngineSpeed uphill(LoadLine line, ThrottleOpening throttle) {
    return line.at(ThrottleOpening.ofShare(throttle.share() / uphillLoad));
  }

  /** {@return each number by its name} */
  public Map<String, Coefficient> basis() {
    return ImmutableMap.of(
        "load uphill by that of the level road",
        Coefficient.assumed(
            uphillLoad, "1", "a climb of 4 to 5 % at 70 km/h; on a steeper one he opens further"),
        UphillRisk.DOUBT_NAME,
        UphillRisk.DOUBT);
  }
}
