package dev.jetting.rules.json;

import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.number.Decimals;
import java.util.Optional;

/**
 * How near a rule came to failing, in JSON.
 *
 * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
 * @param measured what was measured
 * @param limit what it was held against, in the same unit
 * @param left what is left to the limit, below zero by how much it is beyond; left out where it is
 *     the difference of the two, to six digits, and not below zero
 * @param band where in the throttle range; left out where it is the whole
 */
record MarginForm(
    String subject,
    Measure measured,
    Measure limit,
    Optional<Measure> left,
    Optional<ThrottleBand> band) {

  private static final int DIGITS = 6;

  static MarginForm of(Margin margin) {
    Measure follows = difference(margin.measured(), margin.limit());
    return new MarginForm(
        margin.subject(),
        margin.measured(),
        margin.limit(),
        Optional.of(margin.left()).filter(left -> !left.equals(follows)),
        Optional.of(margin.band()).filter(band -> !band.equals(ThrottleBand.WHOLE)));
  }

  Margin margin() {
    return new Margin(
        subject,
        measured,
        limit,
        left.orElseGet(() -> difference(measured, limit)),
        band.orElse(ThrottleBand.WHOLE));
  }

  private static Measure difference(Measure one, Measure other) {
    double difference = Decimals.rounded(Math.abs(other.value() - one.value()), DIGITS);
    return new Measure(difference, other.unit());
  }
}
