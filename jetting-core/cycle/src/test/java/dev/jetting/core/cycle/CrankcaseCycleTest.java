package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.cycle.IntakeTract.Inertia;
import dev.jetting.core.flow.IsentropicFlow;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Answers that are known without the simulation, and what a simulation must conserve. */
class CrankcaseCycleTest {

  private static final ThrottleOpening HALF = ThrottleOpening.ofShare(0.5);
  private static final EngineSpeed BRISK = EngineSpeed.ofRpm(5500);

  static Stream<Inlet> inlets() {
    return Stream.of(Bench.PISTON_PORT, Bench.ROTARY, Bench.REED);
  }

  @ParameterizedTest
  @MethodSource("inlets")
  void air_thatIsDrawnIsDelivered(Inlet inlet) {
    CyclePoint point = CrankcaseCycle.of(Bench.setup(), Bench.crankcase(inlet)).at(HALF, BRISK);

    assertThat(point.closure()).isLessThan(1e-6);
    assertThat(point.delivered().gramsPerSecond() / point.air().gramsPerSecond())
        .isCloseTo(1, within(1e-6));
  }

  @Test
  void air_thatIsDrawnIsDelivered_withAColumnThatSwings() {
    Crankcase crankcase = Bench.crankcase(Bench.PISTON_PORT, Bench.tract(200, Inertia.COUNTED));

    CyclePoint point = CrankcaseCycle.of(Bench.setup(), crankcase).at(HALF, BRISK);

    assertThat(point.closure()).isLessThan(1e-6);
    assertThat(point.delivered().gramsPerSecond() / point.air().gramsPerSecond())
        .isCloseTo(1, within(1e-6));
  }

  /**
   * Turned slowly, the crankcase is at ambient pressure while a port is open, and its gas as warm
   * as the air. With the valve opening where the transfer ports close, what stays is the volume at
   * the valve's closing less that at the transfer's: calculated from the slider crank. A port that
   * opens evenly is too narrow for a moment over an angle that goes with the speed to 2/3, so two
   * speeds give the limit.
   */
  @Test
  void slowEngine_drawsByGeometry() {
    Crankcase crankcase =
        Bench.crankcase(
            new Inlet.RotaryValve(120, 60, 5, Bench.area(460)), Bench.tract(300, Inertia.LEFT_OUT));
    Kinematics kinematics = new Kinematics(crankcase);
    double expected =
        kinematics.way(StrictMath.toRadians(240)) - kinematics.way(StrictMath.toRadians(60));

    double slow = deliveryRatio(crankcase, 800);
    double slower = deliveryRatio(crankcase, 400);
    double growth = StrictMath.pow(2, 2 / 3.0);
    double limit = (growth * slower - slow) / (growth - 1);

    assertThat(limit).isCloseTo(expected, within(0.01));
    assertThat(slow).isGreaterThan(expected + 0.02);
  }

  private static double deliveryRatio(Crankcase crankcase, double rpm) {
    CycleCoefficients coarse =
        CycleCoefficients.assumed()
            .withSmoothing(pascals(100))
            .withTolerance(Coefficient.assumed(1e-5, "1", "the limit needs no more"));
    return CrankcaseCycle.of(Bench.setup(), crankcase)
        .with(coarse)
        .at(ThrottleOpening.FULL, EngineSpeed.ofRpm(rpm))
        .deliveryRatio();
  }

  /**
   * Behind an endless plenum the stream is steady, and the carburettor is that of the textbook: the
   * drop at which the slide passes the air, and the fuel under it. The error falls with the square
   * of the volume, for the swing does, and fuel answers to its square.
   */
  @Test
  void endlessPlenum_isTheSteadyCarburettor() {
    double small = plenumError(8_000);
    double large = plenumError(16_000);

    assertThat(small / large).isCloseTo(4, within(0.3));
    // The error that goes with the square of the volume taken off: none is left.
    assertThat((4 * large - small) / 3).isCloseTo(0, within(1e-3));
  }

