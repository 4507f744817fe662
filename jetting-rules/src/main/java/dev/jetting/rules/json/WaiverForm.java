package dev.jetting.rules.json;

import dev.jetting.rules.Ceiling;
import dev.jetting.rules.Waiver;
import java.time.LocalDate;
import java.util.Optional;

/** A waiver in JSON, its last day as an ISO 8601 date. */
record WaiverForm(
    String ruleId,
    String subject,
    String author,
    String reason,
    Optional<String> expires,
    Optional<Ceiling> accepted) {

  static WaiverForm of(Waiver waiver) {
    return new WaiverForm(
        waiver.ruleId(),
        waiver.subject(),
        waiver.author(),
        waiver.reason(),
        waiver.expires().map(LocalDate::toString),
        waiver.accepted());
  }

  Waiver waiver() {
    Optional<LocalDate> lastDay = expires.map(day -> IsoDate.read("expires", day));
    return new Waiver(ruleId, subject, author, reason, lastDay, accepted);
  }
}
