package dev.jetting.rules.json;

import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.kit.KitWaiver;
import java.time.LocalDate;
import java.util.Optional;

/** A waiver of a kit in JSON, its last day as an ISO 8601 date. */
record KitWaiverForm(
    String kit,
    String machine,
    String ruleId,
    String subject,
    String author,
    String reason,
    Optional<String> expires,
    Measure measured,
    ThrottleBand band) {

  static KitWaiverForm of(KitWaiver waiver) {
    return new KitWaiverForm(
        waiver.kit(),
        waiver.machine(),
        waiver.ruleId(),
        waiver.subject(),
        waiver.author(),
        waiver.reason(),
        waiver.expires().map(LocalDate::toString),
        waiver.measured(),
        waiver.band());
  }

  KitWaiver waiver() {
    Optional<LocalDate> lastDay = expires.map(day -> IsoDate.read("expires", day));
    return new KitWaiver(kit, machine, ruleId, subject, author, reason, lastDay, measured, band);
  }
}
