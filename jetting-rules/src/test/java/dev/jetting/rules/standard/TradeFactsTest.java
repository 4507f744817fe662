package dev.jetting.rules.standard;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.FILTER;
import static dev.jetting.rules.TwoHundred.LEANER_NEEDLE;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static dev.jetting.rules.TwoHundred.VERY_MILD;
import static dev.jetting.rules.TwoHundred.assessed;
import static dev.jetting.rules.TwoHundred.needleJet;
import static dev.jetting.rules.TwoHundred.tuned;
import static java.util.Comparator.comparingDouble;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Facts of the trade on an engine of about 200 cm³ with a 30 mm slide carburettor (common practice,
 * no source). {@code TRADE-FACTS.md} beside this class lists them.
 *
 * <p>Each test says whether the fact comes out by prediction, or whether it had a hand in choosing
 * a number. The level of the mixture, which decides the all-round setting, was set by trial on that
 * very setting; what a change of a part does was not.
 */
class TradeFactsTest {

  private static final String LEAN = "lean-anywhere";
  private static final String RICH = "too-rich";
  private static final String OVERRUN = "pilot-on-overrun";

  /** Had a hand in choosing the level (reference coefficients, needle, progression hole). */
  @Test
  void allRoundSetting_standardEngine_nothingFound() {
    assertThat(found(STANDARD, ALL_ROUND)).isEmpty();
  }

  /** Had a hand in choosing the overrun limit, which lies between 0.55 and 0.52. */
  @ParameterizedTest
  @ValueSource(doubles = {0.52, 0.50})
  void pilotJet_belowFiftyFive_isTooLeanOnTheOverrun(double pilot) {
    assertThat(found(STANDARD, ALL_ROUND.withPilotJet(JetBore.ofMillimetres(pilot))))
        .contains(OVERRUN);
  }

