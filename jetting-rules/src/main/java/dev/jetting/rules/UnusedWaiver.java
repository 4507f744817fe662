package dev.jetting.rules;

import dev.jetting.rules.text.Message;
import java.util.Objects;

/**
 * A waiver that waived nothing. It is reported because its author might believe himself covered by
 * it.
 *
 * @param waiver the waiver
 * @param reason it has expired, names no rule of the rulebook, or met no finding
 */
public record UnusedWaiver(Waiver waiver, Message reason) {
  /**
   * Checks for nulls.
   *
   * @param waiver the waiver
   * @param reason it has expired, names no rule of the rulebook, or met no finding
   */
  public UnusedWaiver {
    Objects.requireNonNull(waiver, "waiver");
    PlainLine.checkLength("reason of an unused waiver", reason.text());
  }

  /** {@return why it waived nothing, in English} */
  public String why() {
    return reason.text();
  }
}
