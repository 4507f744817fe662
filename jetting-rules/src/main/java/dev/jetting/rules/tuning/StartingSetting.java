package dev.jetting.rules.tuning;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.RiskProfile;
import java.util.List;
import java.util.Objects;

/**
 * A setting to start with on an engine that nobody has measured, out of the parts at hand.
 *
 * @param setting the setting
 * @param profile its lean risk over the throttle range in the air of the day
 * @param safe whether its lean risk is within what is accepted, and its overrun not too lean, on
 *     each of the days
 * @param haveAtHand what to have at hand before the first ride, of the parts there are: the next
 *     two bigger main jets and the next bigger pilot jet
 */
public record StartingSetting(
    Setting setting, RiskProfile profile, boolean safe, List<String> haveAtHand) {

  /**
   * Copies the list.
   *
   * @param setting the setting
   * @param profile its lean risk over the throttle range in the air of the day
   * @param safe whether its lean risk is within what is accepted, and its overrun not too lean
   * @param haveAtHand what to have at hand before the first ride
   */
  public StartingSetting {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(profile, "profile");
    haveAtHand = List.copyOf(haveAtHand);
  }
}
