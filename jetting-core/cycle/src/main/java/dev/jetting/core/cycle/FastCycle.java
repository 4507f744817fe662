package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.IsentropicFlow;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.MassFlow;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * The mixture that the cycle of a crankcase gives, by closed forms fitted to it: some ten
 * microseconds a point where {@link CrankcaseCycle} takes a tenth of a second. CYCLE.md of the
 * module says how far the two agree.
 *
 * <p>Given are the inlet, and the setup's delivery ratio, which is meant with nothing before the
 * inlet. Everything else inside the crankcase is taken to be usual: primary compression 1.4,
 * transfer ports open for 120°, a tract of a quarter of the displacement without inertia. The
 * setup's own induction plays no part.
 *
 * <p>Immutable and safe for any number of threads. Not part of the lean risk, which uses {@link
 * dev.jetting.core.mixture.MixtureModel}; not below 3000 rpm or a sixteenth of the throttle, where
 * it was not held against the cycle; not for reeds of another stiffness than the usual.
 */
public final class FastCycle {

  private static final double REED_BY_PORT = 560.0 / 520;
  private static final double VALVE_BY_PORT = 460.0 / 520;

  private final Setup setup;
  private final Inlet inlet;
  private final Pulsation pulsation;

  private FastCycle(Setup setup, Inlet inlet) {
    this.setup = Objects.requireNonNull(setup, "setup");
    this.inlet = Objects.requireNonNull(inlet, "inlet");
    pulsation = Pulsation.of(inlet);
  }

  /**
   * Returns the fast cycle of a setup.
   *
   * @param setup engine, setting, air and fuel
   * @param inlet what opens the crankcase to the carburettor
   * @return the fast cycle
   */
  public static FastCycle of(Setup setup, Inlet inlet) {
    return new FastCycle(setup, inlet);
  }

  /**
   * Computes the mixture at a throttle opening and an engine speed.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, more than zero
   * @return the means over a turn
   * @throws IllegalArgumentException if the speed is zero
   */
  public FastPoint at(ThrottleOpening throttle, EngineSpeed speed) {
    Checks.that(speed.rpm() > 0, "engine speed", speed, "more than 0 rpm");
    SlideState slide = SlideState.of(setup, throttle.share(), CycleCoefficients.assumed());
    double turns = speed.rpm() / 60;
    double ambient = setup.air().pressure().pascals();
    double root = Math.sqrt(setup.air().specificGasConstant() * setup.air().temperature().kelvin());
    double byArea = root / (setup.engine().displacement().cubicCentimetres() * 1e-6 * turns);
    Pulsation.Wave wave =
        pulsation.at(
            slide.area() * byArea, usualPort() * byArea, setup.engine().deliveryRatioAt(speed));

    double passed =
        wave.openShare() * IsentropicFlow.psiOfDrop(wave.drop(), IsentropicFlow.GAMMA_AIR);
    double air = slide.area() * ambient / root * passed * wave.passed();
    double main = mainFuel(slide, wave, ambient, turns);
    double pilot = wave.pilotShare() * slide.pilot().fuelFlow(wave.pilotDrop() * ambient);
    return new FastPoint(
        throttle,
        speed,
        grams(air),
        grams(main),
        grams(pilot),
        CrankcaseCycle.lambda(setup, air, main + pilot));
  }

  private static double mainFuel(
      SlideState slide, Pulsation.Wave wave, double ambient, double turns) {
    FuelPath path = slide.fuel();
    double suction = slide.suction(wave.drop() * ambient);
    return path.density()
        * PulsedFlow.flow(
            path.restriction().alpha(),
            path.restriction().beta(),
            wave.openShare(),
            suction - path.headPressure(),
            wave.openShare() * suction - path.headPressure(),
            turns * path.inertance());
  }

  /** Effective area in m² of the piston port that is as wide for its kind as this inlet is. */
  private double usualPort() {
    double usual =
        inlet instanceof Inlet.PistonPort
            ? 1
            : inlet instanceof Inlet.RotaryValve ? VALVE_BY_PORT : REED_BY_PORT;
    double discharge = CycleCoefficients.assumed().portDischarge().value();
    return discharge * inlet.area().squareMillimetres() * 1e-6 / usual;
  }

  private static MassFlow grams(double kilogramsPerSecond) {
    return MassFlow.ofGramsPerSecond(kilogramsPerSecond * 1e3);
  }
}
