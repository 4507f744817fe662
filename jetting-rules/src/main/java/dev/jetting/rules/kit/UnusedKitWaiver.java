package dev.jetting.rules.kit;

import java.util.Objects;

/**
 * A waiver of a kit that waived nothing, or that did not cover a finding with one of the fuels. It
 * is reported because its author might believe that the finding is covered.
 *
 * @param waiver the waiver
 * @param why it has expired, names no rule of the rulebook, met no finding, or accepted less
 */
public record UnusedKitWaiver(KitWaiver waiver, String why) {
  /**
   * Checks for nulls.
   *
   * @param waiver the waiver
   * @param why it has expired, names no rule of the rulebook, met no finding, or accepted less
   */
  public UnusedKitWaiver {
    Objects.requireNonNull(waiver, "waiver");
    Objects.requireNonNull(why, "why");
  }
}
