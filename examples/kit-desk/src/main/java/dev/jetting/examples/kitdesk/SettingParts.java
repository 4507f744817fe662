package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.kit.CatalogueChoices;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.NewPart;
import dev.jetting.rules.search.PartKind;
import dev.jetting.units.JetFlow;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The catalogue's parts in a setting that was found.
 *
 * @param ids their ids by kind, without those of the sheet that the catalogue does not have
 * @param toBuy those that are not owned
 * @param pilotJetFlow the number on the pilot jet, where it is a flow
 * @param mainJetFlow the number on the main jet, where it is a flow
 */
record SettingParts(
    Map<PartKind, String> ids,
    List<ToBuy> toBuy,
    Optional<JetFlow> pilotJetFlow,
    Optional<JetFlow> mainJetFlow) {

  /** A part to buy, and its price if known. */
  record ToBuy(PartKind kind, String id, Optional<BigDecimal> price) {}

  /**
   * Those of a setting.
   *
   * @param own the setting of the sheet
   * @param provenance the sheet's entries on the numbers of its jets, which hold for no others
   */
  static SettingParts of(
      FoundSetting found, CatalogueChoices catalogue, Setting own, Provenance provenance) {
    Map<PartKind, String> ids = new EnumMap<>(PartKind.class);
    for (PartKind kind : PartKind.values()) {
      catalogue.part(kind, found.setting()).ifPresent(part -> ids.put(kind, part.id()));
    }
    List<ToBuy> toBuy =
        found.newParts().stream()
            .map(
                part ->
                    new ToBuy(
                        part.kind(), ids.getOrDefault(part.kind(), part.what()), part.price()))
            .toList();
    List<PartKind> bought = found.newParts().stream().map(NewPart::kind).toList();
    boolean ownPilot =
        !bought.contains(PartKind.PILOT_JET) && found.setting().pilotJet().equals(own.pilotJet());
    boolean ownMain =
        !bought.contains(PartKind.MAIN_JET) && found.setting().mainJet().equals(own.mainJet());
    return new SettingParts(
        ids,
        toBuy,
        ownPilot ? provenance.pilotJetFlow() : flow(catalogue, PartKind.PILOT_JET, found),
        ownMain ? provenance.mainJetFlow() : flow(catalogue, PartKind.MAIN_JET, found));
  }

  private static Optional<JetFlow> flow(
      CatalogueChoices catalogue, PartKind kind, FoundSetting found) {
    return catalogue.part(kind, found.setting()).flatMap(SettingParts::flow);
  }

  private static Optional<JetFlow> flow(Part jet) {
    return jet.shape() instanceof PartShape.JetByFlow flowed
        ? Optional.of(flowed.flow())
        : Optional.empty();
  }

  boolean anyByFlow() {
    return pilotJetFlow.isPresent() || mainJetFlow.isPresent();
  }
}
