package dev.jetting.rules.json;

import dev.jetting.rules.Waiver;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** A waiver in JSON, its last day as an ISO 8601 date. */
record WaiverForm(String ruleId, String subject, String reason, Optional<String> expires) {

  static WaiverForm of(Waiver waiver) {
    return new WaiverForm(
        waiver.ruleId(),
        waiver.subject(),
        waiver.reason(),
        waiver.expires().map(LocalDate::toString));
  }

  Waiver waiver() {
    return new Waiver(ruleId, subject, reason, expires.map(WaiverForm::date));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "expires " + Quote.quoted(text) + ": allowed a date such as 2027-03-31", e);
    }
  }
}
