package dev.jetting.rules.tuning;

import dev.jetting.rules.text.Message;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * A test to ride: which throttle opening, how, and with what.
 *
 * @param kind how
 * @param throttle throttle opening to hold; one that can be marked on the grip
 * @param speed engine speed there on the road
 * @param instrument what to read with
 * @param risk lean risk there as it stands
 */
public record NextTest(
    Kind kind,
    ThrottleOpening throttle,
    EngineSpeed speed,
    Instrument instrument,
    Probability risk) {

  /** How a test is done. */
  public enum Kind {
    /** The idle of a warm engine, by how it answers to the screw. */
    IDLE,
    /** A steady opening under load, while an instrument settles. */
    STEADY,
    /** A steady opening under load, ended by a plug chop. */
    PLUG_CHOP,
    /** A steady small opening, then opened quickly. */
    ROLL_ON,
    /** The throttle shut after a long pull. */
    RUN_DOWN
  }

  /**
   * Checks for nulls.
   *
   * @param kind how
   * @param throttle throttle opening to hold
   * @param speed engine speed there on the road
   * @param instrument what to read with
   * @param risk lean risk there as it stands
   */
  public NextTest {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(instrument, "instrument");
    Objects.requireNonNull(risk, "risk");
  }

  /** {@return how to do this test, a sentence each, in order} */
  public List<String> howTo() {
    return steps().stream().map(Message::text).toList();
  }

  /** {@return the same for any language} */
  public List<Message> steps() {
    return Words.howTo(this);
  }
}
