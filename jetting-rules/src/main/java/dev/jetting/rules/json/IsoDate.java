package dev.jetting.rules.json;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** A day as an ISO 8601 date. */
final class IsoDate {

  private IsoDate() {}

  static LocalDate read(String field, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw InvalidValueException.of(
              Sentence.plain(field),
              Quote.quoted(text),
              Sentence.of("error.date").with("sample", "2027-03-31"))
          .causedBy(e);
    }
  }
}
