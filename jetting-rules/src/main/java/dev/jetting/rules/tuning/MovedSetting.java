package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import java.util.List;
import java.util.Objects;

/**
 * A finished setting moved to another day, another place or another fuel.
 *
 * @param setup the setup after the changes
 * @param changes what to change, in order; none if the setting holds as it is
 * @param safe whether the lean risk is within what is accepted after them, and the overrun not too
 *     lean, on the days it is judged on
 */
public record MovedSetting(Setup setup, List<NextChange> changes, boolean safe) {

  /**
   * Copies the changes.
   *
   * @param setup the setup after the changes
   * @param changes what to change, in order; none if the setting holds as it is
   * @param safe whether the lean risk is within what is accepted after them
   */
  public MovedSetting {
    Objects.requireNonNull(setup, "setup");
    changes = List.copyOf(changes);
  }
}