  /** By prediction: the size of the effect is the model's, up to full throttle. */
  @Test
  void pilotJet_bigger_enrichesTheWholeRangeFadingUpwardsButNeverToNothing() {
    List<Double> changes =
        changes(ALL_ROUND, ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.58)), 1, 2, 4, 6, 8);
    assertThat(changes).allSatisfy(change -> assertThat(change).isLessThan(-0.002));
    assertThat(changes).isSorted();
  }

  /** By prediction, given the level. */
  @Test
  void cutaway_threeIsTooRichAndFiveTooLean_withTheAllRoundNeedleJet() {
    assertThat(found(STANDARD, ALL_ROUND.withCutaway(Cutaway.ofMillimetres(3))))
        .contains(RICH, "cutaway-balance")
        .doesNotContain(LEAN);
    assertThat(found(STANDARD, ALL_ROUND.withCutaway(Cutaway.ofMillimetres(5))))
        .contains(LEAN)
        .doesNotContain(RICH);
  }

  /** By prediction, given the level: lean at small throttle, where the needle begins to feed. */
  @Test
  void needleJet_twoHundredthsSmaller_isLeanInTheMiddle() {
    AssessedSetting crisp = assessed(STANDARD, ALL_ROUND.withNeedleJet(needleJet(2.64)));
    RankedFinding lean = finding(crisp, LEAN);
    assertThat(lean.finding().band().from()).isGreaterThan(ThrottleOpening.CLOSED);
    assertThat(lean.finding().band().to()).isLessThan(ThrottleOpening.ofEighths(4));
    assertThat(found(STANDARD, ALL_ROUND.withNeedleJet(needleJet(2.66)))).doesNotContain(LEAN);
  }

  /**
   * By prediction, but only in part, on a standard and on a tuned engine: common practice says at
   * small and middle throttle; the model acquits from a quarter throttle up.
   */
  @Test
  void leanerNeedleWithLeanerNeedleJet_standardAndTuned_isDangerousAtSmallThrottle() {
    for (Engine engine : List.of(STANDARD, tuned(220))) {
      Setting setting = leanestPair(engine.equals(STANDARD) ? 1.26 : 1.40);
      RankedFinding lean = finding(assessed(engine, setting), LEAN);
      assertThat(lean.severity()).isEqualTo(Severity.DANGER);
      assertThat(lean.finding().band().from()).isLessThanOrEqualTo(ThrottleOpening.ofEighths(1));
      assertThat(lean.finding().band().to()).isGreaterThanOrEqualTo(ThrottleOpening.ofEighths(1));
    }
  }

  /**
   * By prediction, but only in part: on a very mild engine with a filter and a restrictive exhaust
   * the model acquits the pair from a quarter throttle up, and still warns at an eighth.
   */
  @Test
  void leanerNeedleWithLeanerNeedleJet_veryMildWithFilter_isAcquittedInTheMiddle() {
    ThrottleBand middle = ThrottleBand.eighths(2, 4);
    double veryMild = worst(VERY_MILD, leanestPair(1.26).withIntake(FILTER), middle);
    double standard = worst(STANDARD, leanestPair(1.26), middle);
    assertThat(veryMild).isLessThan(0.05);
    assertThat(standard).isGreaterThan(veryMild);
    assertThat(worst(VERY_MILD, leanestPair(1.26).withIntake(FILTER), ThrottleBand.eighths(1, 1)))
        .isGreaterThan(0.1);
  }

  /** Had a hand in choosing the needle's first taper; the neighbours come by prediction. */
  @Test
  void clip_secondFromTopOfFive_isTheLeanestThatHolds() {
    assertThat(found(STANDARD, clip(1))).contains(LEAN);
    assertThat(found(STANDARD, clip(2))).isEmpty();
    assertThat(found(STANDARD, clip(3))).doesNotContain(LEAN).contains("cutaway-balance");
  }

  /** Had a hand in choosing the screw's area a turn and the closed-throttle limits. */
  @Test
  void mixtureScrew_oneAndAHalfToOneAndThreeQuarterTurns_isTheRange() {
    List<Double> clean =
        DoubleStream.of(1, 1.25, 1.5, 1.75, 2, 2.25, 2.5)
            .filter(turns -> found(STANDARD, turns(turns)).isEmpty())
            .boxed()
            .toList();
    assertThat(clean).containsExactly(1.5, 1.75);
  }

  /** Had a hand in choosing the reference level. */
  @Test
  void mainJet_standardWithSimpleExhaust_isOneTwentyFiveToOneTwentyEight() {
    assertThat(bestMain(STANDARD)).isBetween(1.25, 1.28);
  }

  /**
   * By prediction from displacement, delivery, timing of the inlet and need, and only in part: a
   * tuned engine wants more than two customary steps more. Common practice says 135 to 145, which
   * the model does not reach. A model that does breaks this test, and the fact is to be said so.
   */
  @ParameterizedTest
  @ValueSource(doubles = {210, 217, 225})
  void mainJet_tuned_isBiggerByLessThanPracticeHas(double cubicCentimetres) {
    double tuned = bestMain(tuned(cubicCentimetres));
    assertThat(tuned - bestMain(STANDARD)).isGreaterThan(0.04);
    assertThat(tuned).isLessThan(1.35);
  }

  /** Not as practice has it, which hardly feels a step of the main jet below half throttle. */
  @Test
  void mainJet_aStep_isStillFeltAtAQuarter() {
    List<Double> changes =
        changes(ALL_ROUND, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.28)), 2, 8);
    assertThat(changes.get(0)).isBetween(-0.012, -0.005);
    assertThat(changes.get(1)).isBetween(-0.03, -0.02);
  }

  /** Not as practice has it, which has the clip work from a quarter to three quarters. */
  @Test
  void clip_aGroove_worksMostAtAnEighth() {
    List<Double> changes = changes(ALL_ROUND, clip(3), 1, 2, 4, 6);
    assertThat(changes).isSorted();
    assertThat(changes.get(0)).isLessThan(-0.08);
    assertThat(changes.get(3)).isGreaterThan(-0.01);
  }

  /** By construction: the two kinds are two arrangements of the same passages. */
  @Test
  void screw_mixtureOutIsRicher_airOutIsLeaner() {
    for (ScrewKind kind : ScrewKind.values()) {
      Setting half = onScrew(kind, 1);
      Setting more = onScrew(kind, 1.5);
      double change = changes(half, more, 0).get(0);
      assertThat(change).satisfies(kind == ScrewKind.MIXTURE ? c -> below(c) : c -> above(c));
    }
  }

  /** By construction of the nozzle factor, whose shape is assumed with this fact in sight. */
  @Test
  void neck_longer_isLeanerMostAtAQuarter() {
    Setting longer =
        ALL_ROUND.withNeedleJet(
            new NeedleJet(Diameter.ofMillimetres(2.66), Length.ofMillimetres(3)));
    List<Double> changes = changes(ALL_ROUND, longer, 0, 1, 2, 3, 4, 5, 6, 7);
    assertThat(changes).allSatisfy(change -> assertThat(change).isNotNegative());
    int most =
        IntStream.range(0, changes.size()).boxed().max(comparingDouble(changes::get)).orElseThrow();
    assertThat(most).as("eighths of throttle").isBetween(1, 2);
  }

  /**
   * Had a hand in choosing how much of the charge a carburettor may cost: a tuned engine of this
   * class has made about 37 hp through 27 mm.
   */
  @Test
  void carburettor_twentySevenOnATunedEngine_isNeitherTooSmallNorTooBig() {
    assertThat(found(tuned(217), onBore(27)))
        .doesNotContain("carburettor-too-small", "carburettor-too-big");
  }

  /**
   * By prediction, given that an engine is asked to pull from a third of its peak speed and that
   * the mean suction counts: the limit follows from the lean limit. Others made 26 to 27 hp with 34
   * to 39 mm; 36 mm is acquitted.
   */
  @Test
  void carburettor_thirtyNineOnATunedEngine_hasAWeakSignal() {
    assertThat(found(tuned(217), onBore(39))).contains("carburettor-too-big");
    assertThat(found(tuned(217), onBore(36))).doesNotContain("carburettor-too-big");
    assertThat(found(STANDARD, onBore(34))).contains("carburettor-too-big");
  }

  /** By prediction: half as much lift again to overcome, and less of it as suction grows. */
  @Test
  void floats_low_areLeanerEverywhereMostAtSmallThrottle() {
    Setting low =
        ALL_ROUND.withFloats(
            Floats.builder()
                .set(FloatLevel.ofMillimetres(23))
                .nominal(FloatLevel.ofMillimetres(20))
                .build());
    List<Double> changes = changes(ALL_ROUND, low, 1, 2, 3, 4, 5, 6, 7, 8);
    assertThat(changes).allSatisfy(change -> assertThat(change).isPositive());
    assertThat(changes).isSortedAccordingTo(Comparator.reverseOrder());
  }

  /** By prediction. */
  @Test
  void moreOilMoreEthanolOrNoFilter_isLeanerWhereTheThrottleIsOpen() {
    Setup filtered = TwoHundred.sheet(STANDARD, ALL_ROUND.withIntake(FILTER)).setup();
    List.of(
            filtered.withFuel(Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(25))),
            filtered.withFuel(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50))),
            filtered.withSetting(ALL_ROUND))
        .forEach(
            other ->
                assertThat(changes(filtered, other, 1, 2, 4, 6, 8))
                    .allSatisfy(TradeFactsTest::above));
  }

  /** Another bore on jets in proportion to it: on those of a narrower one it is lean anyway. */
  private static Setting onBore(double millimetres) {
    double size = millimetres / 30;
    return ALL_ROUND
        .withCarburettor(TwoHundred.carburettor(Diameter.ofMillimetres(millimetres)))
        .withPilotJet(JetBore.ofMillimetres(0.55 * size))
        .withMainJet(JetBore.ofMillimetres(1.32 * size))
        .withNeedleJet(needleJet(2.66 + 0.16 * (size - 1)));
  }

  private static void below(double change) {
    assertThat(change).isNegative();
  }

  private static void above(double change) {
    assertThat(change).isPositive();
  }

  private static Set<String> found(Engine engine, Setting setting) {
    return StandardRulebook.rulebook().evaluate(assessed(engine, setting)).findings().stream()
        .map(RankedFinding::ruleId)
        .collect(Collectors.toSet());
  }

  private static RankedFinding finding(AssessedSetting setting, String id) {
    return StandardRulebook.rulebook().evaluate(setting).findings().stream()
        .filter(finding -> finding.ruleId().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no finding of " + id));
  }

  private static double worst(Engine engine, Setting setting, ThrottleBand band) {
    RiskPoint worst = assessed(engine, setting).within(band).profile().worst();
    return worst.leanRisk().value();
  }

  /** Changes of ln λ on the standard engine at some eighths of throttle. */
  private static List<Double> changes(Setting from, Setting to, int... eighths) {
    return changes(
        TwoHundred.sheet(STANDARD, from).setup(), TwoHundred.sheet(STANDARD, to).setup(), eighths);
  }

  private static List<Double> changes(Setup from, Setup to, int... eighths) {
    MixtureModel before = MixtureModel.of(from);
    MixtureModel after = MixtureModel.of(to);
    return IntStream.of(eighths)
        .mapToObj(ThrottleOpening::ofEighths)
        .map(throttle -> StrictMath.log(lambda(after.at(throttle)) / lambda(before.at(throttle))))
        .toList();
  }

  private static double lambda(MixturePoint point) {
    return point.lambda().value();
  }

  /**
   * The main jet, in hundredths, whose full-throttle mixture is nearest to what the engine needs.
   */
  private static double bestMain(Engine engine) {
    double need = engine.need().at(ThrottleOpening.FULL).value();
    return IntStream.rangeClosed(100, 180)
        .mapToObj(hundredths -> JetBore.ofHundredths(hundredths))
        .min(comparingDouble(main -> Math.abs(fullThrottle(engine, main) - need)))
        .orElseThrow()
        .millimetres();
  }

  private static double fullThrottle(Engine engine, JetBore main) {
    return lambda(
        MixtureModel.of(TwoHundred.sheet(engine, ALL_ROUND.withMainJet(main)).setup())
            .at(ThrottleOpening.FULL));
  }

  private static Setting leanestPair(double main) {
    return ALL_ROUND
        .withNeedleJet(needleJet(2.64))
        .withNeedle(LEANER_NEEDLE, ClipPosition.fromTop(2, 5))
        .withMainJet(JetBore.ofMillimetres(main));
  }

  private static Setting clip(int groove) {
    return ALL_ROUND.withClip(ClipPosition.fromTop(groove, 5));
  }

  private static Setting turns(double turns) {
    return ALL_ROUND.withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(turns)));
  }

  private static Setting onScrew(ScrewKind kind, double turns) {
    return Setting.builder()
        .carburettor(TwoHundred.carburettor(kind, 2.5))
        .intake(ALL_ROUND.intake())
        .pilotJet(ALL_ROUND.pilotJet())
        .screw(new Screw(kind, ScrewTurns.of(turns)))
        .cutaway(ALL_ROUND.cutaway())
        .idleLift(ALL_ROUND.idleLift())
        .needleJet(ALL_ROUND.needleJet())
        .needle(ALL_ROUND.needle())
        .clip(ALL_ROUND.clip())
        .mainJet(ALL_ROUND.mainJet())
        .build();
  }
}
