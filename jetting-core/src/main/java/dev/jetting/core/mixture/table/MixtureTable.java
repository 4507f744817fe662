package dev.jetting.core.mixture.table;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.Jet;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.NeedleAnnulus;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.flow.Restriction;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.FuelSensitivities;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.mixture.SizeSensitivities;
import dev.jetting.core.mixture.table.Circuits.Shift;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The mixture of many settings that share engine, carburettor, slide, air and fuel, at fixed
 * throttle openings along the load line: the work that settings share is done once.
 *
 * <p>The air side depends on the slide, the pilot's fuel on pilot jet and screw besides, the main
 * fuel on needle jet, needle, clip and main jet. Each is asked for on its own and put together at
 * the price of a few operations; the numbers are those of {@link MixtureModel} to the last bit, for
 * they come from the same equations in the same order.
 *
 * <p>Flows are plain numbers in kg/s, openings are named by their index in the order given. Safe
 * for any number of threads. Not for one setting: use {@link MixtureModel}.
 */
public final class MixtureTable {

  private final Setup setup;
  private final Circuits circuits;
  private final AirSide.State[] air;
  private final AirSide.State[][] airCase;
  private final AirSide.State shut;
  private final double[] fuelAtOne;
  private final double fuelDensity;

  private MixtureTable(
      Setup setup, Circuits circuits, List<ThrottleOpening> throttles, List<Double> airCases) {
    Checks.that(!throttles.isEmpty(), "throttle openings", "none", "at least one");
    this.setup = setup;
    this.circuits = circuits;
    air = states(circuits, throttles);
    airCase =
        airCases.stream()
            .map(z -> z == 0 ? air : states(circuits.differing(ErrorSource.AIR, z), throttles))
            .toArray(AirSide.State[][]::new);
    shut = state(circuits, ThrottleOpening.CLOSED, setup.engine().loadLine().peak());
    fuelAtOne = new double[air.length];
    double fuelByAir = circuits.fuelByAir();
    for (int i = 0; i < air.length; i++) {
      fuelAtOne[i] = air[i].airFlow() * fuelByAir;
    }
    fuelDensity = circuits.main(Shift.NONE).density();
  }

  /**
   * The table of a setup, by the model.
   *
   * @param setup engine, air, fuel, and a setting whose carburettor, intake, slide, idle lift and
   *     floats count; its jets and needle do not
   * @param throttles the openings; at least one
   * @param airCases the differences of the engine's air in which {@link #local} computes ln λ:
   *     natural logarithms as in {@link ErrorSource#AIR}, each −5 to 5
   * @return the table
   * @throws IllegalArgumentException if there is no opening, a difference is out of range, or the
   *     air is colder than −40 °C and the fuel is a blend
   */
  public static MixtureTable of(
      Setup setup, List<ThrottleOpening> throttles, List<Double> airCases) {
    return new MixtureTable(setup, new Circuits(setup), throttles, airCases);
  }

  /**
   * The table of an engine and carburettor that differ from the model in a known way.
   *
   * @param setup engine, air, fuel, and a setting whose carburettor, intake, slide, idle lift and
   *     floats count; its jets and needle do not
   * @param throttles the openings; at least one
   * @param differences natural logarithm of true by modelled flow, −5 to 5 for each source; a
   *     source that is not in the map does not differ
   * @return the table; it has no air cases
   * @throws IllegalArgumentException if there is no opening, a difference is out of range, or the
   *     air is colder than −40 °C and the fuel is a blend
   */
  public static MixtureTable of(
      Setup setup, List<ThrottleOpening> throttles, Map<ErrorSource, Double> differences) {
    Circuits circuits = new Circuits(setup);
    for (Map.Entry<ErrorSource, Double> difference : differences.entrySet()) {
      circuits = circuits.differing(difference.getKey(), difference.getValue());
    }
    return new MixtureTable(setup, circuits, throttles, List.of());
  }

