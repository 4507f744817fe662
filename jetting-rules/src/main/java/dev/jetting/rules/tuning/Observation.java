package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.text.Message;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * Something seen at a throttle opening and engine speed.
 *
 * @param throttle throttle opening
 * @param speed engine speed, more than zero
 * @param evidence what was seen
 */
public record Observation(ThrottleOpening throttle, EngineSpeed speed, Evidence evidence) {
  /**
   * Checks for nulls.
   *
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param evidence what was seen
   * @throws IllegalArgumentException if the speed is zero, or an idle is observed with the throttle
   *     open
   */
  public Observation {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(evidence, "evidence");
    if (!evidence.fits(throttle)) {
      throw InvalidValueException.of(
          Sentence.of("error.name.idle-opening"), throttle, Sentence.of("error.closed"));
    }
    if (speed.rpm() <= 0) {
      throw InvalidValueException.of(
          Sentence.of("error.name.speed-of-observation"),
          speed,
          Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "rpm")));
    }
  }

  /** {@return what was observed and where, as the rider would say it} */
  public String text() {
    return message().text();
  }

  /** {@return the same for any language} */
  public Message message() {
    return Words.observed(this);
  }

  boolean isOverrun() {
    return evidence instanceof Evidence.Overrun;
  }

  /** Its place in the order of the trade: idle and full throttle first, the overrun last. */
  int place() {
    return isOverrun() ? Held.MARKS.size() : Held.MARKS.indexOf(Held.nearest(throttle));
  }

  /** ln λ of a setup by the model, where this was observed. */
  double lnLambda(Setup setup) {
    MixtureModel model = MixtureModel.of(setup);
    return StrictMath.log(
        isOverrun()
            ? model.overrun().lambda().value()
            : model.at(throttle, speed).lambda().value());
  }
}
