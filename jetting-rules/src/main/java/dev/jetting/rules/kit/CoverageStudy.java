package dev.jetting.rules.kit;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.Coverage;
import dev.jetting.rules.search.ExtraPart;
import dev.jetting.rules.search.PartUse;
import dev.jetting.rules.search.Run;
import dev.jetting.units.Probability;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** For how many engines a kit has a right setting, which of its parts serve, and which would. */
final class CoverageStudy {

  /**
   * How many engines are drawn. The error of the share is about three per cent (assumed enough).
   */
  static final int ENGINES = 256;

  private final Catalogue catalogue;
  private final RiskModel riskModel;

  CoverageStudy(Catalogue catalogue, RiskModel riskModel) {
    this.catalogue = catalogue;
    this.riskModel = riskModel;
  }

  /** The coverage; empty if the kit lacks a kind of part, so that it has no setting at all. */
  Optional<KitCoverage> of(SetupSheet sheet, List<Part> parts, Family family) {
    if (CatalogueChoices.lacksAKind(catalogue, parts)) {
      return Optional.empty();
    }
    var screws = Choices.of(sheet).screws();
    CatalogueChoices kit = CatalogueChoices.owning(catalogue, parts, screws);
    CatalogueChoices all = CatalogueChoices.of(catalogue, family, Set.of(), screws);
    Choices moreJets =
        kit.choices()
            .withPilotJets(all.choices().pilotJets())
            .withMainJets(all.choices().mainJets());
    Coverage coverage =
        Coverage.of(sheet, kit.choices(), moreJets, riskModel, ENGINES, Run.alone());
    KitValidator.checkInterrupt(); // a part of the engines would pass for all of them
    return Optional.of(
        new KitCoverage(
            share(coverage, coverage.covered()),
            coverage.standardError(),
            extras(coverage, all),
            used(coverage, kit)));
  }

  /** The jets to add until the kit serves enough. */
  private static List<KitCoverage.Extra> extras(Coverage coverage, CatalogueChoices all) {
    List<KitCoverage.Extra> extras = new ArrayList<>();
    Probability served = share(coverage, coverage.covered());
    for (ExtraPart extra : coverage.together()) {
      if (served.compareTo(KitCoverage.LEAST) >= 0) {
        break;
      }
      served = share(coverage, extra.covered());
      String part = all.part(extra.kind(), extra.index()).orElseThrow().id();
      extras.add(new KitCoverage.Extra(part, served));
    }
    return extras;
  }

  private static Probability share(Coverage coverage, int covered) {
    return Probability.of((double) covered / coverage.engines());
  }

  private static List<String> used(Coverage coverage, CatalogueChoices kit) {
    return coverage.use().stream()
        .filter(use -> use.engines() > 0)
        .flatMap(use -> part(use, kit))
        .map(Part::id)
        .toList();
  }

  private static Stream<Part> part(PartUse use, CatalogueChoices kit) {
    return kit.part(use.kind(), use.index()).stream();
  }
}
