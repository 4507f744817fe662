package dev.jetting.rules.json;

import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Seen;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.Lambda;
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
 * @param proven true where an engine has long run well
 */
record SeenForm(
    Optional<Lambda> wideband,
    Optional<PlugColour> colour,
    Optional<Symptom> symptom,
    Optional<ExhaustForm> exhaustTemperature,
    Optional<Boolean> proven) {

  /**
   * An exhaust temperature against a good run.
   *
   * @param hotter by how much hotter than then; below zero if cooler
   * @param good λ of the good run
   */
  record ExhaustForm(TemperatureDifference hotter, Lambda good) {}

  SeenForm {
    long kinds =
        Stream.of(wideband, colour, symptom, exhaustTemperature, proven)
            .filter(Optional::isPresent)
            .count();
    if (kinds != 1 || proven.filter(is -> !is).isPresent()) {
      throw new IllegalArgumentException(
          "something seen of "
              + kinds
              + " kinds: allowed one of wideband, colour, symptom, exhaustTemperature, proven"
              + " (true)");
    }
  }

  static SeenForm of(Seen seen) {
    return new SeenForm(
        as(Seen.Wideband.class, seen).map(Seen.Wideband::lambda),
        as(Seen.Colour.class, seen).map(Seen.Colour::colour),
        as(Seen.Felt.class, seen).map(Seen.Felt::symptom),
        as(Seen.ExhaustTemperature.class, seen).map(e -> new ExhaustForm(e.hotter(), e.good())),
        as(Seen.Proven.class, seen).map(is -> true));
  }

  private static <S extends Seen> Optional<S> as(Class<S> kind, Seen seen) {
    return Optional.of(seen).filter(kind::isInstance).map(kind::cast);
  }

  Seen seen() {
    return wideband
        .<Seen>map(Seen.Wideband::new)
        .or(() -> colour.map(Seen.Colour::new))
        .or(() -> symptom.map(Seen.Felt::new))
        .or(() -> exhaustTemperature.map(e -> new Seen.ExhaustTemperature(e.hotter(), e.good())))
        .orElseGet(Seen.Proven::new);
  }
}
