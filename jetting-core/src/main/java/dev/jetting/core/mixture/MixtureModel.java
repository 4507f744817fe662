package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.mixture.table.Circuits;
import dev.jetting.core.mixture.table.Circuits.Shift;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The mixture that a setup gives, at any throttle opening and engine speed.
 *
 * <p>Physics on mean values, from geometry and a few named coefficients. MODEL.md of this module
 * has the equations and their sources. Immutable and safe for any number of threads.
 *
 * <p>Not a prediction to the percent for an engine that nobody has measured: the level is set by
 * trial, and what a part changes is known better than where it starts from. Not for acceleration,
 * cold starts or four-strokes.
 */
public final class MixtureModel {

  /** Half width of the central difference in z: small against 1, large against rounding. */
  private static final double SMALL_Z = 1e-3;

  private final Setup setup;
  private final Circuits circuits;
  private final AirSide air;
  private final MainPath main;
  private final PilotPath pilot;

  private MixtureModel(Setup setup, Circuits circuits) {
    this.setup = setup;
    this.circuits = circuits;
    air = circuits.air(Shift.NONE);
    main = circuits.main(Shift.NONE);
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
    return new MixtureModel(setup, new Circuits(setup));
  }

  /**
   * The model of an engine or carburettor that differs from this one in a known way.
   *
   * @param source in what it differs
   * @param z natural logarithm of its flow by this one's
   * @return the model of the other, with the same setup
   * @throws IllegalArgumentException if it differs from the setup's by a logarithm beyond −5 to 5
   */
  public MixtureModel differing(ErrorSource source, double z) {
    return new MixtureModel(setup, circuits.differing(source, z));
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
   * The mixture over throttle openings along the engine's load line, with what it answers to: the
   * same as {@link #at}, {@link #effects} and {@link #fuelSensitivities} together, for less work.
   *
   * @param throttles the openings, in any order
   * @param steps the customary step of each part
   * @return the mixture and its answers for each opening, in their order
   */
  public List<MixtureResponse> responses(List<ThrottleOpening> throttles, CustomarySteps steps) {
    List<Move> moves = moves(steps);
    return throttles.stream()
        .map(throttle -> response(throttle, setup.engine().loadLine().at(throttle), moves))
        .toList();
  }

  /**
   * The mixture over engine speeds and throttle openings, with what it answers to.
   *
   * @param speeds the engine speeds, each more than zero
   * @param throttles the openings, in any order
   * @param steps the customary step of each part
   * @return for the first speed the mixture and its answers for each opening, then for the next
   * @throws IllegalArgumentException if a speed is zero
   */
  public List<MixtureResponse> responses(
      List<EngineSpeed> speeds, List<ThrottleOpening> throttles, CustomarySteps steps) {
    List<Move> moves = moves(steps);
    return speeds.stream()
        .flatMap(speed -> throttles.stream().map(throttle -> response(throttle, speed, moves)))
        .toList();
  }

  private MixtureResponse response(ThrottleOpening throttle, EngineSpeed speed, List<Move> moves) {
    Flows flows = flows(throttle, speed);
    return new MixtureResponse(
        point(throttle, speed, flows), effects(flows, moves), fuelSensitivities(flows));
  }

  private MixturePoint point(ThrottleOpening throttle, EngineSpeed speed, Flows flows) {
    return new MixturePoint(
        throttle,
        speed,
        Length.ofMillimetres(flows.air.lift() * 1e3),
        flows.air.chargeShare(),
        Pressure.ofPascals(flows.air.depression()),
        Pressure.ofPascals(flows.suction),
        Pressure.ofPascals(flows.well.wellDepression()),
        flows.air.openShare(),
        massFlow(flows.air.airFlow()),
        massFlow(flows.main.flow()),
        massFlow(flows.pilotFuel),
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
   * A map of engine speed by throttle opening.
   *
   * @param speeds the speeds, each more than zero, in any order
   * @param throttles the openings, in any order
   * @return a row for each speed, in each row a point for each opening, in their order
   * @throws IllegalArgumentException if a speed is zero
   */
  public List<List<MixturePoint>> map(List<EngineSpeed> speeds, List<ThrottleOpening> throttles) {
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
    double openFuel = open.main.flow() + open.pilotFuel;
    return new Overrun(
        speed,
        massFlow(shut.air.airFlow()),
        massFlow(shut.pilotFuel),
        Lambda.of(circuits.lambda(shut.air.airFlow(), 0, shut.pilotFuel)),
        openFuel == 0 ? 0 : shut.pilotFuel / openFuel);
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
    return effects(flows(throttle, speed), moves(steps));
  }

  /** A part with what it is a part of, one step richer and one leaner. */
  private record Move(MeteringPart part, Way richer, Way leaner) {}

  /** One of the three ways through the carburettor with a part moved; the others stay. */
  private record Way(
      Shift shift, @Nullable AirSide air, @Nullable PilotPath pilot, @Nullable MainPath main) {}

  private List<Move> moves(CustomarySteps steps) {
    return Arrays.stream(MeteringPart.values())
        .map(
            part -> {
              double step = richerSign(part) * steps.of(part);
              return new Move(part, way(new Shift(part, step)), way(new Shift(part, -step)));
            })
        .toList();
  }

  /** +1 where a bigger number of the part is richer, −1 where a smaller one is. */
  private int richerSign(MeteringPart part) {
    boolean airScrew = setup.setting().carburettor().pilot().screwKind() == ScrewKind.AIR;
    return part == MeteringPart.SCREW && airScrew ? -1 : part.richerSign();
  }

  private Way way(Shift shift) {
    return switch (shift.part()) {
      case CUTAWAY -> new Way(shift, circuits.air(shift), null, null);
      case PILOT_JET, SCREW -> new Way(shift, null, circuits.pilot(shift), null);
      case NEEDLE_JET, NEEDLE_DIAMETER, NEEDLE_TAPER, CLIP, MAIN_JET ->
          new Way(shift, null, null, circuits.main(shift));
    };
  }

  private List<PartEffect> effects(Flows base, List<Move> moves) {
    double lnLambda = StrictMath.log(lambda(base));
    List<PartEffect> effects = new ArrayList<>();
    for (Move move : moves) {
      double richer = StrictMath.log(lambda(base, move.richer)) - lnLambda;
      double leaner = StrictMath.log(lambda(base, move.leaner)) - lnLambda;
      effects.add(new PartEffect(move.part, richer, leaner, 0));
    }
    return PartEffect.sharing(effects);
  }

  private double lambda(Flows base, Way moved) {
    if (moved.air != null) {
      return lambda(behind(moved.air, base.throttle, base.deliveryRatio, base.turnsPerSecond));
    }
    double pilotFuel =
        moved.pilot == null
            ? base.pilotFuel
            : circuits.pilotFuel(base.air, well(moved.pilot, base.air));
    MainPath.Fuel fuel =
        moved.main == null
            ? base.main
            : moved.main.fuel(
                moved.main.drive(base.air, base.suction),
                circuits.needleDiameter(base.air.lift(), moved.shift));
    return circuits.lambda(base.air.airFlow(), fuel.flow(), pilotFuel);
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
    double up = differing(ErrorSource.AIR, SMALL_Z).fuelSensitivities(throttle, speed).lnLambda();
    double down =
        differing(ErrorSource.AIR, -SMALL_Z).fuelSensitivities(throttle, speed).lnLambda();
    return fuelSensitivities(throttle, speed).with((up - down) / (2 * SMALL_Z));
  }

  /**
   * ln λ at an operating point, and how it answers to the sources that act on the fuel alone.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed, more than zero
   * @return ln λ and ∂ ln λ/∂ z for each
   * @throws IllegalArgumentException if the speed is zero
   */
  public FuelSensitivities fuelSensitivities(ThrottleOpening throttle, EngineSpeed speed) {
    return fuelSensitivities(flows(throttle, speed));
  }

  private FuelSensitivities fuelSensitivities(Flows flows) {
    MixtureTable.Local local = new MixtureTable.Local();
    local.fill(
        lambda(flows),
        flows.main.flow(),
        flows.pilotFuel,
        pilot.byBore(flows.well),
        main.sensitivities(flows.main));
    return new FuelSensitivities(
        local.lnLambda(), local.pilot(), local.needle(), local.main(), local.sizes());
  }

  /** The flows at an operating point; those of fuel are means. */
  private record Flows(
      double throttle,
      double deliveryRatio,
      double turnsPerSecond,
      AirSide.State air,
      double suction,
      MainPath.Fuel main,
      PilotPath.State well,
      double pilotFuel) {}

  private double lambda(Flows flows) {
    return circuits.lambda(flows.air.airFlow(), flows.main.flow(), flows.pilotFuel);
  }

  private Flows flows(ThrottleOpening throttle, EngineSpeed speed) {
    Checks.that(speed.rpm() > 0, "engine speed", speed, "more than 0 rpm");
    return behind(air, throttle.share(), setup.engine().deliveryRatioAt(speed), speed.rpm() / 60);
  }

  private Flows behind(AirSide side, double throttle, double deliveryRatio, double turns) {
    AirSide.State state = side.at(throttle, deliveryRatio, turns);
    double suction = MainPath.suction(state, main.nozzle().factor(state.lift() / circuits.bore()));
    PilotPath.State well = well(pilot, state);
    return new Flows(
        throttle,
        deliveryRatio,
        turns,
        state,
        suction,
        main.fuel(main.drive(state, suction), circuits.needleDiameter(state.lift(), Shift.NONE)),
        well,
        circuits.pilotFuel(state, well));
  }

  private PilotPath.State well(PilotPath path, AirSide.State state) {
    return path.at(state.pilotDepression(), state.lift() - circuits.idleLift());
  }

  private static MassFlow massFlow(double kilogramsPerSecond) {
    return MassFlow.ofGramsPerSecond(kilogramsPerSecond * 1e3);
  }
}