  /** ln of the main fuel by that of the steady carburettor at the same air. */
  private static double plenumError(double millimetres) {
    CyclePoint point =
        CrankcaseCycle.of(
                Bench.setup(),
                Bench.crankcase(Bench.PISTON_PORT, Bench.tract(millimetres, Inertia.LEFT_OUT)))
            .at(HALF, BRISK);
    SlideState slide = SlideState.of(Bench.setup(), 0.5, CycleCoefficients.assumed());
    double passed =
        point.air().kilogramsPerSecond() * Math.sqrt(287.05287 * 288.15) / (slide.area() * 101_325);
    double low = 0;
    double high = 0.4;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean less = IsentropicFlow.psiOfDrop(middle, IsentropicFlow.GAMMA_AIR) < passed;
      low = less ? middle : low;
      high = less ? high : middle;
    }
    double textbook = slide.fuel().density() * slide.fuel().settled(slide.suction(low * 101_325));
    return StrictMath.log(point.mainFuel().kilogramsPerSecond() / textbook);
  }

  @Test
  void fuelWithoutInertia_followsTheSuctionAtOnce() {
    CycleCoefficients none =
        CycleCoefficients.assumed().withFuelColumn(Coefficient.assumed(0, "mm", "none"));
    CyclePoint point =
        CrankcaseCycle.of(Bench.setup(), Bench.crankcase(Bench.REED)).with(none).at(HALF, BRISK);
    SlideState slide = SlideState.of(Bench.setup(), 0.5, none);

    double mean = mean(point, suction -> slide.fuel().settled(suction), slide);

    assertThat(point.mainFuel().gramsPerSecond())
        .isCloseTo(mean * slide.fuel().density() * 1e3, within(0.002 * mean * 740e3));
  }

  /** The longer the column, the nearer its steady flow is to that under the mean suction. */
  @Test
  void fuelWithMuchInertia_followsTheMeanSuction() {
    SlideState slide = SlideState.of(Bench.setup(), 0.5, CycleCoefficients.assumed());
    double shorter = inertialError(slide, 250);
    double longer = inertialError(slide, 1000);

    assertThat(longer).isLessThan(0.01).isLessThan(shorter / 2);
  }

  private static double inertialError(SlideState slide, double millimetres) {
    CycleCoefficients drawnOut =
        CycleCoefficients.assumed()
            .withFuelColumn(Coefficient.assumed(millimetres, "mm", "to see the limit"));
    CyclePoint point =
        CrankcaseCycle.of(Bench.setup(), Bench.crankcase(Bench.REED))
            .with(drawnOut)
            .at(HALF, BRISK);
    double limit = slide.fuel().settled(mean(point, s -> s, slide)) * slide.fuel().density();
    return Math.abs(StrictMath.log(point.mainFuel().gramsPerSecond() / (limit * 1e3)));
  }

  private interface BySuction {
    double at(double suction);
  }

  /** Mean over the turn by the trapezoidal rule on the trace. */
  private static double mean(CyclePoint point, BySuction of, SlideState slide) {
    double sum = 0;
    for (int i = 0; i < point.trace().size(); i++) {
      CyclePoint.Sample here = point.trace().get(i);
      boolean last = i == point.trace().size() - 1;
      CyclePoint.Sample next = point.trace().get(last ? 0 : i + 1);
      double width = (last ? 360 + next.degrees() : next.degrees()) - here.degrees();
      sum += width / 2 * (value(here, of, slide) + value(next, of, slide));
    }
    return sum / 360;
  }

  private static double value(CyclePoint.Sample sample, BySuction of, SlideState slide) {
    return of.at(slide.suction(101_325 - sample.behindSlide().pascals()));
  }

  @Test
  void smoothing_matters_littleAtFivePascals() {
    double fine = lambda(CycleCoefficients.assumed().withSmoothing(pascals(0.5)));
    double assumed = lambda(CycleCoefficients.assumed());
    double coarse = lambda(CycleCoefficients.assumed().withSmoothing(pascals(200)));

    assertThat(assumed).isCloseTo(fine, within(1e-3 * fine));
    assertThat(Math.abs(coarse - fine)).isGreaterThan(Math.abs(assumed - fine));
  }

  @Test
  void tolerance_ofTheIntegrator_leavesTheMixtureAsItIs() {
    double tight =
        lambda(
            CycleCoefficients.assumed()
                .withTolerance(Coefficient.assumed(1e-10, "1", "to see the difference")));

    assertThat(lambda(CycleCoefficients.assumed())).isCloseTo(tight, within(1e-6));
  }

  private static double lambda(CycleCoefficients coefficients) {
    return CrankcaseCycle.of(Bench.setup(), Bench.crankcase(Bench.PISTON_PORT))
        .with(coefficients)
        .at(HALF, EngineSpeed.ofRpm(3000))
        .lambda()
        .value();
  }

  private static Coefficient pascals(double value) {
    return Coefficient.assumed(value, "Pa", "to see the difference");
  }

  @Test
  void speed_belowAHundred_isRefused() {
    CrankcaseCycle cycle = CrankcaseCycle.of(Bench.setup(), Bench.crankcase(Bench.REED));

    assertThatThrownBy(() -> cycle.at(HALF, EngineSpeed.ofRpm(99)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("99 rpm")
        .hasMessageContaining("at least 100 rpm");
  }
}
