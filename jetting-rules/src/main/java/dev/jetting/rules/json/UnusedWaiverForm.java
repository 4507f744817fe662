package dev.jetting.rules.json;

import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.text.Message;
import java.util.Optional;

/**
 * A waiver that waived nothing, in JSON.
 *
 * @param waiver the waiver
 * @param why it has expired, names no rule of the rulebook, or met no finding
 * @param whyMessage the text by its key and typed arguments, where it has a key
 */
record UnusedWaiverForm(Waiver waiver, String why, Optional<Message> whyMessage) {

  static UnusedWaiverForm of(UnusedWaiver unused) {
    return new UnusedWaiverForm(unused.waiver(), unused.why(), MessageForm.keyed(unused.reason()));
  }

  UnusedWaiver unused() {
    return new UnusedWaiver(waiver, whyMessage.orElseGet(() -> Message.plain(why)));
  }
}
