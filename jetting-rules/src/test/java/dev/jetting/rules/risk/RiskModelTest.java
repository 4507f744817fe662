package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RiskModelTest {

  private static final MixtureModel MODEL =
      MixtureModel.of(TwoHundred.sheet(STANDARD, ALL_ROUND).setup());

  private static final ModelUncertainty ASSUMED = ModelUncertainty.assumed();

  /**
   * The formula against engines and parts drawn at random from the same spreads, each worked out in
   * full; a quarter of a percentage point is left for what is linear in the formula.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4, 8})
  void leanRisk_agreesWithEnginesDrawnAtRandom(int eighths) {
    agrees(RiskModel.assumed(), eighths);
  }

  /** The same with jets that are less well known, such as those numbered by their flow. */
  @ParameterizedTest
  @ValueSource(ints = {0, 8})
  void leanRisk_ofJetsLessWellKnown_agreesWithEnginesDrawnAtRandom(int eighths) {
    agrees(RiskModel.assumed().widerByPilotJet(0.015).widerByMainJet(0.03), eighths);
  }

  private static void agrees(RiskModel riskModel, int eighths) {
    ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
    RiskPoint point = point(riskModel, throttle);
    Random random = new Random(20261125);
    int engines = 100_000;
    int lean = 0;
    for (int i = 0; i < engines; i++) {
      MixtureModel engine = MixtureModel.of(withPartsAsMade(MODEL.setup(), riskModel, random));
      for (ErrorSource source : ErrorSource.values()) {
        engine = engine.differing(source, ASSUMED.spreads().of(source) * random.nextGaussian());
      }
      double lnLambda =
          engine.fuelSensitivities(throttle, point.mixture().speed()).lnLambda()
              + ASSUMED.residual().value() * random.nextGaussian();
      lean += lnLambda > StrictMath.log(point.leanLimit().value()) ? 1 : 0;
    }
    double risk = point.leanRisk().value();
    double standardError = Math.sqrt(risk * (1 - risk) / engines);
    assertThat(lean / (double) engines).isCloseTo(risk, within(4 * standardError + 0.0025));
  }

  /** Each jet and needle off its size by its tolerance. */
  private static Setup withPartsAsMade(Setup setup, RiskModel riskModel, Random random) {
    ModelUncertainty made = riskModel.uncertainty();
    Setting s = setup.setting();
    Needle n = s.needle();
    double cylinder = n.cylinder().millimetres() + off(made, MeteringPart.NEEDLE_DIAMETER, random);
    double needleJet =
        s.needleJet().bore().millimetres() + off(made, MeteringPart.NEEDLE_JET, random);
    double pilotJet = s.pilotJet().millimetres() + off(made, MeteringPart.PILOT_JET, random);
    double mainJet = s.mainJet().millimetres() + off(made, MeteringPart.MAIN_JET, random);
    return setup.withSetting(
        s.withNeedle(
                Needle.builder()
                    .id(n.id())
                    .cylinder(Diameter.ofMillimetres(cylinder))
                    .tapers(n.tapers())
                    .grooves(n.grooves())
                    .groovePitch(n.groovePitch())
                    .tip(n.tip())
                    .build(),
                s.clip())
            .withNeedleJet(new NeedleJet(Diameter.ofMillimetres(needleJet), s.needleJet().neck()))
            .withPilotJet(JetBore.ofMillimetres(pilotJet))
            .withMainJet(JetBore.ofMillimetres(mainJet)));
  }

  private static double off(ModelUncertainty made, MeteringPart part, Random random) {
    return made.tolerance(part) * random.nextGaussian();
  }

  /** 5, 12 and 13. */
  @Test
  void widerByJets_addsByTheRootOfTheSumOfSquares() {
    ModelUncertainty wider = ASSUMED.widerByMainJet(0.012);
    assertThat(wider.mainJetTolerance().value()).isCloseTo(0.013, within(1e-15));
    assertThat(wider.mainJetTolerance().origin()).isEqualTo(Coefficient.Origin.CALCULATED);
    assertThat(wider.pilotJetTolerance()).isEqualTo(ASSUMED.pilotJetTolerance());
    assertThat(ASSUMED.widerByMainJet(0)).isSameAs(ASSUMED);
  }

  @Test
  void widerByJets_ofNoUncertainty_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ASSUMED.widerByPilotJet(-0.1))
        .withMessage("uncertainty of the pilot jet's bore -0.1 mm: allowed 0 to 9 mm");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ASSUMED.widerByMainJet(Double.NaN))
        .withMessage("uncertainty of the main jet's bore NaN mm: allowed 0 to 9 mm");
  }

  /** A known engine, on which nothing is uncertain, is lean or it is not. */
  @Test
  void leanRisk_withoutSpread_isZeroOrOne() {
    Coefficient none = Coefficient.assumed(0, "1", "known");
    Coefficient length = Coefficient.assumed(0.25, "1", "plays no part");
    Coefficient exact = Coefficient.assumed(0, "mm", "known");
    ModelUncertainty known =
        ModelUncertainty.builder()
            .pilot(none)
            .needle(none)
            .main(none)
            .air(none)
            .residual(none)
            .residualLength(length)
            .pilotJetTolerance(exact)
            .mainJetTolerance(exact)
            .needleJetTolerance(exact)
            .needleTolerance(exact)
            .guessed(Set.of())
            .build();
    RiskModel strict = limits(1.0001, known);
    RiskModel lax = limits(2.9, known);
    ThrottleOpening eighth = ThrottleOpening.ofEighths(1);
    assertThat(point(lax, eighth).leanRisk()).isEqualTo(Probability.of(0));
    assertThat(point(strict, eighth).spread()).isZero();
    assertThat(point(strict, ThrottleOpening.ofEighths(7)).leanRisk().value()).isIn(0.0, 1.0);
  }

  /**
   * One standard deviation above the limit: 15.866 %, from any table of the normal distribution;
   * the air known, so that ln λ is normal.
   */
  @Test
  void leanRisk_oneDeviationBelowTheLimit_isThatOfTheTable() {
    ModelUncertainty airKnown = withAir(0);
    RiskPoint point = point(limits(1.1, airKnown), ThrottleOpening.FULL);
    double need = STANDARD.need().at(ThrottleOpening.FULL).value();
    double margin = point.lambda().value() * StrictMath.exp(point.spread()) / need;
    assertThat(point(limits(margin, airKnown), ThrottleOpening.FULL).leanRisk().value())
        .isCloseTo(0.158655, within(1e-6));
  }

  @Test
  void band_holdsNinetyPercent() {
    RiskPoint point = point(RiskModel.assumed(), ThrottleOpening.ofEighths(3));
    double up = StrictMath.log(point.leanEnd() / point.lambda().value());
    double down = StrictMath.log(point.lambda().value() / point.richEnd());
    // 1.644854 is the 95 % quantile of the normal distribution, from any table.
    assertThat(up).isCloseTo(1.644854 * point.spread(), within(1e-6));
    assertThat(down).isCloseTo(up, within(1e-12));
  }

  @Test
  void inCharge_movesFromPilotToMain() {
    assertThat(
            List.of(0, 2, 8).stream()
                .map(eighths -> point(RiskModel.assumed(), ThrottleOpening.ofEighths(eighths)))
                .map(p -> p.inCharge().name()))
        .containsExactly("PILOT", "NEEDLE", "MAIN");
  }

  @Test
  void uncertainty_outOfRange_isRefusedAndNamed() {
    Coefficient wild = Coefficient.assumed(1.5, "1", "a guess");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                ModelUncertainty.builder()
                    .pilot(wild)
                    .needle(ASSUMED.needle())
                    .main(ASSUMED.main())
                    .air(ASSUMED.air())
                    .residual(ASSUMED.residual())
                    .residualLength(ASSUMED.residualLength())
                    .pilotJetTolerance(ASSUMED.pilotJetTolerance())
                    .mainJetTolerance(ASSUMED.mainJetTolerance())
                    .needleJetTolerance(ASSUMED.needleJetTolerance())
                    .needleTolerance(ASSUMED.needleTolerance())
                    .guessed(Set.of())
                    .build())
        .withMessageContaining("spread of the pilot circuit")
        .withMessageContaining("1.5")
        .withMessageContaining("0 to 1");
  }

  @Test
  void tolerance_isOfPartsThatAreMade_notOfWhatTheRiderSets() {
    assertThat(ASSUMED.tolerance(MeteringPart.SCREW)).isZero();
    assertThat(ASSUMED.tolerance(MeteringPart.MAIN_JET)).isPositive();
  }

  private static ModelUncertainty withAir(double spread) {
    return ModelUncertainty.builder()
        .pilot(ASSUMED.pilot())
        .needle(ASSUMED.needle())
        .main(ASSUMED.main())
        .air(Coefficient.assumed(spread, "1", "for the test"))
        .residual(ASSUMED.residual())
        .residualLength(ASSUMED.residualLength())
        .pilotJetTolerance(ASSUMED.pilotJetTolerance())
        .mainJetTolerance(ASSUMED.mainJetTolerance())
        .needleJetTolerance(ASSUMED.needleJetTolerance())
        .needleTolerance(ASSUMED.needleTolerance())
        .guessed(Set.of())
        .build();
  }

  private static RiskModel limits(double leanMargin, ModelUncertainty uncertainty) {
    return new RiskModel(
        MixtureLimits.margins()
            .lean(Coefficient.assumed(leanMargin, "1", "test"))
            .rich(Coefficient.assumed(0.5, "1", "test"))
            .overrun(Coefficient.assumed(0.6, "1", "test"))
            .build(),
        uncertainty,
        CustomarySteps.assumed());
  }

  private static RiskPoint point(RiskModel model, ThrottleOpening throttle) {
    return model.profile(MODEL, List.of(throttle)).points().get(0);
  }
}
