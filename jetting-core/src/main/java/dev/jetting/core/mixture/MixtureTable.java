package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.flow.Restriction;
import dev.jetting.core.mixture.Circuits.Shift;
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
import java.util.function.ToDoubleFunction;
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
  private final CustomarySteps steps;
  private final AirSide.State[] air;
  private final AirSide.State[][] airCase;
  private final AirSide.State shut;
  private final double[] openShare;
  private final double[] fuelAtOne;
  private final double fuelDensity;

  private MixtureTable(
      Setup setup,
      Circuits circuits,
      List<ThrottleOpening> throttles,
      CustomarySteps steps,
      List<Double> airCases) {
    Checks.that(!throttles.isEmpty(), "throttle openings", "none", "at least one");
    this.setup = setup;
    this.steps = steps;
    this.circuits = circuits;
    air = states(circuits, throttles);
    airCase =
        airCases.stream()
            .map(z -> z == 0 ? air : states(circuits.differing(ErrorSource.AIR, z), throttles))
            .toArray(AirSide.State[][]::new);
    shut = state(circuits, ThrottleOpening.CLOSED, setup.engine().loadLine().peak());
    openShare = new double[air.length];
    fuelAtOne = new double[air.length];
    double fuelByAir = circuits.fuelByAir();
    for (int i = 0; i < air.length; i++) {
      openShare[i] = air[i].openShare();
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
   * @param steps the customary steps over which {@link #local} takes its differences
   * @param airCases the differences of the engine's air in which {@link #local} tells ln λ: natural
   *     logarithms as in {@link ErrorSource#AIR}, each −5 to 5
   * @return the table
   * @throws IllegalArgumentException if there is no opening, a difference is out of range, or the
   *     air is colder than −40 °C and the fuel is a blend
   */
  public static MixtureTable of(
      Setup setup, List<ThrottleOpening> throttles, CustomarySteps steps, List<Double> airCases) {
    return new MixtureTable(setup, new Circuits(setup), throttles, steps, airCases);
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
    return new MixtureTable(setup, circuits, throttles, CustomarySteps.assumed(), List.of());
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
   * Fuel and oil with which λ is 1; that by the fuel flow is λ, but for rounding, unless it is
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
        new Setting(
            s.carburettor(),
            s.intake(),
            s.pilotJet(),
            s.screw(),
            s.cutaway(),
            s.idleLift(),
            jet,
            needle,
            clip,
            s.mainJet(),
            s.floats());
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
    return mainFuel(
        ring.alpha[opening], ring.beta[opening], jet.alpha, jet.beta, ring.drive[opening], opening);
  }

  private double mainFuel(
      double ringAlpha, double ringBeta, double jetAlpha, double jetBeta, double drive, int i) {
    return openShare[i]
        * (fuelDensity * Restriction.flow(ringAlpha + jetAlpha, ringBeta + jetBeta, drive));
  }

  /**
   * ln λ of a setting at an opening in each air case and how it answers there, as {@link
   * MixtureModel#fuelSensitivities} tells, and what its parts do, as {@link MixtureModel#effects}.
   *
   * @param pilot the pilot circuit, of this table
   * @param ring the ring, of this table
   * @param jet the main jet, of this table
   * @param opening index of the throttle opening
   * @param into where the numbers go; belongs to one thread
   */
  public void local(Pilot pilot, Ring ring, MainJet jet, int opening, Local into) {
    int i = opening;
    PilotPoint p = pilot.point(i);
    RingPoint r = ring.point(i);
    double alpha = ring.alpha[i] + jet.alpha;
    double beta = ring.beta[i] + jet.beta;
    for (int c = 0; c < airCase.length; c++) {
      double flow = Restriction.flow(alpha, beta, r.drive[c]);
      double main = openShare[i] * (fuelDensity * flow);
      into.fill(
          c,
          Circuits.fuelSensitivities(
              circuits.lambda(airCase[c][i].airFlow(), main, p.fuel[c]),
              main,
              p.fuel[c],
              Restriction.say(ring.alpha[i], ring.beta[i], alpha, beta, flow)));
    }
    double fuel = pilot.fuel(i);
    double main = mainFuel(ring, jet, i);
    double lnLambda = ln(air[i], main, fuel);
    into.effect(
        MeteringPart.PILOT_JET,
        ln(air[i], main, p.jetBigger) - lnLambda,
        ln(air[i], main, p.jetSmaller) - lnLambda,
        steps);
    into.effect(
        MeteringPart.NEEDLE_JET,
        ln(air[i], with(ring, r.jetBigger, jet, i), fuel) - lnLambda,
        ln(air[i], with(ring, r.jetSmaller, jet, i), fuel) - lnLambda,
        steps);
    into.effect(
        MeteringPart.NEEDLE_DIAMETER,
        ln(air[i], with(ring, r.needleThinner, jet, i), fuel) - lnLambda,
        ln(air[i], with(ring, r.needleThicker, jet, i), fuel) - lnLambda,
        steps);
    into.effect(
        MeteringPart.MAIN_JET,
        ln(air[i], with(ring, jet.bigger, i), fuel) - lnLambda,
        ln(air[i], with(ring, jet.smaller, i), fuel) - lnLambda,
        steps);
  }

  private double ln(AirSide.State state, double mainFuel, double pilotFuel) {
    return StrictMath.log(circuits.lambda(state.airFlow(), mainFuel, pilotFuel));
  }

  private double with(Ring ring, Restriction other, MainJet jet, int i) {
    return mainFuel(other.alpha(), other.beta(), jet.alpha, jet.beta, ring.drive[i], i);
  }

  private double with(Ring ring, Restriction jet, int i) {
    return mainFuel(ring.alpha[i], ring.beta[i], jet.alpha(), jet.beta(), ring.drive[i], i);
  }

  /** A pilot jet and a screw. Belongs to the table that made it. */
  public final class Pilot {

    private final Circuits own;
    private final PilotPath path;
    private final double[] fuel = new double[air.length];
    private final @Nullable PilotPoint[] points = new PilotPoint[air.length];

    private Pilot(Circuits own) {
      this.own = own;
      path = own.pilot(Shift.NONE);
      for (int i = 0; i < fuel.length; i++) {
        fuel[i] = fuel(path, air[i]);
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
     * @return λ on the pilot's fuel alone, as {@link Overrun#lambda()} tells
     */
    public double overrunLambda() {
      return circuits.lambda(shut.airFlow(), 0, fuel(path, shut));
    }

    private double fuel(PilotPath way, AirSide.State state) {
      double lift = state.lift() - circuits.idleLift();
      return circuits.pilotFuel(state, way.at(state.depression(), lift));
    }

    /** Worked out when first asked for; two threads that do it at once come to the same. */
    private PilotPoint point(int i) {
      PilotPoint known = points[i];
      if (known != null) {
        return known;
      }
      double step = steps.of(MeteringPart.PILOT_JET);
      PilotPoint found =
          new PilotPoint(
              inEachCase(i, state -> fuel(path, state)),
              fuel(own.pilot(new Shift(MeteringPart.PILOT_JET, step)), air[i]),
              fuel(own.pilot(new Shift(MeteringPart.PILOT_JET, -step)), air[i]));
      points[i] = found;
      return found;
    }
  }

  /** The pilot's fuel in each air case and with other jets. */
  private static final class PilotPoint {
    final double[] fuel;
    final double jetBigger;
    final double jetSmaller;

    PilotPoint(double[] fuel, double jetBigger, double jetSmaller) {
      this.fuel = fuel;
      this.jetBigger = jetBigger;
      this.jetSmaller = jetSmaller;
    }
  }

  private double[] inEachCase(int i, ToDoubleFunction<AirSide.State> number) {
    double[] numbers = new double[airCase.length];
    for (int c = 0; c < numbers.length; c++) {
      numbers[c] = number.applyAsDouble(airCase[c][i]);
    }
    return numbers;
  }

  /** A needle in a needle jet. Belongs to the table that made it. */
  public final class Ring {

    private final Circuits own;
    private final MainPath path;
    private final double[] alpha = new double[air.length];
    private final double[] beta = new double[air.length];
    private final double[] drive = new double[air.length];
    private final @Nullable RingPoint[] points = new RingPoint[air.length];

    private Ring(Circuits own) {
      this.own = own;
      path = own.main(Shift.NONE);
      for (int i = 0; i < alpha.length; i++) {
        Restriction ring = ring(Shift.NONE, i);
        alpha[i] = ring.alpha();
        beta[i] = ring.beta();
        drive[i] = drive(air[i]);
      }
    }

    private double drive(AirSide.State state) {
      double suction = path.suction(state, state.lift() / circuits.bore());
      return suction - path.density() * MainPath.GRAVITY * path.head();
    }

    private Restriction ring(Shift shift, int i) {
      return path.annulus()
          .restriction(
              own.needleJet(shift),
              own.needleDiameter(air[i].lift(), shift),
              path.density(),
              path.viscosity())
          .passing(path.annulusFactor());
    }

    /** Worked out when first asked for; two threads that do it at once come to the same. */
    private RingPoint point(int i) {
      RingPoint known = points[i];
      if (known != null) {
        return known;
      }
      double jet = steps.of(MeteringPart.NEEDLE_JET);
      double needle = steps.of(MeteringPart.NEEDLE_DIAMETER);
      RingPoint found =
          new RingPoint(
              inEachCase(i, this::drive),
              ring(new Shift(MeteringPart.NEEDLE_JET, jet), i),
              ring(new Shift(MeteringPart.NEEDLE_JET, -jet), i),
              ring(new Shift(MeteringPart.NEEDLE_DIAMETER, -needle), i),
              ring(new Shift(MeteringPart.NEEDLE_DIAMETER, needle), i));
      points[i] = found;
      return found;
    }
  }

  /** What drives the fuel in each air case, and the ring with other parts. */
  private static final class RingPoint {
    final double[] drive;
    final Restriction jetBigger;
    final Restriction jetSmaller;
    final Restriction needleThinner;
    final Restriction needleThicker;

    RingPoint(
        double[] drive,
        Restriction jetBigger,
        Restriction jetSmaller,
        Restriction needleThinner,
        Restriction needleThicker) {
      this.drive = drive;
      this.jetBigger = jetBigger;
      this.jetSmaller = jetSmaller;
      this.needleThinner = needleThinner;
      this.needleThicker = needleThicker;
    }
  }

  /** A main jet. Belongs to the table that made it. */
  public final class MainJet {

    private final double alpha;
    private final double beta;
    private final Restriction bigger;
    private final Restriction smaller;

    private MainJet(Circuits own) {
      double step = steps.of(MeteringPart.MAIN_JET);
      Restriction jet = own.main(Shift.NONE).mainJet();
      alpha = jet.alpha();
      beta = jet.beta();
      bigger = own.main(new Shift(MeteringPart.MAIN_JET, step)).mainJet();
      smaller = own.main(new Shift(MeteringPart.MAIN_JET, -step)).mainJet();
    }
  }

  /**
   * ln λ at one opening and how it answers. Filled by {@link MixtureTable#local}, again and again
   * so that a search makes no garbage; not for sharing between threads.
   */
  public static final class Local {

    private static final int SOURCES = 4;
    private static final int NOT_WORKED_OUT = 4;

    private final double[] lnLambda;
    private final double[] slopes;
    private final double[] leaning = new double[NOT_WORKED_OUT + 1];

    /**
     * One with zeroes.
     *
     * @param airCases how many air cases the tables have that are to fill it
     */
    public Local(int airCases) {
      lnLambda = new double[airCases];
      slopes = new double[airCases * SOURCES];
    }

    /**
     * ln λ in an air case.
     *
     * @param airCase index of the case, in the order given to the table
     * @return ln λ
     */
    public double lnLambda(int airCase) {
      return lnLambda[airCase];
    }

    /**
     * The sensitivity to an error source in an air case.
     *
     * @param airCase index of the case, in the order given to the table
     * @param source the source
     * @return ∂ ln λ/∂ z; 0 for the air, which the case knows
     */
    public double slope(int airCase, ErrorSource source) {
      return slopes[airCase * SOURCES + place(source)];
    }

    /**
     * What a part does by its own unit, the engine as modelled: half the difference of ln λ between
     * one customary step towards lean and one towards rich, by the step.
     *
     * @param part the part
     * @return 1/mm, zero or more; 0 for screw, cutaway, taper and clip, which are not worked out
     */
    public double leaningByUnit(MeteringPart part) {
      return leaning[place(part)];
    }

    private void fill(int airCase, FuelSensitivities there) {
      lnLambda[airCase] = there.lnLambda();
      int first = airCase * SOURCES;
      slopes[first + place(ErrorSource.PILOT)] = there.pilot();
      slopes[first + place(ErrorSource.NEEDLE)] = there.needle();
      slopes[first + place(ErrorSource.MAIN)] = there.main();
    }

    private void effect(MeteringPart part, double richer, double leaner, CustomarySteps steps) {
      leaning[place(part)] = (leaner - richer) / 2 / steps.of(part);
    }

    private static int place(ErrorSource source) {
      return switch (source) {
        case PILOT -> 0;
        case NEEDLE -> 1;
        case MAIN -> 2;
        case AIR -> 3;
      };
    }

    private static int place(MeteringPart part) {
      return switch (part) {
        case PILOT_JET -> 0;
        case NEEDLE_JET -> 1;
        case NEEDLE_DIAMETER -> 2;
        case MAIN_JET -> 3;
        case SCREW, CUTAWAY, NEEDLE_TAPER, CLIP -> NOT_WORKED_OUT;
      };
    }
  }
}
