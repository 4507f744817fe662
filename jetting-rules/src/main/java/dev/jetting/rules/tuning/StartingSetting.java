package dev.jetting.rules.tuning;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * A setting to start with on an engine that nobody has measured, out of the parts at hand.
 *
 * @param setting the setting
 * @param profile its lean risk over the throttle range in the air of the day
 * @param standing how safe it is, and whether the engine runs on it
 * @param haveAtHand what to have at hand before the first ride, of the parts there are: the next
 *     two bigger main jets and the next bigger pilot jet
 * @param mostTelling the opening whose reading narrows the spread over the riding most
 */
public record StartingSetting(
    Setting setting,
    RiskProfile profile,
    Standing standing,
    List<String> haveAtHand,
    ThrottleOpening mostTelling) {

  /** How safe a starting setting is, and whether the engine runs on it, as modelled. */
  public enum Standing {
    /** Safe on each day, climbs and overrun included, and nowhere richer than it runs cleanly. */
    CLEAN,
    /** Safe, and somewhere richer than the engine runs cleanly on. */
    RICH,
    /**
     * Safe from 3/16 up, and it runs at idle and an eighth. Below 3/16 too little is known of the
     * machine to be both safe and rideable: idle and an eighth are felt before anything else. A
     * session asks for that.
     */
    FELT_FIRST,
    /** No part at hand is rich enough: more lean risk than is accepted, on some day. */
    TOO_LEAN
  }

  /**
   * Copies the list.
   *
   * @param setting the setting
   * @param profile its lean risk over the throttle range in the air of the day
   * @param standing how safe it is, and whether the engine runs on it
   * @param haveAtHand what to have at hand before the first ride
   * @param mostTelling the opening whose reading narrows the spread over the riding most
   */
  public StartingSetting {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(standing, "standing");
    haveAtHand = List.copyOf(haveAtHand);
    Objects.requireNonNull(mostTelling, "mostTelling");
  }

  /** {@return whether its lean risk is within what is accepted, at every opening on each day} */
  public boolean safe() {
    return standing == Standing.CLEAN || standing == Standing.RICH;
  }

  /** {@return whether it is nowhere richer than the engine runs cleanly on, as modelled} */
  public boolean clean() {
    return standing == Standing.CLEAN || standing == Standing.FELT_FIRST;
  }
}
