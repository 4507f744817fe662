package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * A finished setting moved to another day, another place or another fuel.
 *
 * @param setup the setup after the changes
 * @param changes what to change, in order; none if the setting holds as it is
 * @param safe whether the lean risk is within what is accepted after them, and the overrun not too
 *     lean, on the days it is judged on
 * @param leftLeaner the openings that stay leaner than they were, the leanest first; read them
 *     before long rides
 */
public record MovedSetting(
    Setup setup, List<NextChange> changes, boolean safe, List<LeftLeaner> leftLeaner) {

  /**
   * An opening that stays leaner than it was where the setting was finished, although the lean risk
   * there may be accepted.
   *
   * @param throttle the opening, one that a rider can mark and hold
   * @param lnLambda by how much ln λ is higher there, more than 0.04 (assumed)
   */
  public record LeftLeaner(ThrottleOpening throttle, double lnLambda) {

    /**
     * Checks for nulls.
     *
     * @param throttle the opening
     * @param lnLambda by how much ln λ is higher there
     */
    public LeftLeaner {
      Objects.requireNonNull(throttle, "throttle");
    }

    /** {@return a sentence for the rider, in any language} */
    public Message message() {
      String key = throttle.equals(ThrottleOpening.CLOSED) ? "moved.leaner.idle" : "moved.leaner";
      return Message.of(key)
          .with("percent", Words.percent(100 * StrictMath.expm1(lnLambda)))
          .with("throttle", Argument.throttle(throttle));
    }
  }

  /**
   * Copies the changes.
   *
   * @param setup the setup after the changes
   * @param changes what to change, in order; none if the setting holds as it is
   * @param safe whether the lean risk is within what is accepted after them
   * @param leftLeaner the openings that stay leaner than they were, the leanest first
   */
  public MovedSetting {
    Objects.requireNonNull(setup, "setup");
    changes = List.copyOf(changes);
    leftLeaner = List.copyOf(leftLeaner);
  }
}
