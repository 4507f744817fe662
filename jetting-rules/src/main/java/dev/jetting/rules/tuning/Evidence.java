package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.Objects;
import java.util.Optional;

/** What was seen on a run, before it is given a meaning. */
public sealed interface Evidence {

  /**
   * A λ from a wideband sensor.
   *
   * @param lambda what it showed
   */
  record Wideband(Lambda lambda) implements Evidence {

    /**
     * Checks that an engine runs on it.
     *
     * @param lambda what it showed
     * @throws IllegalArgumentException if it is below 0.4 or above 2
     */
    public Wideband {
      lambda = running(lambda);
    }
  }

  /**
   * A plug colour after a plug chop.
   *
   * @param colour the colour
   */
  record Colour(PlugColour colour) implements Evidence {
    /**
     * Checks for null.
     *
     * @param colour the colour
     */
    public Colour {
      Objects.requireNonNull(colour, "colour");
    }
  }

  /**
   * A symptom.
   *
   * @param symptom what was felt
   */
  record Felt(Symptom symptom) implements Evidence {
    /**
     * Checks for null.
     *
     * @param symptom what was felt
     */
    public Felt {
      Objects.requireNonNull(symptom, "symptom");
    }
  }

  /**
   * An exhaust temperature against that of a run known to be good at this throttle and speed.
   *
   * @param hotter by how much hotter; below zero for cooler
   * @param good the λ of the good run
   */
  record ExhaustTemperature(TemperatureDifference hotter, Lambda good) implements Evidence {

    /**
     * Checks that an engine runs on the λ.
     *
     * @param hotter by how much hotter; below zero for cooler
     * @param good the λ of the good run
     * @throws IllegalArgumentException if the λ is below 0.4 or above 2
     */
    public ExhaustTemperature {
      Objects.requireNonNull(hotter, "hotter");
      good = running(good);
    }
  }

  /** The whole setting is known to serve on this engine: the mixture is about what it needs. */
  record Proven() implements Evidence {}

  /**
   * How the engine behaved on the overrun. No reading of the mixture under load comes of it.
   *
   * @param runDown what it did
   */
  record Overrun(RunDown runDown) implements Evidence {
    /**
     * Checks for null.
     *
     * @param runDown what it did
     */
    public Overrun {
      Objects.requireNonNull(runDown, "runDown");
    }
  }

  /**
   * What the idle of a warm engine answers to the screw, or does by itself. It is observed with the
   * throttle closed.
   *
   * @param answer what it did
   */
  record Idle(IdleAnswer answer) implements Evidence {
    /**
     * Checks for null.
     *
     * @param answer what it did
     */
    public Idle {
      Objects.requireNonNull(answer, "answer");
    }
  }

  /** Refuses what no engine runs on (assumed: 0.4 to 2). */
  private static Lambda running(Lambda lambda) {
    double value = lambda.value();
    if (value >= 0.4 && value <= 2) {
      return lambda;
    }
    boolean ratio = value >= 6 && value <= 30;
    Sentence allowed =
        ratio
            ? Sentence.of("error.air-fuel-hint.divide")
                .with("low", 0.4)
                .with("high", 2)
                .with("value", Decimals.fixed(value / 14.7, 2))
            : Sentence.of("error.sensor-hint").with("low", 0.4).with("high", 2);
    throw InvalidValueException.of(Sentence.of("error.name.reading"), value, allowed);
  }

  /**
   * Returns whether it can be seen at a throttle opening. An idle is seen with the throttle closed.
   *
   * @param throttle throttle opening
   * @return false for an idle with the throttle open
   */
  default boolean fits(ThrottleOpening throttle) {
    return !(this instanceof Idle) || throttle.equals(ThrottleOpening.CLOSED);
  }

  /**
   * The reading that this amounts to.
   *
   * @param setup engine, setting, air and fuel when it was seen
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param meanings what colours and symptoms mean, and how exact sensors are
   * @return the reading; empty for an overrun, and for an idle that says nothing of the mixture
   * @throws IllegalArgumentException if the speed is zero
   */
  default Optional<Reading> reading(
      Setup setup, ThrottleOpening throttle, EngineSpeed speed, Meanings meanings) {
    if (this instanceof Idle idle) {
      return Optional.of(idle.answer())
          .filter(IdleAnswer::isOfMixture)
          .map(answer -> answer.meaning(ScrewReach.of(setup)).reading(setup, throttle, speed));
    }
    return this instanceof Overrun
        ? Optional.empty()
        : Optional.of(underLoad(setup, throttle, speed, meanings));
  }

  private Reading underLoad(
      Setup setup, ThrottleOpening throttle, EngineSpeed speed, Meanings meanings) {
    if (this instanceof Colour plug) {
      return meanings.of(plug.colour()).reading(setup, throttle, speed);
    }
    if (this instanceof Felt felt) {
      return meanings.of(felt.symptom()).reading(setup, throttle, speed);
    }
    if (this instanceof Wideband wideband) {
      return Reading.measured(
          setup, throttle, speed, wideband.lambda(), meanings.accuracyOf(Instrument.WIDEBAND));
    }
    if (this instanceof ExhaustTemperature exhaust) {
      double ln = exhaust.hotter().kelvin() / meanings.kelvinPerLnLambda().value();
      // No engine runs beyond, and a thermometer that says so shows something else.
      Lambda lambda =
          Lambda.of(Math.min(2, Math.max(0.4, exhaust.good().value() * StrictMath.exp(ln))));
      return Reading.measured(
          setup, throttle, speed, lambda, meanings.accuracyOf(Instrument.EXHAUST_THERMOMETER));
    }
    Lambda need = setup.engine().need().at(throttle);
    return Reading.measured(setup, throttle, speed, need, meanings.proven().value());
  }
}
