package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.RankedFinding;
import org.junit.jupiter.api.Test;

/** For how many engines kits of the shop have a right setting. */
class KitCoverageTest {

  private static final KitValidator VALIDATOR = KitValidator.of(Shop.CATALOGUE);

  /** Hardly any jet to choose from: engines differ more than a screw can make good. */
  private static final Kit POOR =
      Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 126");

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
    assertThat(validation.findings().get(0).finding().remedy())
        .contains(coverage.extras().get(0).part());
  }

  /** The promise of an extra part is what the kit serves with it. */
  @Test
  void everyExtra_servesAsManyAsItSaysOnceItIsInTheKit() {
    KitCoverage poor = coverage(VALIDATOR.validate(POOR, KitDepth.COVERAGE));

    for (KitCoverage.Extra extra : poor.extras()) {
      Kit richer =
          Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 126", extra.part());
      KitCoverage coverage = coverage(VALIDATOR.validate(richer, KitDepth.COVERAGE));
      assertThat(coverage.share()).isEqualTo(extra.share()).isGreaterThan(poor.share());
    }
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

  @Test
  void kitWithoutAnyNeedle_hasNoCoverage() {
    KitValidation validation =
        VALIDATOR.validate(
            Shop.kitOf("pilot 55", "slide 40", "tube 266", "main 126"), KitDepth.COVERAGE);

    assertThat(validation.machines().get(0).coverage()).isEmpty();
    assertThat(validation.passes()).isFalse();
  }

  private static KitCoverage coverage(KitValidation validation) {
    return validation.machines().get(0).coverage().orElseThrow();
  }
}
