package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.mixture.Circuits.Difference;
import dev.jetting.core.mixture.Circuits.Shift;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The mixture that a setup gives, at any throttle opening and engine speed.
 *
 * <p>Physics on mean values, from geometry and a few named coefficients; the equations and their
 * sources are told in MODEL.md of this module. Immutable and safe for any number of threads.
 *
 * <p>Not a prediction to the percent for an engine that nobody has measured: the level is
 * calibrated by hand, and what a part changes is known better than where it starts from. Not for
 * acceleration, cold starts or four-strokes.
 */
public final class MixtureModel {

  /** Half width of the central differences in z: small against 1, large against rounding. */
  static final double SMALL_Z = 1e-3;

  private final Setup setup;
  private final Circuits circuits;
  private final AirSide air;
  private final MainPath main;
  private final PilotPath pilot;

  private MixtureModel(Setup setup) {
    this.setup = setup;
    circuits = new Circuits(setup);
    air = circuits.air(Shift.NONE, Difference.NONE);
    main = circuits.main(Shift.NONE, Difference.NONE);
    pilot = circuits.pilot(Shift.NONE);
  }

  /**
   * The model of a setup.
   *
   * @param setup engine, setting, air and fuel
   * @return the model
   * @throws IllegalArgumentException if the air is colder than −40 °C and the fuel is a blend,
   *     whose density and viscosity are not known there
   */
  public static MixtureModel of(Setup setup) {
    return new MixtureModel(setup);
  }

  /** {@return the setup that this is the model of} */
  public Setup setup() {
    return setup;
  }

  /**
   * Evenly spaced throttle openings from closed to full.
   *
   * @param count how many, 2 to 1001
   * @return the openings, rising
   * @throws IllegalArgumentException if the count is out of range
   */
  public static List<ThrottleOpening> evenOpenings(int count) {
    Checks.that(count >= 2 && count <= 1001, "number of throttle openings", count, "2 to 1001");
    return IntStream.range(0, count)
        .mapToObj(i -> ThrottleOpening.ofShare(i / (count - 1.0)))
        .toList();
  }

  /**
   * The mixture at a throttle opening, at the speed of the engine's load line.
   *
   * @param throttle throttle opening by lift
   * @return the mixture there
   */
  public MixturePoint at(ThrottleOpening throttle) {
    return at(throttle, setup.engine().loadLine().at(throttle));
  }

  /**
   * The mixture at a throttle opening and an engine speed.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, more than zero
   * @return the mixture there
   * @throws IllegalArgumentException if the speed is zero
   */
  public MixturePoint at(ThrottleOpening throttle, EngineSpeed speed) {
    return point(throttle, speed, flows(throttle, speed));
  }

  /**
   * The mixture at a throttle opening, at the speed of the engine's load line, with all that it
   * answers to: the same as {@link #at}, {@link #effects} and {@link #sensitivities} together, for
   * less work.
   *
   * @param throttle throttle opening by lift
   * @param steps the customary step of each part
   * @return the mixture and its answers
   */
  public MixtureResponse response(ThrottleOpening throttle, CustomarySteps steps) {
    EngineSpeed speed = setup.engine().loadLine().at(throttle);
    Flows flows = flows(throttle, speed);
    return new MixtureResponse(
        point(throttle, speed, flows), effects(flows, steps), sensitivities(flows));
  }

  private MixturePoint point(ThrottleOpening throttle, EngineSpeed speed, Flows flows) {
    return new MixturePoint(
        throttle,
        speed,
        Length.ofMillimetres(flows.air.lift() * 1e3),
        flows.air.pressureRatio(),
        Pressure.ofPascals(flows.air.depression()),
        Pressure.ofPascals(main.suction(flows.air, flows.air.lift() / circuits.bore())),
        Pressure.ofPascals(flows.well.wellDepression()),
        massFlow(flows.air.airFlow()),
        massFlow(flows.mainFuel),
        massFlow(flows.pilotFuel()),
        Lambda.of(lambda(flows)));
  }

  /**
   * A sweep over throttle openings along the engine's load line.
   *
   * @param throttles the openings, in any order
   * @return a point for each opening, in their order
   */
  public List<MixturePoint> sweep(List<ThrottleOpening> throttles) {
    return throttles.stream().map(this::at).toList();
  }

  /**
   * A sweep over throttle openings at one engine speed, as on a brake.
   *
   * @param throttles the openings, in any order
   * @param speed engine speed, more than zero
   * @return a point for each opening, in their order
   * @throws IllegalArgumentException if the speed is zero
   */
  public List<MixturePoint> sweep(List<ThrottleOpening> throttles, EngineSpeed speed) {
    return throttles.stream().map(throttle -> at(throttle, speed)).toList();
  }

  /**
   * A map of throttle opening by engine speed.
   *
   * @param throttles the openings, in any order
   * @param speeds the speeds, each more than zero, in any order
   * @return a row for each speed, in each row a point for each opening, in their order
   * @throws IllegalArgumentException if a speed is zero
   */
  public List<List<MixturePoint>> map(List<ThrottleOpening> throttles, List<EngineSpeed> speeds) {
    return speeds.stream().map(speed -> sweep(throttles, speed)).toList();
  }

  /**
   * The closed throttle after a long open run, at the speed of the load line's peak.
   *
   * @return the mixture on the pilot's fuel alone
   */
  public Overrun overrun() {
    EngineSpeed speed = setup.engine().loadLine().peak();
    Flows shut = flows(ThrottleOpening.CLOSED, speed);
    Flows open = flows(ThrottleOpening.FULL, speed);
    double openFuel = open.mainFuel + open.pilotFuel();
    return new Overrun(
        speed,
        massFlow(shut.air.airFlow()),
        massFlow(shut.pilotFuel()),
        Lambda.of(circuits.lambda(shut.air.airFlow(), 0, shut.pilotFuel())),
        openFuel == 0 ? 0 : shut.pilotFuel() / openFuel);
  }

