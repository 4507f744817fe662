package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * Something observed that asks for a change where it was observed, whatever the model says.
 *
 * @param setup the setup it was observed on
 * @param observation what was observed, and where
 * @param kind what it asks for
 */
public record Sign(Setup setup, Observation observation, Kind kind) {

  /** What a sign asks for. */
  public enum Kind {
    /** The engine is being hurt: nothing is ridden until that opening is richer by two sizes. */
    STOP,
    /** Lean: that opening is to be richer by a size. */
    LEAN,
    /** Too rich: that opening is to be leaner by a size, where that is safe. */
    RICH
  }

  /** In ln λ: about two sizes of a main jet (assumed). */
  private static final double TWO_SIZES = 0.06;

  /** In ln λ: the least that a size of a jet, or a groove, does where it acts (assumed). */
  private static final double ONE_SIZE = 0.01;

  /**
   * Checks for nulls.
   *
   * @param setup the setup it was observed on
   * @param observation what was observed, and where
   * @param kind what it asks for
   */
  public Sign {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(observation, "observation");
    Objects.requireNonNull(kind, "kind");
  }

  /** {@return whether it asks for a richer mixture} */
  public boolean isLean() {
    return kind != Kind.RICH;
  }

  /** Whether it was observed on the overrun. */
  boolean isOverrun() {
    return observation.isOverrun();
  }

  /** Whether it was observed under load at an opening that a rider can hold, or next to it. */
  boolean isAt(ThrottleOpening held) {
    return !isOverrun() && Held.nearest(observation.throttle()).equals(held);
  }

  /** Its place in the order of the trade: idle and full throttle first, the overrun last. */
  int place() {
    return observation.place();
  }

  /** Whether a setup, in its own air and with its own fuel, has not yet answered it. */
  boolean isOpen(Setup to) {
    return missing(to) > 0;
  }

  /**
   * By how much, in ln λ by the model at that opening, a setup falls short of what the sign asks
   * for; zero or less where it has answered it.
   */
  double missing(Setup to) {
    double leaner = lnLambda(to) - lnLambda(setup);
    return switch (kind) {
      case STOP -> leaner + TWO_SIZES;
      case LEAN -> leaner + ONE_SIZE;
      case RICH -> ONE_SIZE - leaner;
    };
  }

  /** ln λ of a setup by the model, where it was observed. */
  double lnLambda(Setup to) {
    return observation.lnLambda(to);
  }
}
