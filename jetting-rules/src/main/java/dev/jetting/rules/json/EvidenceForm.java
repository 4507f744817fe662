package dev.jetting.rules.json;

import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.TemperatureDifference;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was seen, in JSON: one of its kinds.
 *
 * @param wideband λ that a wideband sensor shows
 * @param colour colour of the plug after a plug chop
 * @param symptom how the engine feels
 * @param exhaustTemperature the exhaust against a good run
 * @param idle what the idle answered to the screw, or did by itself
 * @param overrun how the engine ran down with the throttle shut
 * @param proven true where an engine has long run well
 */
record EvidenceForm(
    Optional<Lambda> wideband,
    Optional<PlugColour> colour,
    Optional<Symptom> symptom,
    Optional<ExhaustForm> exhaustTemperature,
    Optional<IdleAnswer> idle,
    Optional<RunDown> overrun,
    Optional<Boolean> proven) {

  /**
   * An exhaust temperature against a good run.
   *
   * @param hotter by how much hotter than then; below zero if cooler
   * @param good λ of the good run
   */
  record ExhaustForm(TemperatureDifference hotter, Lambda good) {}

  EvidenceForm {
    long kinds =
        Stream.of(wideband, colour, symptom, exhaustTemperature, idle, overrun, proven)
            .filter(Optional::isPresent)
            .count();
    if (kinds != 1 || proven.filter(is -> !is).isPresent()) {
      throw InvalidValueException.worded(
          Sentence.of("error.evidence-kinds").with("count", kinds),
          Sentence.of("error.evidence-kinds.allowed"));
    }
  }

  static EvidenceForm of(Evidence seen) {
    return new EvidenceForm(
        as(Evidence.Wideband.class, seen).map(Evidence.Wideband::lambda),
        as(Evidence.Colour.class, seen).map(Evidence.Colour::colour),
        as(Evidence.Felt.class, seen).map(Evidence.Felt::symptom),
        as(Evidence.ExhaustTemperature.class, seen).map(e -> new ExhaustForm(e.hotter(), e.good())),
        as(Evidence.Idle.class, seen).map(Evidence.Idle::answer),
        as(Evidence.Overrun.class, seen).map(Evidence.Overrun::runDown),
        as(Evidence.Proven.class, seen).map(is -> true));
  }

  private static <S extends Evidence> Optional<S> as(Class<S> kind, Evidence seen) {
    return Optional.of(seen).filter(kind::isInstance).map(kind::cast);
  }

  Evidence evidence() {
    return wideband
        .<Evidence>map(Evidence.Wideband::new)
        .or(() -> colour.map(Evidence.Colour::new))
        .or(() -> symptom.map(Evidence.Felt::new))
        .or(
            () ->
                exhaustTemperature.map(e -> new Evidence.ExhaustTemperature(e.hotter(), e.good())))
        .or(() -> idle.map(Evidence.Idle::new))
        .or(() -> overrun.map(Evidence.Overrun::new))
        .orElseGet(Evidence.Proven::new);
  }
}
