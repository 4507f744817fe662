package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.jetting.core.mixture.FullThrottleDraw;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Screw;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.VolumeFlow;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found on kits: the sound one of the shop, spoilt in one place each. */
class KitValidatorTest {

  private static final KitValidator VALIDATOR = KitValidator.of(Shop.CATALOGUE);

  @Test
  void soundKit_passes() {
    KitValidation fit = VALIDATOR.validate(Shop.kit(), KitDepth.FIT);
    assertThat(fit.findings()).isEmpty();
    assertThat(fit.machines()).isEmpty();
    assertThat(fit.passes()).isTrue();

    KitValidation setting = VALIDATOR.validate(Shop.kit(), KitDepth.SETTING);
    assertThat(setting.findings()).isEmpty();
    assertThat(setting.passes()).isTrue();
    assertThat(setting.count(Severity.DANGER)).isZero();
    assertThat(setting.rulebook().toString()).isEqualTo("standard 7");
  }

  /** A machine's result is the rulebook's own report, not a second opinion. */
  @Test
  void machineResult_isWhatTheRulebookSaysOfTheSheet() {
    Kit kit = Shop.kit();
    List<SetupSheet> sheets = VALIDATOR.sheets(kit);
    assertThat(sheets).hasSize(1);
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheets.get(0)));

    MachineResult result = VALIDATOR.validate(kit, KitDepth.SETTING).machines().get(0);

    assertThat(result.findings()).isEqualTo(report.findings());
    assertThat(result.passes()).isEqualTo(report.passes());
    assertThat(highest(result)).isEqualTo(report.worst().leanRisk());
  }

  /** On a climb an opening is leaner: this setting's risk is greatest there. */
  @Test
  void machineResult_ofASettingThatIsLeanestOnAClimb_hasTheRiskOfTheClimb() {
    Kit kit = Shop.recommending(on("tuned"));
    Report report =
        StandardRulebook.rulebook().evaluate(AssessedSetting.of(VALIDATOR.sheets(kit).get(0)));
    Probability level =
        Stream.of(report.profile(), report.coldestDay(), report.hottestDay())
            .map(day -> day.worst().leanRisk())
            .max(Comparator.comparingDouble(Probability::value))
            .orElseThrow();

    MachineResult result = VALIDATOR.validate(kit, KitDepth.SETTING).machines().get(0);

    assertThat(report.worst().leanRisk().isMoreThan(level)).isTrue();
    assertThat(highest(result)).isEqualTo(report.worst().leanRisk());
  }

  private static Probability highest(MachineResult result) {
    return Stream.of(result.today(), result.coldest(), result.hottest())
        .map(CornerRisk::leanRisk)
        .max(Comparator.comparingDouble(Probability::value))
        .orElseThrow();
  }

  /**
   * A standard engine's main jet in a tuned engine: it draws more air, blows back less and wants a
   * richer mixture (common practice, no source).
   */
  @Test
  void sameSettingForTheTunedEngine_isLeanThere() {
    Kit kit = Shop.recommending(on("tuned"));

    KitValidation validation = VALIDATOR.validate(kit, KitDepth.SETTING);

    assertThat(validation.passes()).isFalse();
    assertThat(validation.findings()).isEmpty();
    assertThat(validation.machines().get(0).findings())
        .extracting(RankedFinding::ruleId)
        .contains("lean-anywhere");
    assertThat(VALIDATOR.validate(kit, KitDepth.FIT).passes()).isTrue();
  }

  @Test
  void idsThatTheCatalogueLacks_areFoundWhereTheyStand() {
    Kit kit =
        Kit.builder()
            .id("nothing known")
            .description("")
            .family("no family")
            .parts(List.of("no part"))
            .market("no market")
            .recommendations(List.of(on("no machine")))
            .build();

    KitValidation validation = VALIDATOR.validate(kit, KitDepth.SETTING);

    assertThat(validation.passes()).isFalse();
    assertThat(validation.machines()).isEmpty();
    assertThat(validation.findings())
        .filteredOn(found -> found.ruleId().equals("kit-unknown-id"))
        .extracting(found -> found.finding().subject())
        .containsExactlyInAnyOrder("family", "market", "parts[0]", "recommendations[0].machine");
  }

  @Test
  void partOfASeriesThatTheFamilyDoesNotTake_doesNotFit() {
    assertFinds(Shop.kitWith("other 126"), "kit-part-fits", "parts[9]");
  }

  /** The number on the jet is the same, and the thread is not. */
  @Test
  void recommendedPartThatIsNotInTheKit_isFound() {
    Kit kit = Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 132");

    assertFinds(kit, "kit-part-in-kit", "recommendations[0].mainJet");
  }

  /** To put it into the kit, as is said of a part that fits, would not help. */
  @Test
  void recommendedPartThatIsNotInTheKitAndDoesNotFit_isToldNotToFitFirst() {
    Kit kit = Shop.recommending(with(Shop.recommendation().screw(), 1.3, "other 126"));

    List<RankedFinding> found = VALIDATOR.validate(kit, KitDepth.FIT).findings();

    assertThat(found)
        .extracting(RankedFinding::ruleId, each -> each.finding().subject())
        .containsExactly(
            tuple("kit-part-fits", "recommendations[0].mainJet"),
            tuple("kit-part-in-kit", "recommendations[0].mainJet"));
    assertThat(found.get(1).finding().remedy().text()).isEqualTo("Recommend a part that is in it.");
  }

  @Test
  void pilotJetRecommendedAsMainJet_isFound() {
    Recommendation r = Shop.recommendation();
    Kit kit =
        Shop.recommending(
            Recommendation.builder()
                .machine(r.machine())
                .pilotJet(r.pilotJet())
                .screw(r.screw())
                .slide(r.slide())
                .idleLift(r.idleLift())
                .needleJet(r.needleJet())
                .needle(r.needle())
                .clip(r.clip())
                .mainJet("pilot 55")
                .fittedScrew(r.fittedScrew())
                .floatValve(r.floatValve())
                .floats(r.floats())
                .build());

    assertFinds(kit, "kit-part-kind", "recommendations[0].mainJet");
  }

  @Test
  void needleThickerThanTheNeedleJet_isFound() {
    assertFinds(
        Shop.recommending(hung("tube narrow", "needle", 2, 5), "tube narrow"),
        "kit-needle-in-needle-jet",
        "recommendations[0].needle");
  }

  @Test
  void needleThatNoNeedleJetOfTheKitTakes_isAWarning() {
    KitValidation validation = VALIDATOR.validate(Shop.kitWith("thick needle"), KitDepth.FIT);

    assertThat(validation.findings())
        .extracting(RankedFinding::ruleId, RankedFinding::severity)
        .containsExactly(tuple("kit-needle-in-needle-jet", Severity.WARNING));
    assertThat(validation.passes()).isTrue();
  }

  @Test
  void clipCountedOnOtherGrooves_isFound() {
    assertFinds(
        Shop.recommending(hung("tube 266", "needle", 2, 4)),
        "kit-clip-grooves",
        "recommendations[0].clip");
  }

  @Test
  void turnsMeantForAnAirScrew_areFoundOnceAtEachDepth() {
    Kit kit =
        Shop.recommending(with(new Screw(ScrewKind.AIR, ScrewTurns.of(1.5)), 1.3, "main 126"));

    assertFinds(kit, "kit-screw-kind", "recommendations[0].screw");
    KitValidation setting = VALIDATOR.validate(kit, KitDepth.SETTING);
    assertThat(setting.findings()).isEmpty();
    assertThat(setting.machines().get(0).findings())
        .extracting(RankedFinding::ruleId)
        .contains("screw-kind");
  }

  @Test
  void airScrewInAKitForMixtureScrews_isFound() {
    assertFinds(Shop.kitWith("air screw"), "kit-screw-kind", "parts[9]");
  }

  @Test
  void slideLiftedBeyondTheBore_cannotBeSet() {
    Kit kit = Shop.recommending(with(Shop.recommendation().screw(), 31, "main 126"));

    assertFinds(kit, "kit-setting", "recommendations[0]");
  }

  @Test
  void fittedScrewAndFloatValve_areInTheSetting() {
    Recommendation r = Shop.recommendation();
    Kit kit = Shop.recommending(fitted(r, "fine screw", "big valve"), "fine screw", "big valve");

    SetupSheet sheet = VALIDATOR.sheets(kit).get(0);

    var carburettor = sheet.setup().setting().carburettor();
    assertThat(carburettor.pilot().areaPerTurn().squareMillimetres()).isEqualTo(0.15);
    assertThat(carburettor.floatValve().seat().millimetres()).isEqualTo(3);
    assertThat(VALIDATOR.validate(kit, KitDepth.FIT).passes()).isTrue();
  }

  @Test
  void floatValveThatFullThrottleDrains_isFoundWithoutTheRulebook() {
    Recommendation r = Shop.recommendation();
    Kit kit = Shop.recommending(fitted(r, null, "small valve"), "small valve");

    assertFinds(kit, "kit-float-valve-flow", "recommendations[0].floatValve");
    KitValidation setting = VALIDATOR.validate(kit, KitDepth.SETTING);
    assertThat(setting.findings()).isEmpty();
    assertThat(setting.machines().get(0).findings())
        .extracting(RankedFinding::ruleId)
        .contains("float-valve-flow");
    Rulebook without = StandardRulebook.rulebook().without("float-valve-flow");
    assertThat(
            KitValidator.of(Shop.CATALOGUE, without, RiskModel.assumed())
                .validate(kit, KitDepth.SETTING)
                .findings())
        .extracting(RankedFinding::ruleId)
        .containsExactly("kit-float-valve-flow");
  }

  /** Seats whose valve passes less than the draw, or more, by less and by more than the bound. */
  @ParameterizedTest
  @ValueSource(doubles = {0.80, 0.97, 0.999, 1.001, 1.03, 1.10, 1.50})
  void floatValve_isFoundExactlyWhereItPassesLessThanTheModelDraws(double passesByDraw) {
    Recommendation r = Shop.recommendation();
    Setup setup = VALIDATOR.sheets(Shop.kit()).get(0).setup();
    FloatValve own = setup.setting().carburettor().floatValve();
    VolumeFlow drawn = FullThrottleDraw.of(setup);
    double seat =
        own.seat().millimetres()
            * Math.sqrt(passesByDraw * drawn.litresPerHour() / own.greatestFlow().litresPerHour());
    FloatValve valve =
        new FloatValve(Diameter.ofMillimetres(seat), own.supplyHead(), own.discharge());
    Part part =
        Part.builder()
            .id("odd valve")
            .description("odd")
            .series("valves")
            .shape(new PartShape.Valve(valve))
            .build();

    List<RankedFinding> found =
        KitValidator.of(Shop.CATALOGUE.withParts(List.of(part)))
            .validate(Shop.recommending(fitted(r, null, "odd valve"), "odd valve"), KitDepth.FIT)
            .findings();

    if (passesByDraw > 1) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found)
          .extracting(RankedFinding::ruleId, f -> f.finding().measured())
          .containsExactly(
              tuple("kit-float-valve-flow", new Measure(drawn.litresPerHour(), "L/h")));
    }
  }

  /** What the bench leaves open of a jet's bore counts as a tolerance of that jet. */
  @Test
  void jetByFlow_isRiskierTheLessItsBenchIsKnown() {
    Catalogue catalogue = onABenchKnownTo(0.3);
    KitValidator validator = KitValidator.of(catalogue);
    Kit kit = Shop.recommending(with(Shop.recommendation().screw(), 1.3, "flow 200"), "flow 200");
    SetupSheet sheet = validator.sheets(kit).get(0);
    double uncertainty = catalogue.boreUncertainty(catalogue.part("flow 200").orElseThrow());
    RiskModel itsOwn = RiskModel.assumed().widerByMainJet(uncertainty);

    Probability risk =
        validator.validate(kit, KitDepth.SETTING).machines().get(0).today().leanRisk();

    // The bore goes with the root of the flow, so near enough with half of its uncertainty.
    double bore = sheet.setup().setting().mainJet().millimetres();
    assertThat(uncertainty).isCloseTo(0.3 / 2 * bore, withinPercentage(8));
    // A report, which the validator reads, has six digits of a risk.
    assertThat(risk.value())
        .isCloseTo(today(AssessedSetting.of(sheet, itsOwn)).value(), within(1e-6));
    assertThat(risk).isGreaterThan(today(AssessedSetting.of(sheet)));
  }

  private static Probability today(AssessedSetting setting) {
    return WorstSpot.of(WorstSpot.Day.TODAY, setting.profile()).leanRisk();
  }

  private static Catalogue onABenchKnownTo(double relativeUncertainty) {
    JetCalibration bench =
        new JetCalibration(
            Shop.BENCH.head(), Shop.BENCH.liquid(), Shop.BENCH.law(), relativeUncertainty);
    Catalogue shop = Shop.CATALOGUE;
    return Catalogue.of(
        shop.title(),
        shop.families(),
        shop.series().stream()
            .map(
                its ->
                    PartSeries.builder()
                        .id(its.id())
                        .description(its.description())
                        .kind(its.kind())
                        .bench(its.bench().map(any -> bench))
                        .build())
            .toList(),
        shop.parts(),
        shop.machines(),
        shop.markets());
  }

  /** Bench and jet lead to a bore; the flow is kept, so that the rulebook can look at it. */
  @Test
  void jetNumberedByFlow_isReckonedByItsBench() {
    Kit kit = Shop.recommending(with(Shop.recommendation().screw(), 1.3, "flow 200"), "flow 200");

    SetupSheet sheet = VALIDATOR.sheets(kit).get(0);

    JetFlow flow = JetFlow.ofCubicCentimetresPerMinute(200);
    assertThat(sheet.setup().setting().mainJet()).isEqualTo(Shop.BENCH.boreOf(flow).value());
    assertThat(sheet.provenance().mainJetFlow()).contains(flow);
    assertThat(sheet.provenance().pilotJetFlow()).isEmpty();
  }

  @Test
  void sheet_knowsTheJetsOfTheKitAndTheNeedlesThereAre() {
    SetupSheet sheet = VALIDATOR.sheets(Shop.kitWith("main 126", "main 144")).get(0);

    assertThat(sheet.parts().mainJets())
        .extracting(jet -> jet.hundredths())
        .containsExactly(120.0, 126.0, 132.0, 138.0, 144.0);
    assertThat(sheet.parts().needles()).hasSize(3); // all that there are for the family
    assertThat(sheet.title()).isEqualTo("all-round on standard");
  }

  private static void assertFinds(Kit kit, String ruleId, String subject) {
    KitValidation validation = VALIDATOR.validate(kit, KitDepth.FIT);
    assertThat(validation.findings())
        .extracting(RankedFinding::ruleId, found -> found.finding().subject())
        .containsExactly(tuple(ruleId, subject));
    Finding finding = validation.findings().get(0).finding();
    assertThat(finding.text()).doesNotContain("{");
    for (Locale locale : Wording.languages()) {
      Wording wording = Wording.of(locale);
      assertThat(List.of(finding.words(), finding.remedy().message())).allMatch(wording::has);
    }
    assertThat(Wording.of(Locale.GERMAN).text(finding.words())).isNotEqualTo(finding.text());
    assertThat(validation.passes()).isFalse();
  }

  private static Recommendation on(String machine) {
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
        .mainJet(r.mainJet())
        .fittedScrew(r.fittedScrew())
        .floatValve(r.floatValve())
        .floats(r.floats())
        .build();
  }

  private static Recommendation hung(String needleJet, String needle, int groove, int grooves) {
    Recommendation r = Shop.recommendation();
    return Recommendation.builder()
        .machine(r.machine())
        .pilotJet(r.pilotJet())
        .screw(r.screw())
        .slide(r.slide())
        .idleLift(r.idleLift())
        .needleJet(needleJet)
        .needle(needle)
        .clip(ClipPosition.fromTop(groove, grooves))
        .mainJet(r.mainJet())
        .fittedScrew(r.fittedScrew())
        .floatValve(r.floatValve())
        .floats(r.floats())
        .build();
  }

  private static Recommendation with(Screw screw, double idleLift, String mainJet) {
    Recommendation r = Shop.recommendation();
    return Recommendation.builder()
        .machine(r.machine())
        .pilotJet(r.pilotJet())
        .screw(screw)
        .slide(r.slide())
        .idleLift(Length.ofMillimetres(idleLift))
        .needleJet(r.needleJet())
        .needle(r.needle())
        .clip(r.clip())
        .mainJet(mainJet)
        .fittedScrew(r.fittedScrew())
        .floatValve(r.floatValve())
        .floats(r.floats())
        .build();
  }

  private static Recommendation fitted(Recommendation r, String screw, String valve) {
    return Recommendation.builder()
        .machine(r.machine())
        .pilotJet(r.pilotJet())
        .screw(r.screw())
        .slide(r.slide())
        .idleLift(r.idleLift())
        .needleJet(r.needleJet())
        .needle(r.needle())
        .clip(r.clip())
        .mainJet(r.mainJet())
        .fittedScrew(Optional.ofNullable(screw))
        .floatValve(Optional.ofNullable(valve))
        .floats(r.floats())
        .build();
  }

  /** A part of the checks would pass for all of them. */
  @Test
  void interrupted_hasNoResult() {
    for (KitDepth depth : KitDepth.values()) {
      Thread.currentThread().interrupt();
      assertThatExceptionOfType(CancellationException.class)
          .isThrownBy(() -> KitValidator.of(Shop.CATALOGUE).validate(Shop.kit(), depth))
          .withMessage("interrupted while validating a kit: there is no result");
      assertThat(Thread.interrupted()).as("still interrupted").isTrue();
    }
  }
}
