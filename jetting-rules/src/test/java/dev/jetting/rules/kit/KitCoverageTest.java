package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.Finding;
import dev.jetting.rules.RankedFinding;
import dev.jetting.units.Probability;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** For how many engines kits of the shop have a right setting. */
class KitCoverageTest {

  private static final KitValidator VALIDATOR = KitValidator.of(Shop.CATALOGUE);

  /**
   * Hardly any jet to choose from, main jet and slide too rich: engines differ more than a screw
   * can make good.
   */
  private static final Kit POOR = poor("slide 35", "main 150");

  @Test
  void poorKit_servesTooFewAndSaysWhichJetWouldServeMore() {
    KitValidation validation = VALIDATOR.validate(POOR, KitDepth.COVERAGE);
    KitCoverage coverage = coverage(validation);

    assertThat(coverage.share().value()).isLessThan(0.95);
    assertThat(validation.passes()).isFalse();
    assertThat(validation.findings())
        .extracting(RankedFinding::ruleId)
        .containsExactly("kit-coverage");
    assertThat(coverage.extras()).isNotEmpty();
    assertThat(validation.findings().get(0).finding().remedy().text())
        .startsWith("Add \"" + coverage.extras().get(0).part() + "\" (")
        .contains("), then \"" + coverage.extras().get(1).part() + "\" (")
        .endsWith("look at needle, needle jet and slide as well.");
  }

  /** The promise of each extra part is what the kit serves with it and those before it. */
  @Test
  void everyExtra_servesAsManyAsItSaysOnceItAndThoseBeforeItAreInTheKit() {
    KitCoverage before = coverage(VALIDATOR.validate(POOR, KitDepth.COVERAGE));
    assertThat(before.extras()).hasSizeBetween(2, 3);

    List<String> parts = new ArrayList<>(POOR.parts());
    for (KitCoverage.Extra extra : before.extras()) {
      assertThat(before.share()).isLessThan(KitCoverage.LEAST);
      parts.add(extra.part());
      KitCoverage with = coverageOf(parts);
      assertThat(with.share()).isEqualTo(extra.share()).isGreaterThan(before.share());
      before = with;
    }
  }

  /** A main jet more would serve more engines, but nobody asks for that. */
  @Test
  void kitThatServesEnough_isToldNoExtras() {
    List<String> parts =
        List.of(
            "pilot 55",
            "slide 35",
            "slide 40",
            "slide 45",
            "tube 264",
            "tube 266",
            "tube 268",
            "needle",
            "main 126");
    KitCoverage enough = coverageOf(parts);
    List<String> more = new ArrayList<>(parts);
    more.add("main 132");

    assertThat(enough.share())
        .isGreaterThan(KitCoverage.LEAST)
        .isLessThan(coverageOf(more).share());
    assertThat(enough.extras()).isEmpty();
  }

  @Test
  void tooLittleCoverage_isToldWithMachineAndFuel() {
    Finding finding = VALIDATOR.validate(POOR, KitDepth.COVERAGE).findings().get(0).finding();

    assertThat(finding.text()).contains("\"standard\"").contains("fuel 1");
    assertThat(finding.attributes()).containsKeys("machine", "fuel");
  }

  /** 243 of 256 engines are 94.92 %, which is not the 95 % that are asked for. */
  @Test
  void shareJustShortOfTheLeast_isNotPrintedAsTheLeast() {
    KitCoverage.Extra extra = new KitCoverage.Extra("main 120", Probability.of(243 / 256.0));
    KitFindings findings = new KitFindings();
    findings.coverage(
        "kit",
        "standard",
        1,
        new KitCoverage(Probability.of(243 / 256.0), 0.01, List.of(extra), List.of()),
        Optional.empty());

    Finding finding = findings.ranked().get(0).finding();
    assertThat(finding.text()).contains("94.9 %");
    assertThat(finding.remedy().text()).startsWith("Add \"main 120\" (94.9 %).");
  }

  @Test
  void moreParts_serveNoFewerEngines() {
    KitCoverage poor = coverage(VALIDATOR.validate(POOR, KitDepth.COVERAGE));
    KitCoverage rich = coverage(VALIDATOR.validate(Shop.kit(), KitDepth.COVERAGE));

    assertThat(rich.share()).isGreaterThanOrEqualTo(poor.share());
  }

  @Test
  void partThatNoEngineWants_isNamed() {
    KitValidation validation =
        VALIDATOR.validate(Shop.kitWith("main 96", "fine screw"), KitDepth.COVERAGE);

    assertThat(coverage(validation).used()).doesNotContain("main 96").contains("main 126");
    assertThat(validation.findings())
        .filteredOn(found -> found.ruleId().equals("kit-part-never-used"))
        .extracting(found -> found.finding().attributes().get("part"))
        .contains("main 96")
        .doesNotContain("fine screw", "main 126");
  }

  /**
   * The recommended jet and the two above it, which the rule main-jet-kit asks for, stay though no
   * engine wants two of them. What may go may go at once: the kit is as good without, by the
   * rulebook too.
   */
  @Test
  void recommendedJetAndThoseInReserve_areNotToBeLeftOut() {
    Kit kit = recommending("main 96", "main 96", "thick needle", "main 108", "main 102");
    KitValidation validation = VALIDATOR.validate(kit, KitDepth.COVERAGE);

    assertThat(coverage(validation).used()).doesNotContain("main 96", "main 102", "thick needle");
    assertThat(neverUsed(validation)).containsExactly("thick needle");
    KitValidation less =
        VALIDATOR.validate(
            recommending("main 96", "main 96", "main 108", "main 102"), KitDepth.COVERAGE);
    assertThat(less.machines()).isEqualTo(validation.machines());
    assertThat(neverUsed(less)).isEmpty();
  }

