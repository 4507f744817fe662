package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.kit.SeriesKind;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holds settings that were found against the whole standard rulebook: a search looks at the mixture
 * alone, the rulebook at float valve, screw and jets too.
 */
final class SettingJudge {

  private static final Rulebook RULEBOOK = StandardRulebook.rulebook();

  private final SetupSheet sheet;
  private final Catalogue catalogue;
  private final Family family;

  /** At hand is what there is to choose from, for the rulebook asks for the leanest parts. */
  SettingJudge(SetupSheet sheet, Catalogue catalogue, Family family, Choices choices) {
    this.sheet = sheet.withParts(parts(choices));
    this.catalogue = catalogue;
    this.family = family;
  }

  private static PartsAtHand parts(Choices choices) {
    return new PartsAtHand(
        parts(choices.pilotJets()),
        parts(choices.cutaways()),
        parts(choices.needleJets()),
        choices.needles().stream().map(choice -> choice.part().needle()).toList(),
        parts(choices.mainJets()));
  }

  private static <P> List<P> parts(List<Choice<P>> choices) {
    return choices.stream().map(Choice::part).toList();
  }

  JudgedSetting judge(FoundSetting found) {
    Setting setting = found.setting();
    SetupSheet its =
        sheet
            .withSetup(sheet.setup().withSetting(setting))
            .withProvenance(numbered(sheet.provenance(), setting));
    return JudgedSetting.of(found, RULEBOOK.evaluate(AssessedSetting.of(its)));
  }

  /** What the sheet says of the numbers on its jets is true of no others. */
  private Provenance numbered(Provenance told, Setting found) {
    Setting own = sheet.setup().setting();
    return new Provenance(
        told.fuel(),
        told.intake(),
        told.air(),
        told.carburettor(),
        found.pilotJet().equals(own.pilotJet())
            ? told.pilotJetFlow()
            : flow(SeriesKind.PILOT_JET, found.pilotJet()),
        found.mainJet().equals(own.mainJet())
            ? told.mainJetFlow()
            : flow(SeriesKind.MAIN_JET, found.mainJet()));
  }

  private Optional<JetFlow> flow(SeriesKind kind, JetBore bore) {
    return catalogue.fitting(family, kind).stream()
        .filter(part -> catalogue.boreOf(part).equals(bore))
        .flatMap(SettingJudge::flow)
        .findFirst();
  }

  private static Stream<JetFlow> flow(Part jet) {
    return jet.shape() instanceof PartShape.FlowedJet flowed
        ? Stream.of(flowed.flow())
        : Stream.empty();
  }
}
