package dev.jetting.rules.json;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** A day as an ISO 8601 date. */
final class IsoDate {

  private IsoDate() {}

  static LocalDate read(String what, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          what + " " + Quote.quoted(text) + ": allowed a date such as 2027-03-31", e);
    }
  }
}
