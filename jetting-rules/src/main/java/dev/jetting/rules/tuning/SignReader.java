package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;

/** Reads what an observation asks for, if it asks for anything. */
final class SignReader {

  private final Tuner tuner;

  SignReader(Tuner tuner) {
    this.tuner = tuner;
  }

  Optional<Sign> sign(Setup setup, Observation observation) {
    return kind(setup, observation).map(kind -> new Sign(setup, observation, kind));
  }

  /**
   * Whether an observation says enough of the mixture where it was made. A plug says little at
   * small openings, and a clean answer nothing at wide ones.
   */
  static boolean isConclusive(Observation observation) {
    Evidence evidence = observation.evidence();
    if (evidence instanceof Evidence.Overrun) {
      return false;
    }
    if (evidence instanceof Evidence.Idle idle) {
      return idle.answer().isOfMixture();
    }
    boolean small = Held.nearest(observation.throttle()).compareTo(Held.SMALL) <= 0;
    if (small && evidence instanceof Evidence.Colour) {
      return false;
    }
    boolean clean = evidence.equals(new Evidence.Felt(Symptom.CLEAN));
    return !evidence.equals(new Evidence.Felt(Symptom.CRISP)) && (small || !clean);
  }

  private Optional<Sign.Kind> kind(Setup setup, Observation observation) {
    Evidence evidence = observation.evidence();
    if (evidence instanceof Evidence.Colour plug) {
      return kind(plug.colour());
    }
    if (evidence instanceof Evidence.Felt felt) {
      return kind(felt.symptom());
    }
    if (evidence instanceof Evidence.Overrun overrun) {
      return kind(overrun.runDown());
    }
    if (evidence instanceof Evidence.Idle idle) {
      return kind(idle.answer());
    }
    return evidence
        .reading(setup, observation.throttle(), observation.speed(), tuner.meanings())
        .flatMap(reading -> measured(setup, reading));
  }

  private static Optional<Sign.Kind> kind(PlugColour colour) {
    return switch (colour) {
      case WHITE -> Optional.of(Sign.Kind.STOP);
      case PALE -> Optional.of(Sign.Kind.LEAN);
      case BROWN, DARK -> Optional.empty();
      case BLACK -> Optional.of(Sign.Kind.RICH);
    };
  }

  private static Optional<Sign.Kind> kind(Symptom symptom) {
    return switch (symptom) {
      case PINGS, FADES, SEIZES -> Optional.of(Sign.Kind.STOP);
      case BOGS, HESITATES, SURGES, HANGS -> Optional.of(Sign.Kind.LEAN);
      case FOUR_STROKES, STUMBLES -> Optional.of(Sign.Kind.RICH);
      case CLEAN, CRISP -> Optional.empty();
    };
  }

  private static Optional<Sign.Kind> kind(IdleAnswer answer) {
    return switch (answer) {
      case FASTER_RICHER, BEYOND_RICH -> Optional.of(Sign.Kind.LEAN);
      case BEYOND_LEAN, FASTER_LEANER -> Optional.of(Sign.Kind.RICH);
      case BEST, UNMOVED, RACES, RUNS_ON -> Optional.empty();
    };
  }

  private static Optional<Sign.Kind> kind(RunDown runDown) {
    return switch (runDown) {
      case CLEAN -> Optional.empty();
      case POPS -> Optional.of(Sign.Kind.LEAN);
      case DIES -> Optional.of(Sign.Kind.RICH);
    };
  }

  /** Lean where a plug would be pale, too lean beyond the lean limit, rich below the rich limit. */
  private Optional<Sign.Kind> measured(Setup setup, Reading reading) {
    ThrottleOpening throttle = reading.throttle();
    var need = setup.engine().need();
    Lambda lambda = reading.from();
    double pale = need.at(throttle).value() * tuner.meanings().of(PlugColour.PALE).from();
    if (lambda.isMoreThan(tuner.riskModel().limits().lean(throttle, need))) {
      return Optional.of(Sign.Kind.STOP);
    }
    if (lambda.value() > pale) {
      return Optional.of(Sign.Kind.LEAN);
    }
    return lambda.isLessThan(tuner.riskModel().limits().rich(throttle, need))
        ? Optional.of(Sign.Kind.RICH)
        : Optional.empty();
  }
}
