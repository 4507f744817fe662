package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.cycle.CycleEquations.Sums;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The mixture of a setup by the cycle of its crankcase: a reference for {@link
 * dev.jetting.core.mixture.MixtureModel}.
 *
 * <p>It integrates the crank angle turn after turn until the state repeats: quasi-steady flow past
 * slide and ports, volumes without heat loss, a column of fuel with inertia, a compressible pilot.
 * The setup's delivery ratio and induction play no part: they come out. CYCLE.md of the module has
 * the equations and the checks.
 *
 * <p>Immutable and safe for any number of threads. A point takes tenths of a second, near a shut
 * throttle a second or more. Not for acceleration, four-strokes, or reeds fast enough for their
 * mass to matter.
 */
public final class CrankcaseCycle {

  /** The most turns to compute until the state repeats (assumed). */
  private static final int MOST_TURNS = 2000;

  private static final double CLOSED = 1e-7;
  private static final int SAMPLES = 180;

  /** Stops nearer to each other than this in radians are one; the state does not move in it. */
  private static final double SAME_PLACE = 1e-9;

  private final Setup setup;
  private final Crankcase crankcase;
  private final CycleCoefficients coefficients;

  private CrankcaseCycle(Setup setup, Crankcase crankcase, CycleCoefficients coefficients) {
    this.setup = Objects.requireNonNull(setup, "setup");
    this.crankcase = Objects.requireNonNull(crankcase, "crankcase");
    this.coefficients = Objects.requireNonNull(coefficients, "coefficients");
  }

  /**
   * Returns the cycle of a setup with the project's own assumed coefficients.
   *
   * @param setup engine, setting, air and fuel
   * @param crankcase the engine's inside
   * @return the cycle
   */
  public static CrankcaseCycle of(Setup setup, Crankcase crankcase) {
    return new CrankcaseCycle(setup, crankcase, CycleCoefficients.assumed());
  }

  /**
   * Returns this cycle with other coefficients.
   *
   * @param other the coefficients
   * @return the changed cycle
   */
  public CrankcaseCycle with(CycleCoefficients other) {
    return new CrankcaseCycle(setup, crankcase, other);
  }

  /**
   * Computes the cycle at a throttle opening and an engine speed.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, at least 100 rpm
   * @return the means over a turn, and the turn
   * @throws IllegalArgumentException if the speed is below 100 rpm
   */
  public CyclePoint at(ThrottleOpening throttle, EngineSpeed speed) {
    Checks.that(speed.rpm() >= 100, "engine speed of a cycle", speed, "at least 100 rpm");
    SlideState slide = SlideState.of(setup, throttle.share(), coefficients);
    CycleEquations equations = equations(slide, speed, false);
    double[] kinks = equations.kinks();
    double[] state = equations.start();
    double closure = Double.MAX_VALUE;
    int turns = 0;
    Extrapolation extrapolation = new Extrapolation(equations.periodic());
    while (closure > CLOSED && turns < MOST_TURNS) {
      double[] next = turn(equations, state, kinks, new ArrayList<>());
      closure = difference(state, next, equations.periodic());
      state = closure > CLOSED ? extrapolation.from(state, next) : next;
      turns++;
    }
    List<double[]> places = new ArrayList<>();
    double[] end = turn(equations(slide, speed, true), state, withSamples(kinks), places);
    return point(throttle, speed, slide, equations, end, places, turns, closure);
  }

  /** The pilot does not act back on the air, so only the last turn needs it. */
  private CycleEquations equations(SlideState slide, EngineSpeed speed, boolean pilotCounts) {
    return new CycleEquations(setup, crankcase, slide, coefficients, speed.rpm() / 60, pilotCounts);
  }

  /** Integrates a turn from stop to stop; the sums begin at zero. */
  private double[] turn(
      CycleEquations equations, double[] from, double[] stops, List<double[]> places) {
    double tolerance = coefficients.tolerance().value();
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-12, Math.PI / 8, tolerance, tolerance);
    double[] y = from.clone();
    for (Sums sum : Sums.values()) {
      y[equations.sum(sum)] = 0;
    }
    for (int i = 1; i < stops.length; i++) {
      if (stops[i] - stops[i - 1] < SAME_PLACE) {
        continue;
      }
      double[] place = Arrays.copyOf(y, y.length + 1);
      place[y.length] = stops[i - 1];
      places.add(place);
      y =
          integrator
              .integrate(equations, new ODEState(stops[i - 1], y), stops[i])
              .getPrimaryState();
    }
    return y;
  }

  private static double difference(double[] before, double[] after, int count) {
    return IntStream.range(0, count)
        .mapToDouble(i -> Math.abs(after[i] - before[i]))
        .max()
        .orElse(0);
  }

  private static double[] withSamples(double[] kinks) {
    return DoubleStream.concat(
            DoubleStream.of(kinks),
            IntStream.rangeClosed(0, SAMPLES).mapToDouble(i -> i * (2 * Math.PI / SAMPLES)))
        .sorted()
        .distinct()
        .toArray();
  }

  private CyclePoint point(
      ThrottleOpening throttle,
      EngineSpeed speed,
      SlideState slide,
      CycleEquations equations,
      double[] end,
      List<double[]> places,
      int turns,
      double closure) {
    double turnsPerSecond = speed.rpm() / 60;
    double air = end[equations.sum(Sums.AIR)] * equations.charge * turnsPerSecond;
    double back = end[equations.sum(Sums.BACKWARDS)] * equations.charge * turnsPerSecond;
    double ambient = setup.air().pressure().pascals();
    double root = end[equations.sum(Sums.ROOT_DROP)];
    double main = end[equations.sum(Sums.MAIN_FUEL)] * equations.fuelScale * slide.fuel().density();
    double pilot =
        end[equations.sum(Sums.PILOT_FUEL)] * equations.fuelScale * slide.fuel().density();
    return new CyclePoint(
        throttle,
        speed,
        end[equations.sum(Sums.AIR)],
        grams(air),
        grams(back),
        grams(end[equations.sum(Sums.DELIVERED)] * equations.charge * turnsPerSecond),
        Pressure.ofPascals(end[equations.sum(Sums.DROP)] * ambient),
        Pressure.ofPascals(root * root * ambient),
        grams(main),
        grams(pilot),
        lambda(setup, air, main + pilot),
        turns,
        closure,
        trace(equations, places));
  }

  /** Of flows in kg/s. */
  static Lambda lambda(Setup setup, double air, double fuel) {
    double dryAir = Math.max(air, 0) * setup.air().dryAirMassFraction();
    double needed =
        fuel * (1 - setup.fuel().oilMassFraction()) * setup.fuel().stoichiometricRatio().value();
    double leanest = MixturePoint.LEANEST.value();
    return Lambda.of(needed * leanest <= dryAir ? leanest : dryAir / needed);
  }

  private static List<CyclePoint.Sample> trace(CycleEquations equations, List<double[]> places) {
    return places.stream()
        .map(
            place -> {
              double[] y = Arrays.copyOf(place, place.length - 1);
              return new CyclePoint.Sample(
                  StrictMath.toDegrees(place[place.length - 1]),
                  Pressure.ofPascals(equations.pressureBehindSlide(y)),
                  Pressure.ofPascals(equations.pressureInCrankcase(y)),
                  equations.past(y) * 1e3,
                  equations.mainFuel(y) * 1e3);
            })
        .toList();
  }

  private static MassFlow grams(double kilogramsPerSecond) {
    return MassFlow.ofGramsPerSecond(Math.max(kilogramsPerSecond, 0) * 1e3);
  }
}
