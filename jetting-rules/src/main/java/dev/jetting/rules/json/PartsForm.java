package dev.jetting.rules.json;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import java.util.List;
import java.util.Optional;

/** Parts at hand in JSON: a list that is left out is unknown. */
record PartsForm(
    Optional<List<JetBore>> pilotJets,
    Optional<List<Cutaway>> cutaways,
    Optional<List<NeedleJet>> needleJets,
    Optional<List<Needle>> needles,
    Optional<List<JetBore>> mainJets) {

  static PartsForm of(PartsAtHand parts) {
    return new PartsForm(
        known(parts.pilotJets()),
        known(parts.cutaways()),
        known(parts.needleJets()),
        known(parts.needles()),
        known(parts.mainJets()));
  }

  private static <P> Optional<List<P>> known(List<P> parts) {
    return Optional.of(parts).filter(list -> !list.isEmpty());
  }

  PartsAtHand parts() {
    return PartsAtHand.builder()
        .pilotJets(pilotJets.orElse(List.of()))
        .cutaways(cutaways.orElse(List.of()))
        .needleJets(needleJets.orElse(List.of()))
        .needles(needles.orElse(List.of()))
        .mainJets(mainJets.orElse(List.of()))
        .build();
  }
}
