package dev.jetting.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CalibrationTest {

  private static final Spreads SPREADS =
      Spreads.builder()
          .pilot(0.06)
          .needle(0.06)
          .main(0.03)
          .air(0.04)
          .residual(0.03)
          .residualLength(0.25)
          .build();

  private static final Setup SETUP = ReferenceSetup.setup();

  @Test
  void untried_isTheModelWithItsSpread() {
    MixtureModel model = MixtureModel.of(SETUP);
    ThrottleOpening half = ThrottleOpening.ofEighths(4);
    EngineSpeed speed = model.at(half).speed();
    NormalCases lnLambda = Calibration.untried(SPREADS).lnLambda(model, half, speed);
    double modelled = StrictMath.log(model.at(half).lambda().value());
    assertThat(lnLambda.middle().mean()).isCloseTo(modelled, within(1e-12));
    // ln λ bends a little with the air: by half its second derivative times the variance.
    double bend = bend(model, half, speed) / 2 * SPREADS.air() * SPREADS.air();
    assertThat(lnLambda.mean()).isCloseTo(modelled + bend, within(1e-5));
    assertThat(bend).isLessThan(0.01 * SPREADS.air());
    // By hand: the root of the sum of squares of spread times sensitivity, and the residual's.
    double variance = 0.03 * 0.03;
    for (ErrorSource source : ErrorSource.values()) {
      double part = model.sensitivities(half, speed).to(source) * SPREADS.of(source);
      variance += part * part;
    }
    assertThat(lnLambda.deviation()).isCloseTo(Math.sqrt(variance), within(1e-4));
  }

  /** Second derivative of ln λ in the air, by a difference over the spread. */
  private static double bend(MixtureModel model, ThrottleOpening throttle, EngineSpeed speed) {
    double z = SPREADS.air();
    double more = lnOf(model.differing(ErrorSource.AIR, z), throttle, speed);
    double less = lnOf(model.differing(ErrorSource.AIR, -z), throttle, speed);
    return (more + less - 2 * lnOf(model, throttle, speed)) / (z * z);
  }

  private static double lnOf(MixtureModel model, ThrottleOpening throttle, EngineSpeed speed) {
    return StrictMath.log(model.at(throttle, speed).lambda().value());
  }

  /** In the case that the air is as the case says, the model with that air is expected. */
  @Test
  void untried_inEachCaseOfTheAir_isTheModelWithThatAir() {
    MixtureModel model = MixtureModel.of(SETUP);
    ThrottleOpening eighth = ThrottleOpening.ofEighths(1);
    EngineSpeed speed = model.at(eighth).speed();
    Calibration untried = Calibration.untried(SPREADS);
    NormalCases lnLambda = untried.lnLambda(model, eighth, speed);
    for (int c = 0; c < 9; c++) {
      double z = untried.airCases().get(c).z();
      double there = model.differing(ErrorSource.AIR, z).at(eighth, speed).lambda().value();
      assertThat(lnLambda.cases().get(c).value().mean())
          .isCloseTo(StrictMath.log(there), within(1e-12));
    }
  }

  @Test
  void airCases_haveTheMomentsOfTheNormalDistribution() {
    List<AirCase> cases = Calibration.untried(SPREADS).airCases();
    // Of a standard normal number by its powers from 0, from any table; what lies beyond three
    // and three eighths deviations is missing from the fourth.
    double[] moments = {1, 0, 1, 0, 3, 0};
    double[] missing = {1e-12, 1e-12, 1e-12, 1e-12, 0.1, 1e-12};
    for (int power = 0; power < moments.length; power++) {
      double sum = 0;
      for (AirCase each : cases) {
        sum += each.probability() * Math.pow(each.z() / 0.04, power);
      }
      assertThat(sum)
          .as("power %s", power)
          .isCloseTo(moments[power], within(missing[power]))
          .isLessThanOrEqualTo(moments[power] + 1e-12);
    }
  }

  /** Exact readings that leave the air nearly certain must not lose the digits of the rest. */
  @Test
  void lnLambda_airAllButKnown_keepsAnOrderlySpread() {
    Spreads wide =
        Spreads.builder()
            .pilot(0.06)
            .needle(0.06)
            .main(0.03)
            .air(1)
            .residual(0)
            .residualLength(0.25)
            .build();
    MixtureModel model = MixtureModel.of(SETUP);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 90; i++) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(i % 9);
      MixturePoint point = model.at(throttle);
      readings.add(Reading.measured(SETUP, throttle, point.speed(), point.lambda(), 0.001));
    }
    CalibratedModel calibrated = Calibration.untried(wide).with(readings).on(model);
    for (int eighths = 0; eighths <= 8; eighths++) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      NormalCases found = calibrated.lnLambda(throttle, model.at(throttle).speed());
      // Ten readings of 0.001 at each opening, and those at the others.
      assertThat(found.deviation()).as("at %s", throttle).isBetween(1e-6, 0.001);
      assertThat(found.cases()).allSatisfy(c -> assertThat(c.value().deviation()).isPositive());
    }
  }

  /** Split by the air and put together again, the cases have the moments of the whole process. */
  @Test
  void lnLambda_overTheCases_isThatOfTheWholeProcess() {
    Random random = new Random(19);
    List<Reading> readings = readings(drawn(random), random, settings(), 0.01);
    Calibration calibration = Calibration.untried(SPREADS).with(readings);
    MixtureModel model = MixtureModel.of(SETUP);
    ThrottleOpening half = ThrottleOpening.ofEighths(4);
    EngineSpeed speed = model.at(half).speed();
    GaussianProcess<Place> whole =
        GaussianProcess.prior(Place.kernel(SPREADS))
            .observing(
                readings.stream()
                    .map(
                        reading -> {
                          MixtureModel read = MixtureModel.of(reading.setup());
                          double modelled =
                              read.at(reading.throttle(), reading.speed()).lambda().value();
                          return new PointObservation<>(
                              Place.of(read, reading.throttle(), reading.speed(), SPREADS),
                              StrictMath.log(reading.from().value() / modelled),
                              0.01 * 0.01);
                        })
                    .toList());
    Normal together = whole.at(Place.of(model, half, speed, SPREADS));
    NormalCases apart = calibration.lnLambda(model, half, speed);
    double modelled = StrictMath.log(model.at(half).lambda().value());
    // The process takes ln λ to be linear in the air; it bends by no more than over the prior.
    double bend = bend(model, half, speed) / 2 * SPREADS.air() * SPREADS.air();
    assertThat(apart.mean()).isCloseTo(modelled + together.mean(), within(Math.abs(bend)));
    assertThat(apart.deviation()).isCloseTo(together.deviation(), within(2e-4));
    assertThat(together.deviation()).isLessThan(0.01);
  }

  /** Engines drawn at random from the spreads: nine bands in ten hold the truth. */
  @Test
  void difference_engineDrawnAtRandom_isWithinItsBandAsOftenAsItSays() {
    Random random = new Random(20261125);
    int inside = 0;
    int all = 0;
    for (int engine = 0; engine < 60; engine++) {
      Map<ErrorSource, Double> truth = drawn(random);
      Calibration calibration =
          Calibration.untried(SPREADS).with(readings(truth, random, settings(), 0.02));
      for (ErrorSource source : ErrorSource.values()) {
        Normal found = calibration.difference(source);
        double off = Math.abs(found.mean() - truth.getOrDefault(source, 0.0));
        inside += off < 1.6449 * found.deviation() ? 1 : 0;
        all++;
        assertThat(found.deviation()).isLessThan(SPREADS.of(source));
      }
    }
    // 240 draws at 90 %: four standard errors are 7.7 %.
    assertThat(inside / (double) all).isBetween(0.82, 0.98);
  }

  /** What was learned on one main jet serves for another: the errors belong to the engine. */
  @Test
  void lnLambda_otherJetsThanThoseRead_isFoundFromThem() {
    Random random = new Random(7);
    Map<ErrorSource, Double> truth = drawn(random);
    Calibration calibration =
        Calibration.untried(SPREADS).with(readings(truth, random, settings(), 0.005));
    Setup unseen = SETUP.withSetting(SETUP.setting().withMainJet(JetBore.ofMillimetres(1.36)));
    MixtureModel model = MixtureModel.of(unseen);
    EngineSpeed speed = model.at(ThrottleOpening.FULL).speed();
    NormalCases found = calibration.lnLambda(model, ThrottleOpening.FULL, speed);
    double true1 = lnLambda(model, ThrottleOpening.FULL, truth);
    NormalCases before = Calibration.untried(SPREADS).lnLambda(model, ThrottleOpening.FULL, speed);
    assertThat(Math.abs(found.mean() - true1)).isLessThan(3 * found.deviation());
    assertThat(found.deviation()).isLessThan(before.deviation() / 2);
  }

  @Test
  void with_anyOrderOfReadings_teachesTheSame() {
    Random random = new Random(3);
    List<Reading> readings = new ArrayList<>(readings(drawn(random), random, settings(), 0.02));
    readings.add(band(0.85, 0.95, ThrottleOpening.ofEighths(3)));
    Calibration one = Calibration.untried(SPREADS).with(readings);
    Collections.reverse(readings);
    Calibration two = Calibration.untried(SPREADS).with(readings);
    for (ErrorSource source : ErrorSource.values()) {
      assertThat(two.difference(source).mean())
          .isCloseTo(one.difference(source).mean(), within(1e-8));
      assertThat(two.difference(source).deviation())
          .isCloseTo(one.difference(source).deviation(), within(1e-8));
    }
  }

  @Test
  void band_leanerThanModelled_movesTheMixtureTowardsLean() {
    ThrottleOpening half = ThrottleOpening.ofEighths(4);
    MixtureModel model = MixtureModel.of(SETUP);
    double modelled = model.at(half).lambda().value();
    Calibration read =
        Calibration.untried(SPREADS).with(List.of(band(modelled * 1.05, modelled * 1.15, half)));
    NormalCases found = read.lnLambda(model, half, model.at(half).speed());
    assertThat(found.mean()).isBetween(StrictMath.log(modelled), StrictMath.log(modelled * 1.15));
  }

  @Test
  void disagreeing_oneWrongReading_isFoundAndNoOther() {
    Random random = new Random(11);
    List<Reading> readings = new ArrayList<>(readings(drawn(random), random, settings(), 0.01));
    Reading right = readings.get(4);
    Reading wrong =
        Reading.measured(
            right.setup(),
            right.throttle(),
            right.speed(),
            Lambda.of(right.from().value() * 1.2),
            0.01);
    readings.set(4, wrong);
    assertThat(Calibration.untried(SPREADS).with(readings).disagreeing(4)).containsExactly(wrong);
  }

  /** e^(−1/2) of it a reach away, and its variance adds up. */
  @Test
  void assuming_aDisturbance_shiftsAndSpreadsLnLambdaWhereItActs() {
    MixtureModel model = MixtureModel.of(SETUP);
    Calibration without = Calibration.untried(SPREADS);
    Calibration with =
        without.assuming(
            Disturbance.builder()
                .at(ThrottleOpening.CLOSED)
                .reach(0.25)
                .mean(0.2)
                .deviation(0.1)
                .build());
    for (int eighths : new int[] {0, 2, 8}) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      EngineSpeed speed = model.at(throttle).speed();
      NormalCases before = without.lnLambda(model, throttle, speed);
      NormalCases after = with.lnLambda(model, throttle, speed);
      double share = Map.of(0, 1.0, 2, 0.60653066, 8, 0.00033546).getOrDefault(eighths, 0.0);
      assertThat(after.mean() - before.mean()).isCloseTo(0.2 * share, within(1e-8));
      assertThat(after.deviation())
          .isCloseTo(Math.hypot(before.deviation(), 0.1 * share), within(1e-8));
    }
  }

  /** A reading leaner by just what the fault does speaks for the fault, one as modelled against. */
  @Test
  void logEvidence_speaksForTheHypothesisThatFits() {
    ThrottleOpening closed = ThrottleOpening.CLOSED;
    MixturePoint point = MixtureModel.of(SETUP).at(closed);
    Disturbance fault =
        Disturbance.builder().at(closed).reach(0.1).mean(0.3).deviation(0.05).build();
    for (double leaner : new double[] {0, 0.3}) {
      Lambda lambda = Lambda.of(point.lambda().value() * StrictMath.exp(leaner));
      Calibration read =
          Calibration.untried(SPREADS)
              .with(List.of(Reading.measured(SETUP, closed, point.speed(), lambda, 0.02)));
      double forIt = read.assuming(fault).logEvidence() - read.logEvidence();
      assertThat(forIt > 0).isEqualTo(leaner > 0);
    }
    assertThat(Calibration.untried(SPREADS).logEvidence()).isZero();
  }

  @Test
  void disturbance_outOfRange_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Disturbance.builder()
                    .at(ThrottleOpening.CLOSED)
                    .reach(0.1)
                    .mean(1.5)
                    .deviation(0.1)
                    .build())
        .withMessageContaining("1.5");
  }

  @Test
  void disagreeing_bandAgainstTheRest_isFoundAsWell() {
    List<Reading> readings =
        new ArrayList<>(readings(drawn(new Random(3)), new Random(4), List.of(SETUP), 0.01));
    double full = readings.get(4).from().value();
    Reading white = band(full * 1.5, 100, ThrottleOpening.FULL);
    readings.add(white);
    assertThat(Calibration.untried(SPREADS).with(readings).disagreeing(3)).containsExactly(white);
  }

  @Test
  void reading_richEndLeanerThanLeanEnd_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> band(0.95, 0.85, ThrottleOpening.FULL))
        .withMessageContaining("rich end")
        .withMessageContaining("0.85");
  }

  private static Map<ErrorSource, Double> drawn(Random random) {
    Map<ErrorSource, Double> truth = new EnumMap<>(ErrorSource.class);
    for (ErrorSource source : ErrorSource.values()) {
      truth.put(source, SPREADS.of(source) * random.nextGaussian());
    }
    return truth;
  }

  /** Three settings, as a tuner tries them one after the other. */
  private static List<Setup> settings() {
    return List.of(
        SETUP.withSetting(SETUP.setting().withMainJet(JetBore.ofMillimetres(1.32))),
        SETUP,
        SETUP.withSetting(SETUP.setting().withClip(ClipPosition.fromTop(3, 5))));
  }

  /** Readings at five openings on each setting, of an engine whose errors are known. */
  private static List<Reading> readings(
      Map<ErrorSource, Double> truth, Random random, List<Setup> setups, double noise) {
    List<Reading> readings = new ArrayList<>();
    for (Setup setup : setups) {
      MixtureModel model = MixtureModel.of(setup);
      for (int eighths : new int[] {0, 1, 2, 4, 8}) {
        ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
        double seen = lnLambda(model, throttle, truth) + noise * random.nextGaussian();
        readings.add(
            Reading.measured(
                setup,
                throttle,
                model.at(throttle).speed(),
                Lambda.of(StrictMath.exp(seen)),
                noise));
      }
    }
    return readings;
  }

  private static double lnLambda(
      MixtureModel model, ThrottleOpening throttle, Map<ErrorSource, Double> truth) {
    MixtureModel engine = model;
    for (Map.Entry<ErrorSource, Double> difference : truth.entrySet()) {
      engine = engine.differing(difference.getKey(), difference.getValue());
    }
    return StrictMath.log(engine.at(throttle).lambda().value());
  }

  private static Reading band(double from, double to, ThrottleOpening throttle) {
    return Reading.builder()
        .setup(SETUP)
        .throttle(throttle)
        .speed(MixtureModel.of(SETUP).at(throttle).speed())
        .from(Lambda.of(from))
        .to(Lambda.of(to))
        .deviation(0.07)
        .build();
  }
}
