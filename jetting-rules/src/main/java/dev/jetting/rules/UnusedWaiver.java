package dev.jetting.rules;

import java.util.Objects;

/**
 * A waiver that waived nothing. It is reported because its author might believe himself covered by
 * it.
 *
 * @param waiver the waiver
 * @param why it has expired, names no rule of the rulebook, or met no finding
 */
public record UnusedWaiver(Waiver waiver, String why) {
  /**
   * Checks for nulls.
   *
   * @param waiver the waiver
   * @param why it has expired, names no rule of the rulebook, or met no finding
   */
  public UnusedWaiver {
    Objects.requireNonNull(waiver, "waiver");
    Objects.requireNonNull(why, "why");
  }
}
