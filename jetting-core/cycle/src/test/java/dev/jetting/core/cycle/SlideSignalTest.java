package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.flow.IsentropicFlow;
import dev.jetting.core.flow.Pulsation;
import dev.jetting.units.Area;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the fit is made from, against the simulation; and the fit against engines made anew. */
class SlideSignalTest {

  /** The same equations, integrated by other means. */
  @ParameterizedTest
  @EnumSource(SlideSignal.Kind.class)
  void signal_isThatOfTheSimulation(SlideSignal.Kind kind) {
    double rpm = 6000;
    double throttle = 0.5;
    double area = SlideState.of(Bench.setup(), throttle, CycleCoefficients.assumed()).area();
    double byArea = Math.sqrt(287.05287 * 288.15) / (123e-6 * rpm / 60);
    double port = Math.log(0.7 * 520e-6 * byArea);
    double opens = kind == SlideSignal.Kind.PISTON ? 75 : 130;
    double closes = kind == SlideSignal.Kind.PISTON ? 75 : 60;
    SlideSignal signal =
        SlideSignal.of(SignalSamples.group(kind, port, opens, closes, Math.log(area * byArea), 0));

    Inlet inlet =
        switch (kind) {
          case PISTON -> Bench.PISTON_PORT;
          case ROTARY -> Bench.ROTARY;
          case REED -> Bench.REED;
        };
    Crankcase crankcase =
        Crankcase.builder()
            .primaryCompression(1.4)
            .inlet(inlet)
            .transfer(new Transfer(120, Bench.area(500), Pressure.ofPascals(0)))
            .tract(
                new IntakeTract(
                    Length.ofMillimetres(70),
                    Area.ofSquareMillimetres(450),
                    IntakeTract.Inertia.LEFT_OUT))
            .build();
    CyclePoint point =
        CrankcaseCycle.of(Bench.setup(), crankcase)
            .at(ThrottleOpening.ofShare(throttle), EngineSpeed.ofRpm(rpm));

    assertThat(signal.air()).isCloseTo(point.deliveryRatio(), within(1e-4));
  }

  /** Engines of other seeds than the fit's. */
  @ParameterizedTest
  @EnumSource(SlideSignal.Kind.class)
  void fit_isNearEnginesMadeAnew(SlideSignal.Kind kind) {
    List<Double> errors = new ArrayList<>();
    for (int index = 1; index <= 3; index++) {
      List<SignalSamples.Sample> engine = SignalSamples.engine(kind, index, 9000);
      double delivery = engine.get(engine.size() - 1).signal().air();
      for (SignalSamples.Sample sample : engine) {
        SlideSignal signal = sample.signal();
        double root = signal.rootDrop() + Math.sqrt(SignalFit.BACK) * signal.rootRise();
        double mean = signal.drop() + SignalFit.BACK * signal.rise();
        if (delivery > 0.35 && signal.air() > 0.05 && sample.gap() > -2.5 && sample.gap() < 3) {
          Pulsation.Wave wave =
              pulsation(kind, sample)
                  .at(Math.exp(sample.gap()), Math.exp(sample.speed()), delivery);
          double fitted = wave.openShare() * Math.sqrt(wave.drop());
          // Air by the root of the suction is what λ goes with.
          double air = wave.openShare() * psi(wave.drop()) * wave.passed();
          double own = signal.air() / Math.exp(sample.gap());
          errors.add(Math.abs(Math.log(air / own * root / fitted)));
          assertThat(wave.openShare() * wave.drop() / mean).isBetween(0.85, 1.18);
        }
      }
    }
    errors.sort(null);
    assertThat(errors).hasSizeGreaterThan(6);
    assertThat(errors.get(errors.size() / 2)).isLessThan(0.015);
    assertThat(errors.get(errors.size() - 1)).isLessThan(0.08);
  }

  @Test
  void inputsBeyondTheFit_keepTheirLimits() {
    Pulsation pulsation = Pulsation.pistonPort(150);
    Pulsation.Wave open = pulsation.at(1e4, 10, 0.7);
    assertThat(pulsation.at(2e4, 10, 0.7).drop() / open.drop()).isCloseTo(0.25, within(1e-12));
    Pulsation.Wave shut = pulsation.at(1e-4, 10, 0.7);
    assertThat(pulsation.at(1e-5, 10, 0.7)).isEqualTo(shut);
  }

  private static double psi(double drop) {
    return IsentropicFlow.psiOfDrop(drop, 1.4);
  }

  private static Pulsation pulsation(SlideSignal.Kind kind, SignalSamples.Sample sample) {
    return switch (kind) {
      case PISTON -> Pulsation.pistonPort(2 * sample.opens());
      case ROTARY -> Pulsation.rotaryValve(sample.opens(), sample.closes());
      case REED -> Pulsation.reedValve();
    };
  }
}
