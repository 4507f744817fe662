package dev.jetting.rules;

import dev.jetting.core.checks.Checks;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Objects;

/**
 * What a waiver accepts at most: the measured value and the throttle band of the finding that it
 * was made from, on the engine and the carburettor that had it.
 *
 * @param engine id of the engine
 * @param carburettor id of the carburettor
 * @param measured the worst measured value that is accepted
 * @param band the throttle band that it was accepted in
 */
public record Ceiling(String engine, String carburettor, Measure measured, ThrottleBand band) {

  /**
   * Checks the ids.
   *
   * @param engine id of the engine
   * @param carburettor id of the carburettor
   * @param measured the worst measured value that is accepted
   * @param band the throttle band that it was accepted in
   * @throws IllegalArgumentException if an id is blank, longer than 60 characters or not one line
   *     of visible characters
   */
  public Ceiling {
    Checks.id("engine", "engine", engine);
    Checks.id("carburettor", "carburettor", carburettor);
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(band, "band");
  }

  /**
   * Says what is accepted at most.
   *
   * @return the measured value and its throttle band
   */
  public Message words() {
    return Message.of("waiver.ceiling")
        .with("measured", measured.argument())
        .with("band", Argument.words(band.words()));
  }

  static Ceiling of(SetupSheet sheet, Finding finding) {
    return new Ceiling(
        sheet.setup().engine().id(),
        sheet.setup().setting().carburettor().id(),
        finding.measured(),
        finding.band());
  }

  /** Whether it was accepted on the sheet's engine and carburettor. */
  boolean isFor(SetupSheet sheet) {
    return engine.equals(sheet.setup().engine().id())
        && carburettor.equals(sheet.setup().setting().carburettor().id());
  }

  /** Whether a finding lies in the band and is no further beyond its limit than was accepted. */
  boolean covers(Finding finding) {
    return band.contains(finding.band().from())
        && band.contains(finding.band().to())
        && measured.unit().equals(finding.measured().unit())
        && !isExceededBy(finding.measured().value(), finding.limit().value());
  }

  private boolean isExceededBy(double now, double limit) {
    return now > limit ? now > measured.value() : now < limit && now < measured.value();
  }
}