  private AirSide.State[] states(Circuits differing, List<ThrottleOpening> throttles) {
    return throttles.stream()
        .map(throttle -> state(differing, throttle, setup.engine().loadLine().at(throttle)))
        .toArray(AirSide.State[]::new);
  }

  private AirSide.State state(Circuits differing, ThrottleOpening throttle, EngineSpeed speed) {
    return differing
        .air(Shift.NONE)
        .at(throttle.share(), setup.engine().deliveryRatioAt(speed), speed.rpm() / 60);
  }

  /** {@return the number of throttle openings} */
  public int size() {
    return air.length;
  }

  /**
   * Fuel and oil with which λ is 1; divided by the fuel flow it is λ, except for rounding and
   * beyond {@link MixturePoint#LEANEST}.
   *
   * @param opening index of the throttle opening
   * @return mean flow, kg/s
   */
  public double fuelAtOne(int opening) {
    return fuelAtOne[opening];
  }

  /**
   * λ of a fuel flow.
   *
   * @param opening index of the throttle opening
   * @param mainFuel mean flow through main jet and needle jet, kg/s
   * @param pilotFuel mean flow through the pilot jet, kg/s
   * @return λ, at most that of {@link MixturePoint#LEANEST}
   */
  public double lambda(int opening, double mainFuel, double pilotFuel) {
    return circuits.lambda(air[opening].airFlow(), mainFuel, pilotFuel);
  }

  /**
   * The pilot circuit with a jet and a screw.
   *
   * @param jet the pilot jet
   * @param turns turns of the screw
   * @return its fuel at each opening
   */
  public Pilot pilot(JetBore jet, ScrewTurns turns) {
    Setting setting = setup.setting();
    Screw screw = new Screw(setting.screw().kind(), turns);
    return new Pilot(circuits.with(setting.withPilotJet(jet).withScrew(screw)));
  }

  /**
   * The ring between a needle jet and a needle.
   *
   * @param jet the needle jet
   * @param needle the needle
   * @param clip where its clip sits
   * @return how the ring flows at each opening
   * @throws IllegalArgumentException if the needle does not go into the needle jet or the clip
   *     counts other grooves
   */
  public Ring ring(NeedleJet jet, Needle needle, ClipPosition clip) {
    Setting s = setup.setting();
    Setting hung =
        Setting.builder()
            .carburettor(s.carburettor())
            .intake(s.intake())
            .pilotJet(s.pilotJet())
            .screw(s.screw())
            .cutaway(s.cutaway())
            .idleLift(s.idleLift())
            .needleJet(jet)
            .needle(needle)
            .clip(clip)
            .mainJet(s.mainJet())
            .floats(s.floats())
            .build();
    return new Ring(circuits.with(hung));
  }

  /**
   * A main jet.
   *
   * @param bore its bore
   * @return how it flows
   */
  public MainJet mainJet(JetBore bore) {
    return new MainJet(circuits.with(setup.setting().withMainJet(bore)));
  }

  /**
   * The fuel through main jet and needle jet.
   *
   * @param ring the ring, of this table
   * @param jet the main jet, of this table
   * @param opening index of the throttle opening
   * @return mean flow of fuel and oil, kg/s
   */
  public double mainFuel(Ring ring, MainJet jet, int opening) {
    return mainFuel(ring, jet, opening, ring.drive[opening]);
  }

  private double mainFuel(Ring ring, MainJet jet, int opening, MainPath.Drive drive) {
    return fuelDensity * drive.flow(ring.alpha[opening] + jet.alpha, ring.beta[opening] + jet.beta);
  }

