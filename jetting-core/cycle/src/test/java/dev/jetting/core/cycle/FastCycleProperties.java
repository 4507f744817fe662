package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** What the fast cycle promises of parts: the pilot jet alone, see CYCLE.md. */
class FastCycleProperties {

  private static final double ROUNDING = 1e-12;
  private static final Map<String, Setup> SETUPS = new ConcurrentHashMap<>();

  @Property(tries = 200)
  void biggerPilotJet_isNeverLeaner(
      @ForAll SlideSignal.Kind kind,
      @ForAll @LongRange(min = 1, max = 5) long seed,
      @ForAll @DoubleRange(min = 0, max = 1) double throttle,
      @ForAll @DoubleRange(min = 1000, max = 10_000) double rpm,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double more) {
    Setup setup = setup(kind, seed);
    Inlet inlet = inlet(kind);
    Setting s = setup.setting();
    Setup pilot = setup.withSetting(s.withPilotJet(bigger(s.pilotJet(), more)));

    double lambda = lambda(setup, inlet, throttle, rpm);

    assertThat(lambda(pilot, inlet, throttle, rpm)).isLessThanOrEqualTo(lambda * (1 + ROUNDING));
  }

  private static JetBore bigger(JetBore jet, double more) {
    return JetBore.ofMillimetres(jet.millimetres() * (1 + more));
  }

  private static Setup setup(SlideSignal.Kind kind, long seed) {
    return SETUPS.computeIfAbsent(kind + " " + seed, key -> Drawn.draw(kind, seed, false).setup());
  }

  private static Inlet inlet(SlideSignal.Kind kind) {
    return switch (kind) {
      case PISTON -> Bench.PISTON_PORT;
      case ROTARY -> Bench.ROTARY;
      case REED -> Bench.REED;
    };
  }

  private static double lambda(Setup setup, Inlet inlet, double throttle, double rpm) {
    Lambda lambda =
        FastCycle.of(setup, inlet)
            .at(ThrottleOpening.ofShare(throttle), EngineSpeed.ofRpm(rpm))
            .lambda();
    return lambda.value();
  }
}