  /**
   * What each part does to the mixture at an operating point.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, more than zero
   * @param steps the customary step of each part
   * @return an effect for each part, in the order of {@link MeteringPart}
   * @throws IllegalArgumentException if the speed is zero
   */
  public List<PartEffect> effects(
      ThrottleOpening throttle, EngineSpeed speed, CustomarySteps steps) {
    return effects(flows(throttle, speed), steps);
  }

  private List<PartEffect> effects(Flows base, CustomarySteps steps) {
    double lambda = StrictMath.log(lambda(base));
    Map<MeteringPart, double[]> changes = new EnumMap<>(MeteringPart.class);
    double sum = 0;
    for (MeteringPart part : MeteringPart.values()) {
      double step = circuits.richerSign(part) * steps.of(part);
      double richer = StrictMath.log(lambda(shifted(base, new Shift(part, step)))) - lambda;
      double leaner = StrictMath.log(lambda(shifted(base, new Shift(part, -step)))) - lambda;
      changes.put(part, new double[] {richer, leaner});
      sum += Math.abs(leaner - richer);
    }
    double total = sum;
    return changes.entrySet().stream()
        .map(
            entry -> {
              double richer = entry.getValue()[0];
              double leaner = entry.getValue()[1];
              double share = total == 0 ? 0 : Math.abs(leaner - richer) / total;
              return new PartEffect(entry.getKey(), richer, leaner, share);
            })
        .toList();
  }

  /**
   * How the mixture at an operating point answers to the ways in which the engine may differ from
   * the model.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, more than zero
   * @return ∂ ln λ/∂ z for each source
   * @throws IllegalArgumentException if the speed is zero
   */
  public Sensitivities sensitivities(ThrottleOpening throttle, EngineSpeed speed) {
    return sensitivities(flows(throttle, speed));
  }

  private Sensitivities sensitivities(Flows base) {
    Map<ErrorSource, Double> slopes = new EnumMap<>(ErrorSource.class);
    for (ErrorSource source : ErrorSource.values()) {
      double up = StrictMath.log(lambda(differing(base, new Difference(source, SMALL_Z))));
      double down = StrictMath.log(lambda(differing(base, new Difference(source, -SMALL_Z))));
      slopes.put(source, (up - down) / (2 * SMALL_Z));
    }
    return new Sensitivities(slopes);
  }

  /**
   * The flows at an operating point; mean flows are those while the inlet is open, by its share.
   */
  private record Flows(
      double throttle,
      double deliveryRatio,
      double turnsPerSecond,
      AirSide.State air,
      double mainFuel,
      PilotPath.State well,
      double pilotFactor) {

    double pilotFuel() {
      return air.openShare() * well.fuelFlow() * pilotFactor;
    }
  }

  private double lambda(Flows flows) {
    return circuits.lambda(flows.air.airFlow(), flows.mainFuel, flows.pilotFuel());
  }

  private Flows flows(ThrottleOpening throttle, EngineSpeed speed) {
    Checks.that(speed.rpm() > 0, "engine speed", speed, "more than 0 rpm");
    return behind(air, throttle.share(), setup.engine().deliveryRatioAt(speed), speed.rpm() / 60);
  }

  private Flows behind(AirSide side, double throttle, double deliveryRatio, double turns) {
    AirSide.State state = side.at(throttle, deliveryRatio, turns);
    return new Flows(
        throttle,
        deliveryRatio,
        turns,
        state,
        mainFuel(main, state, Shift.NONE),
        well(pilot, state),
        1);
  }

  private Flows shifted(Flows base, Shift shift) {
    return switch (shift.part()) {
      case CUTAWAY ->
          behind(
              circuits.air(shift, Difference.NONE),
              base.throttle,
              base.deliveryRatio,
              base.turnsPerSecond);
      case PILOT_JET, SCREW -> with(base, base.mainFuel, well(circuits.pilot(shift), base.air), 1);
      case NEEDLE_JET, NEEDLE_DIAMETER, NEEDLE_TAPER, CLIP, MAIN_JET ->
          with(
              base, mainFuel(circuits.main(shift, Difference.NONE), base.air, shift), base.well, 1);
    };
  }

  private Flows differing(Flows base, Difference difference) {
    return switch (difference.source()) {
      case AIR ->
          behind(
              circuits.air(Shift.NONE, difference),
              base.throttle,
              base.deliveryRatio,
              base.turnsPerSecond);
      case PILOT -> with(base, base.mainFuel, base.well, difference.factor(ErrorSource.PILOT));
      case NEEDLE, MAIN ->
          with(
              base,
              mainFuel(circuits.main(Shift.NONE, difference), base.air, Shift.NONE),
              base.well,
              1);
    };
  }

  private static Flows with(Flows base, double mainFuel, PilotPath.State well, double pilotFactor) {
    return new Flows(
        base.throttle,
        base.deliveryRatio,
        base.turnsPerSecond,
        base.air,
        mainFuel,
        well,
        pilotFactor);
  }

  private double mainFuel(MainPath path, AirSide.State state, Shift shift) {
    double suction = path.suction(state, state.lift() / circuits.bore());
    return state.openShare() * path.flow(suction, circuits.needleDiameter(state.lift(), shift));
  }

  private PilotPath.State well(PilotPath path, AirSide.State state) {
    return path.at(state.depression(), state.lift() - circuits.idleLift());
  }

  private static MassFlow massFlow(double kilogramsPerSecond) {
    return MassFlow.ofGramsPerSecond(kilogramsPerSecond * 1e3);
  }
}
