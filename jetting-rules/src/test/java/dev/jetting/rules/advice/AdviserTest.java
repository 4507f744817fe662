package dev.jetting.rules.advice;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Plan;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Remedy.Direction;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a tuner would do first (common practice, no source), on settings off in one respect. */
class AdviserTest {

  private static final Rulebook RULEBOOK = StandardRulebook.rulebook();
  private static final Adviser ADVISER = Adviser.of(RULEBOOK);

  @Test
  void advise_onASettingThatServes_hasNothingToDo() {
    Plan plan = plan(ALL_ROUND);

    assertThat(plan.ending()).isEqualTo(Plan.Ending.NOTHING_TO_DO);
    assertThat(plan.steps()).isEmpty();
    assertThat(plan.text()).isEqualTo("No part needs to be changed.");
  }

  /** A rule that nothing satisfies, and 500 parts of each kind: the dearest plan there is. */
  @Test
  void advise_withDrawersFullOfParts_assessesABoundedNumberOfSettings() {
    Rule never =
        Rule.named("never")
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above(
                                "setting",
                                Measure.ratio(
                                    2 + setting.profile().points().get(9).lambda().value()),
                                Measure.ratio(1),
                                ThrottleBand.WHOLE)
                            .says("λ is above 0.", Remedy.Aim.richer(ThrottleOpening.FULL, 0.1))));
    AtomicInteger assessed = new AtomicInteger();
    AssessedSetting poor =
        AssessedSetting.of(
            TwoHundred.sheet(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(0.9)))
                .withParts(drawers()));

    Adviser.of(Rulebook.of("never", "1", List.of(never)))
        .assessing(
            sheet -> {
              assessed.incrementAndGet();
              return AssessedSetting.of(sheet);
            })
        .advise(poor);

    assertThat(assessed.get()).isLessThan(Judge.MOST_SETTINGS);
  }

  private static PartsAtHand drawers() {
    return PartsAtHand.builder()
        .mainJets(sizes(0.6, 0.004).map(JetBore::ofMillimetres).toList())
        .pilotJets(sizes(0.3, 0.001).map(JetBore::ofMillimetres).toList())
        .cutaways(sizes(0.5, 0.015).map(Cutaway::ofMillimetres).toList())
        .needleJets(sizes(2.55, 0.001).map(TwoHundred::needleJet).toList())
        .needles(
            IntStream.range(0, 500)
                .mapToObj(i -> TwoHundred.needle("needle " + i, 2.3 + i * 0.0005))
                .toList())
        .build();
  }

  private static Stream<Double> sizes(double first, double step) {
    return IntStream.range(0, 500).mapToObj(i -> Math.rint((first + i * step) * 1e4) / 1e4);
  }

  /** A main jet 30 % too big: nothing but the main jet. */
  @Test
  void advise_onAMainJetTooBig_isASmallerMainJetAndNoMore() {
    Report report = advise(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.64)));

    assertThat(parts(report)).containsExactly(MeteringPart.MAIN_JET);
    assertThat(changes(report))
        .isNotEmpty()
        .allSatisfy(change -> assertThat(change.part()).isEqualTo(MeteringPart.MAIN_JET))
        .allSatisfy(change -> assertThat(change.direction()).isEqualTo(Direction.LEANER));
  }

  /** Lean at full throttle: the main jet, and never the pilot's screw, which acts elsewhere. */
  @ParameterizedTest
  @ValueSource(doubles = {1.0, 1.06, 1.12})
  void advise_onAMainJetTooSmall_beginsWithABiggerOne(double main) {
    Report report = advise(ALL_ROUND.withMainJet(JetBore.ofMillimetres(main)));
    Remedy.Change first = plan(report).steps().get(0);

    assertThat(report.passes()).isFalse();
    assertThat(first.part()).isEqualTo(MeteringPart.MAIN_JET);
    assertThat(first.direction()).isEqualTo(Direction.RICHER);
    assertThat(report.findings().stream().filter(f -> isOfFullThrottle(f)))
        .noneSatisfy(
            f ->
                assertThat(((Remedy.Change) f.finding().remedy()).part())
                    .isEqualTo(MeteringPart.SCREW));
    assertPasses(report);
  }

  private static boolean isOfFullThrottle(RankedFinding ranked) {
    return ranked.finding().remedy() instanceof Remedy.Change
        && ranked.finding().band().from().compareTo(ThrottleBand.eighths(4, 8).from()) > 0;
  }

  /** Methanol on petrol jets is lean everywhere: every circuit, main jet and pilot jet first. */
  @Test
  void advise_onMethanolInAPetrolSetting_beginsWithMainJetAndPilotJet() {
    Setting wide = ALL_ROUND.withCarburettor(TwoHundred.carburettor(ScrewKind.MIXTURE, 5));
    SetupSheet sheet = TwoHundred.sheet(STANDARD, wide);
    Fuel methanol = Fuel.of(FuelComponent.METHANOL);
    SetupSheet refuelled =
        sheet.withSetup(sheet.setup().withFuel(methanol.withPremix(PremixRatio.ofPetrolToOil(20))));
    Report report = ADVISER.advise(AssessedSetting.of(refuelled));

    assertThat(parts(report)).startsWith(MeteringPart.MAIN_JET, MeteringPart.PILOT_JET);
    assertThat(changes(report).get(0).part()).isEqualTo(MeteringPart.MAIN_JET);
    assertPasses(report);
  }

  /** The lowest groove: what is left is a bigger needle jet, never a smaller one. */
  @Test
  void advise_onALeanMiddleWithTheClipAtItsEnd_isNeverLeaner() {
    Report report =
        advise(
            ALL_ROUND
                .withClip(ClipPosition.fromTop(5, 5))
                .withNeedleJet(TwoHundred.needleJet(2.58)));

    assertThat(report.passes()).isFalse();
    assertThat(changes(report))
        .noneMatch(
            change ->
                change.part() == MeteringPart.NEEDLE_JET && change.direction() == Direction.LEANER);
    assertPasses(report);
  }

  /** A pilot jet too small for the overrun: the pilot circuit, and the remedy says the overrun. */
  @Test
  void advise_onALeanOverrun_isThePilotCircuit() {
    Report report = advise(ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.5)));

    assertThat(remedy(report, "pilot-on-overrun"))
        .get()
        .satisfies(
            change -> {
              assertThat(change.part()).isIn(MeteringPart.PILOT_JET, MeteringPart.SCREW);
              assertThat(change.direction()).isEqualTo(Direction.RICHER);
              assertThat(change.text()).contains("on the overrun");
            });
    assertPasses(report);
  }

  @Test
  void advise_onAScrewHardlyOffItsSeat_turnsItOut() {
    Report report = advise(ALL_ROUND.withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(0.25))));

    assertThat(remedy(report, "screw-range").orElseThrow().deed())
        .startsWith("Turn the mixture screw out to");
  }

  /** Parts at hand go before parts to buy. */
  @Test
  void advise_fromPartsAtHand_buysNone() {
    SetupSheet sheet =
        TwoHundred.sheet(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.06)));
    Report report = ADVISER.advise(AssessedSetting.of(sheet.withParts(mains(1.18, 1.26, 1.34))));

    assertThat(plan(report).toBuy()).isEmpty();
    assertThat(plan(report).steps().get(0).to().text()).isIn("main 118", "main 126", "main 134");
    assertPasses(report);
  }

  /** Where those at hand do not serve, it says what to buy. */
  @Test
  void advise_wherePartsAtHandDoNotServe_saysWhatToBuy() {
    SetupSheet sheet =
        TwoHundred.sheet(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.06)));
    Plan plan = plan(ADVISER.advise(AssessedSetting.of(sheet.withParts(mains(1.02, 1.06, 1.08)))));

    assertThat(plan.ending()).isEqualTo(Plan.Ending.REMEDIED);
    assertThat(plan.text()).contains("To buy: main 1");
  }

  private static PartsAtHand mains(double... bores) {
    PartsAtHand none = PartsAtHand.unknown();
    return PartsAtHand.builder()
        .pilotJets(List.of(JetBore.ofMillimetres(0.55)))
        .cutaways(List.of(Cutaway.ofMillimetres(4)))
        .needleJets(List.of(TwoHundred.needleJet(2.66)))
        .needles(none.needles())
        .mainJets(Arrays.stream(bores).mapToObj(JetBore::ofMillimetres).toList())
        .build();
  }

  /** What the rider has taken upon himself is not planned for. */
  @Test
  void advise_onAWaivedFinding_leavesIt() {
    AssessedSetting setting =
        TwoHundred.assessed(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.64)));
    Report bare = RULEBOOK.evaluate(setting);
    List<Waiver> waivers =
        bare.findings().stream()
            .map(f -> Waiver.of(bare, f).by("the owner").because("kept rich"))
            .distinct()
            .toList();
    Report waived = RULEBOOK.evaluate(setting, waivers, LocalDate.of(2026, 1, 1));

    assertThat(plan(ADVISER.advise(setting, waived)).steps()).isEmpty();
  }

  @Test
  void advise_onASettingAssessedInAnotherWay_isRefused() {
    AssessedSetting narrowed =
        TwoHundred.assessed(STANDARD, ALL_ROUND).within(ThrottleBand.eighths(2, 4));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> ADVISER.advise(narrowed))
        .withMessageContaining("allowed one assessed as AssessedSetting.of(sheet, riskModel) does");
  }

  @Test
  void advise_again_isEqual() {
    Setting lean = ALL_ROUND.withCutaway(Cutaway.ofMillimetres(5));

    assertThat(advise(lean)).isEqualTo(advise(lean));
  }

  private static void assertPasses(Report report) {
    List<Remedy.Change> steps = plan(report).steps();
    SetupSheet end =
        report
            .sheet()
            .withSetup(report.sheet().setup().withSetting(steps.get(steps.size() - 1).setting()));
    assertThat(RULEBOOK.evaluate(AssessedSetting.of(end)).passes()).isTrue();
  }

  private static Optional<Remedy.Change> remedy(Report report, String rule) {
    return report.findings().stream()
        .filter(finding -> finding.ruleId().equals(rule))
        .map(finding -> finding.finding().remedy())
        .filter(Remedy.Change.class::isInstance)
        .map(Remedy.Change.class::cast)
        .findFirst();
  }

  private static List<MeteringPart> parts(Report report) {
    return plan(report).steps().stream().map(Remedy.Change::part).toList();
  }

  private static List<Remedy.Change> changes(Report report) {
    return report.findings().stream()
        .map(finding -> finding.finding().remedy())
        .flatMap(r -> r instanceof Remedy.Change change ? Stream.of(change) : Stream.empty())
        .toList();
  }

  private static Plan plan(Setting setting) {
    return plan(advise(setting));
  }

  private static Plan plan(Report report) {
    return report.plan().orElseThrow();
  }

  private static Report advise(Setting setting) {
    return ADVISER.advise(TwoHundred.assessed(STANDARD, setting));
  }
}
