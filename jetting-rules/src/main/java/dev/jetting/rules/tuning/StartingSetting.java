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
 * @param safe whether its lean risk, climbs included, is within what is accepted, and its overrun
 *     not too lean, on each of the days
 * @param clean whether it is nowhere richer than the engine runs cleanly on, as modelled
 * @param haveAtHand what to have at hand before the first ride, of the parts there are: the next
 *     two bigger main jets and the next bigger pilot jet
 * @param mostTelling the opening whose reading narrows the spread over the riding most
 */
public record StartingSetting(
    Setting setting,
    RiskProfile profile,
    boolean safe,
    boolean clean,
    List<String> haveAtHand,
    ThrottleOpening mostTelling) {

  /**
   * Copies the list.
   *
   * @param setting the setting
   * @param profile its lean risk over the throttle range in the air of the day
   * @param safe whether its lean risk is within what is accepted, and its overrun not too lean
   * @param clean whether it is nowhere richer than the engine runs cleanly on, as modelled
   * @param haveAtHand what to have at hand before the first ride
   * @param mostTelling the opening whose reading narrows the spread over the riding most
   */
  public StartingSetting {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(profile, "profile");
    haveAtHand = List.copyOf(haveAtHand);
    Objects.requireNonNull(mostTelling, "mostTelling");
  }
}