  /** Engines that the advised jets would win may want what nothing wants now. */
  @Test
  void kitThatIsToldToAddJets_isNotToldToLeaveOthersOut() {
    KitValidation validation =
        VALIDATOR.validate(
            Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 126", "main 96"),
            KitDepth.COVERAGE);

    assertThat(coverage(validation).extras()).isNotEmpty();
    assertThat(coverage(validation).used()).isNotEmpty().doesNotContain("main 96");
    assertThat(neverUsed(validation)).isEmpty();
  }

  /** The reserve is the least that the rulebook takes. */
  @Test
  void jetsInReserve_areAsManyAsTheRulebookAsksFor() {
    Kit enough =
        Shop.kitOf(
            "pilot 55", "slide 40", "tube 266", "needle", "main 126", "main 132", "main 138");
    Kit oneLess = Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 126", "main 132");

    assertThat(rulesAgainst(enough)).doesNotContain("main-jet-kit");
    assertThat(rulesAgainst(oneLess)).contains("main-jet-kit");
  }

  @Test
  void kitThatServesNoEngine_isNotToldToLeaveOutEveryPart() {
    KitValidation validation =
        VALIDATOR.validate(
            Shop.kitOf("pilot 50", "slide 40", "tube 266", "needle", "main 96", "main 102"),
            KitDepth.COVERAGE);

    assertThat(coverage(validation).share()).isEqualTo(Probability.of(0));
    assertThat(neverUsed(validation)).isEmpty();
  }

  /** Of the second machine, which the catalogue does not have, nothing is known. */
  @Test
  void kitForAMachineThatWasNotLookedAt_isNotToldWhatItNeverUses() {
    Kit kit = Shop.kitWith("main 96");
    Recommendation says = Shop.recommendation();
    Kit more =
        Kit.builder()
            .id(kit.id())
            .description(kit.description())
            .family(kit.family())
            .parts(kit.parts())
            .market(kit.market())
            .recommendations(List.of(says, with("tricycle", says.mainJet())))
            .build();

    assertThat(neverUsed(VALIDATOR.validate(kit, KitDepth.COVERAGE))).contains("main 96");
    assertThat(neverUsed(VALIDATOR.validate(more, KitDepth.COVERAGE))).isEmpty();
  }

  @Test
  void kitWithoutAnyNeedle_hasNoCoverage() {
    KitValidation validation =
        VALIDATOR.validate(
            Shop.kitOf("pilot 55", "slide 40", "tube 266", "main 126"), KitDepth.COVERAGE);

    assertThat(validation.machines().get(0).coverage()).isEmpty();
    assertThat(validation.passes()).isFalse();
  }

  private static Kit poor(String slide, String mainJet) {
    Kit kit = Shop.kitOf("pilot 55", slide, "tube 266", "needle", mainJet);
    Recommendation r = with("standard", mainJet);
    return Kit.builder()
        .id(kit.id())
        .description(kit.description())
        .family(kit.family())
        .parts(kit.parts())
        .market(kit.market())
        .recommendations(
            List.of(
                Recommendation.builder()
                    .machine(r.machine())
                    .pilotJet(r.pilotJet())
                    .screw(r.screw())
                    .slide(slide)
                    .idleLift(r.idleLift())
                    .needleJet(r.needleJet())
                    .needle(r.needle())
                    .clip(r.clip())
                    .mainJet(r.mainJet())
                    .fittedScrew(r.fittedScrew())
                    .floatValve(r.floatValve())
                    .floats(r.floats())
                    .build()))
        .build();
  }

  private static List<String> neverUsed(KitValidation validation) {
    return validation.findings().stream()
        .filter(found -> found.ruleId().equals("kit-part-never-used"))
        .map(found -> found.finding().attributes().get("part"))
        .toList();
  }

  private static List<String> rulesAgainst(Kit kit) {
    return VALIDATOR.validate(kit, KitDepth.SETTING).machines().get(0).findings().stream()
        .map(RankedFinding::ruleId)
        .toList();
  }

  private static Kit recommending(String mainJet, String... more) {
    return Shop.recommending(with(Shop.recommendation().machine(), mainJet), more);
  }

  private static KitCoverage coverageOf(List<String> parts) {
    Kit kit = Shop.kitOf(parts.toArray(String[]::new));
    return coverage(VALIDATOR.validate(kit, KitDepth.COVERAGE));
  }

  private static Recommendation with(String machine, String mainJet) {
    Recommendation r = Shop.recommendation();
    return Recommendation.builder()
        .machine(machine)
        .pilotJet(r.pilotJet())
        .screw(r.screw())
        .slide(r.slide())
        .idleLift(r.idleLift())
        .needleJet(r.needleJet())
        .needle(r.needle())
        .clip(r.clip())
        .mainJet(mainJet)
        .fittedScrew(r.fittedScrew())
        .floatValve(r.floatValve())
        .floats(r.floats())
        .build();
  }

  private static KitCoverage coverage(KitValidation validation) {
    return validation.machines().get(0).coverage().orElseThrow();
  }
}