  /**
   * ln λ of a setting at an opening in an air case, and its slopes, as {@link
   * MixtureModel#fuelSensitivities} computes them.
   *
   * @param pilot the pilot circuit, of this table
   * @param ring the ring, of this table
   * @param jet the main jet, of this table
   * @param opening index of the throttle opening
   * @param airCase index of the air case, in the order given
   * @param into where ln λ and its answers go
   */
  public void local(Pilot pilot, Ring ring, MainJet jet, int opening, int airCase, Local into) {
    PilotPoint p = pilot.point(opening);
    RingPoint r = ring.point(opening);
    double mainFuel = mainFuel(ring, jet, opening, r.drive[airCase]);
    into.fill(
        circuits.lambda(this.airCase[airCase][opening].airFlow(), mainFuel, p.fuel[airCase]),
        mainFuel,
        p.fuel[airCase],
        p.byBore[airCase],
        MainPath.sensitivities(r.ring, jet.jet, r.drive[airCase]));
  }

  /** A pilot jet and a screw. Belongs to the table that made it. */
  public final class Pilot {

    private final PilotPath path;
    private final double[] fuel = new double[air.length];
    private final @Nullable PilotPoint[] points = new PilotPoint[air.length];

    private Pilot(Circuits own) {
      path = own.pilot(Shift.NONE);
      for (int i = 0; i < fuel.length; i++) {
        fuel[i] = fuel(air[i]);
      }
    }

    /**
     * The fuel through the pilot jet.
     *
     * @param opening index of the throttle opening
     * @return mean flow of fuel and oil, kg/s
     */
    public double fuel(int opening) {
      return fuel[opening];
    }

    /**
     * The mixture on the closed throttle after a long open run.
     *
     * @return λ on the pilot's fuel alone, as in {@link Overrun#lambda()}
     */
    public double overrunLambda() {
      return circuits.lambda(shut.airFlow(), 0, fuel(shut));
    }

    private double fuel(AirSide.State state) {
      return circuits.pilotFuel(state, well(state));
    }

    private PilotPath.State well(AirSide.State state) {
      return path.at(state.pilotDepression(), state.lift() - circuits.idleLift());
    }

    /**
     * Worked out when first asked for; two threads that do it at once come to the same. The arrays
     * are full before the point has them as final fields: so other threads see them full.
     */
    private PilotPoint point(int i) {
      PilotPoint known = points[i];
      if (known != null) {
        return known;
      }
      double[] each = new double[airCase.length];
      double[] byBore = new double[airCase.length];
      for (int c = 0; c < airCase.length; c++) {
        PilotPath.State well = well(airCase[c][i]);
        each[c] = circuits.pilotFuel(airCase[c][i], well);
        byBore[c] = path.byBore(well);
      }
      PilotPoint found = new PilotPoint(each, byBore);
      points[i] = found;
      return found;
    }
  }

  /** The pilot's fuel in each air case, and how it answers to the jet's bore. */
  private static final class PilotPoint {
    final double[] fuel;
    final double[] byBore;

    PilotPoint(double[] fuel, double[] byBore) {
      this.fuel = fuel;
      this.byBore = byBore;
    }
  }

  /** A needle in a needle jet. Belongs to the table that made it. */
  public final class Ring {

    private final Circuits own;
    private final MainPath path;
    private final double[] alpha = new double[air.length];
    private final double[] beta = new double[air.length];
    private final double[] felt = new double[air.length];
    private final MainPath.Drive[] drive = new MainPath.Drive[air.length];
    private final @Nullable RingPoint[] points = new RingPoint[air.length];

    private Ring(Circuits own) {
      this.own = own;
      path = own.main(Shift.NONE);
      for (int i = 0; i < alpha.length; i++) {
        Restriction ring = path.restriction(needle(i));
        alpha[i] = ring.alpha();
        beta[i] = ring.beta();
        felt[i] = path.nozzle().factor(air[i].lift() / circuits.bore());
        drive[i] = drive(air[i], felt[i]);
      }
    }

    private MainPath.Drive drive(AirSide.State state, double felt) {
      return path.drive(state, MainPath.suction(state, felt));
    }

