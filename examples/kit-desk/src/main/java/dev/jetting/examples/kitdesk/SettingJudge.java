package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.CatalogueChoices;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.List;

/**
 * Holds settings that were found against the whole standard rulebook: a search looks at the mixture
 * alone, the rulebook at float valve, screw and jets too.
 */
final class SettingJudge {

  private static final Rulebook RULEBOOK = StandardRulebook.rulebook();

  private final SetupSheet sheet;
  private final CatalogueChoices catalogue;
  private final SettingSearch search;

  /**
   * Of the settings of a sheet.
   *
   * @param search the search that found the settings; it has the uncertainties of their jets
   * @param catalogue the parts that the catalogue has for it
   * @param choices those and the sheet's own, all at hand: a rule asks for the leanest
   */
  SettingJudge(
      SettingSearch search, SetupSheet sheet, CatalogueChoices catalogue, Choices choices) {
    this.search = search;
    this.sheet = sheet.withParts(parts(choices));
    this.catalogue = catalogue;
  }

  static String rulebook() {
    return RULEBOOK.edition().toString();
  }

  private static PartsAtHand parts(Choices choices) {
    return PartsAtHand.builder()
        .pilotJets(parts(choices.pilotJets()))
        .cutaways(parts(choices.cutaways()))
        .needleJets(parts(choices.needleJets()))
        .needles(choices.needles().stream().map(choice -> choice.part().needle()).toList())
        .mainJets(parts(choices.mainJets()))
        .build();
  }

  private static <P> List<P> parts(List<Choice<P>> choices) {
    return choices.stream().map(Choice::part).toList();
  }

  JudgedSetting judge(FoundSetting found) {
    Setting own = sheet.setup().setting();
    Provenance provenance = sheet.provenance();
    SettingParts parts = SettingParts.of(found, catalogue, own, provenance);
    SetupSheet changed = sheet.withSetup(sheet.setup().withSetting(found.setting()));
    Provenance.Builder numbers = changed.provenance().toBuilder().withoutJetFlows();
    parts.pilotJetFlow().ifPresent(numbers::pilotJetFlow);
    parts.mainJetFlow().ifPresent(numbers::mainJetFlow);
    SetupSheet its = changed.withProvenance(numbers.build());
    AssessedSetting assessed = AssessedSetting.of(its, search.riskModel(found.pick()));
    return JudgedSetting.of(found, parts, RULEBOOK.evaluate(assessed));
  }
}
