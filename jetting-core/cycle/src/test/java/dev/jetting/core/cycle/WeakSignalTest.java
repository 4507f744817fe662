package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.flow.Pulsation;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The mean suction at full throttle and a third of the peak speed, by which jetting-rules judges
 * whether a carburettor is too big: the model's against the simulation's.
 */
class WeakSignalTest {

  private static final EngineSpeed LOW = EngineSpeed.ofRpm(Bench.PEAK / 3);

  @ParameterizedTest
  @EnumSource(SlideSignal.Kind.class)
  void meanSuction_atFullThrottleAndLowSpeed_isThatOfTheSimulation(SlideSignal.Kind kind) {
    double opens = kind == SlideSignal.Kind.ROTARY ? 130 : 75;
    double closes = kind == SlideSignal.Kind.ROTARY ? 60 : 75;
    Inlet inlet =
        switch (kind) {
          case PISTON -> Bench.PISTON_PORT;
          case ROTARY -> Bench.ROTARY;
          case REED -> Bench.REED;
        };
    double lnPort = Math.log(Pulsation.PORT_AT_PEAK * Bench.PEAK / LOW.rpm());
    double delivery =
        SlideSignal.of(SignalSamples.group(kind, lnPort, opens, closes, 3.7, 0)).air();
    Setup setup =
        Bench.setup(
            RpmCurve.of(RpmCurve.Point.of(LOW.rpm(), delivery)),
            Bench.induction(kind, opens, closes));

    CyclePoint cycle =
        CrankcaseCycle.of(setup, Bench.crankcase(inlet)).at(ThrottleOpening.FULL, LOW);
    double modelled =
        MixtureModel.of(setup).at(ThrottleOpening.FULL, LOW).meanNeedleJetSuction().pascals();
    double simulated = meanSuction(SlideState.of(setup, 1, CycleCoefficients.assumed()), cycle);

    assertThat(modelled / simulated).isBetween(0.95, 1.05);
  }

  /** By the trapezoidal rule on the trace. */
  private static double meanSuction(SlideState slide, CyclePoint point) {
    double sum = 0;
    double last = 360 + point.trace().get(0).degrees();
    for (int i = point.trace().size() - 1; i >= 0; i--) {
      CyclePoint.Sample here = point.trace().get(i);
      CyclePoint.Sample next = point.trace().get((i + 1) % point.trace().size());
      sum += (last - here.degrees()) / 2 * (suction(slide, here) + suction(slide, next));
      last = here.degrees();
    }
    return sum / 360;
  }

  private static double suction(SlideState slide, CyclePoint.Sample sample) {
    return slide.suction(101_325 - sample.behindSlide().pascals());
  }
}