    /** As that of a pilot, and as safe. */
    private RingPoint point(int i) {
      RingPoint known = points[i];
      if (known != null) {
        return known;
      }
      MainPath.Drive[] each = new MainPath.Drive[airCase.length];
      for (int c = 0; c < airCase.length; c++) {
        each[c] = drive(airCase[c][i], felt[i]);
      }
      RingPoint found = new RingPoint(path.ring(needle(i)), each);
      points[i] = found;
      return found;
    }

    private double needle(int i) {
      return own.needleDiameter(air[i].lift(), Shift.NONE);
    }
  }

  /** The ring, and what drives the fuel through it in each air case. */
  private static final class RingPoint {
    final NeedleAnnulus.Ring ring;
    final MainPath.Drive[] drive;

    RingPoint(NeedleAnnulus.Ring ring, MainPath.Drive[] drive) {
      this.ring = ring;
      this.drive = drive;
    }
  }

  /** A main jet. Belongs to the table that made it. */
  public static final class MainJet {

    private final Jet jet;
    private final double alpha;
    private final double beta;

    private MainJet(Circuits own) {
      jet = own.main(Shift.NONE).mainJet();
      alpha = jet.restriction().alpha();
      beta = jet.restriction().beta();
    }
  }

  /**
   * ln λ at one opening in one air case and how it answers: the numbers of {@link
   * FuelSensitivities}, to be filled again and again so that a search makes no garbage. Belongs to
   * one thread.
   */
  public static final class Local {

    private static final double PER_MM = 1e-3;

    private final double[] lnLambda = new double[1];
    private final double[] sources = new double[3];
    private final double[] sizes = new double[4];

    /** One with zeroes. */
    public Local() {}

    /**
     * Fills in the numbers of an opening; the sensitivities are by metres.
     *
     * @param lambda λ
     * @param mainFuel mean flow through main jet and needle jet, kg/s
     * @param pilotFuel mean flow through the pilot jet, kg/s
     * @param pilotByBore ∂ ln of the pilot's fuel by the jet's bore
     * @param mainSensitivities of the main path
     */
    public void fill(
        double lambda,
        double mainFuel,
        double pilotFuel,
        double pilotByBore,
        MainPath.Sensitivities mainSensitivities) {
      boolean held = lambda >= MixturePoint.LEANEST.value();
      double mainShare = held ? 0 : mainFuel / (mainFuel + pilotFuel);
      double pilotShare = held ? 0 : pilotFuel / (mainFuel + pilotFuel);
      lnLambda[0] = StrictMath.log(lambda);
      sources[0] = 0 - pilotShare;
      sources[1] = 0 - mainShare * mainSensitivities.ring();
      sources[2] = 0 - mainShare * mainSensitivities.jet();
      sizes[0] = 0 - pilotShare * pilotByBore * PER_MM;
      sizes[1] = 0 - mainShare * mainSensitivities.byNeedleJet() * PER_MM;
      sizes[2] = 0 - mainShare * mainSensitivities.byNeedle() * PER_MM;
      sizes[3] = 0 - mainShare * mainSensitivities.byMainJet() * PER_MM;
    }

    /** {@return ln λ} */
    public double lnLambda() {
      return lnLambda[0];
    }

    /** {@return ∂ ln λ/∂ z of the pilot circuit, −1 to 0} */
    public double pilot() {
      return sources[0];
    }

    /** {@return ∂ ln λ/∂ z of the ring between needle and needle jet, −1 to 0} */
    public double needle() {
      return sources[1];
    }

    /** {@return ∂ ln λ/∂ z of the main jet, −1 to 0} */
    public double main() {
      return sources[2];
    }

    /** {@return how ln λ answers to the sizes of the parts} */
    public SizeSensitivities sizes() {
      return new SizeSensitivities(sizes[0], sizes[1], sizes[2], sizes[3]);
    }
  }
}
