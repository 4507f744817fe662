package dev.jetting.core.mixture.table;

import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.FuelColumn;
import dev.jetting.core.flow.Jet;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.NeedleAnnulus;
import dev.jetting.core.flow.Nozzle;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;

/**
 * A setup in the numbers of the equations: SI units, and the parts in millimetres so that a part
 * can be varied by any fraction of a step.
 *
 * <p>Air side, main path and pilot path depend on different parts: the slide and the engine; needle
 * jet, needle and main jet; pilot jet and screw. A variation rebuilds only the path it touches, so
 * that the caller can keep the results of the others.
 */
public final class Circuits {

  private static final double MM = 1e-3;
  private static final double SQUARE_MM = 1e-6;

  private final Setup setup;
  private final double fuelDensity;
  private final double fuelViscosity;
  private final double oilShare;
  private final double stoichiometricRatio;
  private final double dryAirShare;
  private final Differences differences;
  private final double pilotFactor;

  /**
   * The circuits of a setup, on an engine that is as the model says.
   *
   * @param setup engine, setting, air and fuel
   */
  public Circuits(Setup setup) {
    this.setup = setup;
    differences = Differences.NONE;
    pilotFactor = 1;
    fuelDensity = setup.fuelDensity().kilogramsPerCubicMetre();
    fuelViscosity = setup.fuel().dynamicViscosity(setup.fuelTemperature()).pascalSeconds();
    oilShare = setup.fuel().oilMassFraction();
    stoichiometricRatio = setup.fuel().stoichiometricRatio().value();
    dryAirShare = setup.air().dryAirMassFraction();
  }

  private Circuits(Circuits other, Setup setup, Differences differences) {
    this.setup = setup;
    this.differences = differences;
    pilotFactor = differences.factor(ErrorSource.PILOT);
    fuelDensity = other.fuelDensity;
    fuelViscosity = other.fuelViscosity;
    oilShare = other.oilShare;
    stoichiometricRatio = other.stoichiometricRatio;
    dryAirShare = other.dryAirShare;
  }

  /** The same air and fuel with another setting. */
  Circuits with(Setting setting) {
    return new Circuits(this, setup.withSetting(setting), differences);
  }

  /**
   * An engine that differs from the model.
   *
   * @param source where
   * @param z by how much more, natural logarithm; −5 to 5 together with what it differs by
   * @return the circuits of that engine
   * @throws IllegalArgumentException if the difference is out of range
   */
  public Circuits differing(ErrorSource source, double z) {
    return new Circuits(this, setup, differences.plus(source, z));
  }

  /**
   * A part moved from where the setting has it.
   *
   * @param part the part
   * @param amount by how much, in the part's own unit; zero moves none
   */
  public record Shift(MeteringPart part, double amount) {
    /** No part moved. */
    public static final Shift NONE = new Shift(MeteringPart.MAIN_JET, 0);

    double of(MeteringPart asked) {
      return asked == part ? amount : 0;
    }
  }

  /**
   * The air side with a part moved.
   *
   * @param shift the part and how far
   * @return the air side
   */
  public AirSide air(Shift shift) {
    return AirSides.of(
        setup.engine(),
        setup.setting(),
        setup.air(),
        shift.of(MeteringPart.CUTAWAY),
        1 / differences.factor(ErrorSource.AIR));
  }

  /**
   * The main path with a part moved.
   *
   * @param shift the part and how far
   * @return the main path
   */
  public MainPath main(Shift shift) {
    Carburettor carburettor = setup.setting().carburettor();
    FlowCoefficients flow = carburettor.flow();
    NeedleJet needleJet = setup.setting().needleJet();
    double mainJet =
        Math.max(0, setup.setting().mainJet().millimetres() + shift.of(MeteringPart.MAIN_JET));
    Jet jet = Jet.of(mainJet * MM, flow.mainJetLength().value(), fuelDensity, fuelViscosity);
    return new MainPath(
        new Nozzle(
            flow.nozzleClosed().value(),
            flow.nozzleOpen().value(),
            flow.nozzleExponent().value(),
            flow.neckEffect().value(),
            needleJet.neck().millimetres() / carburettor.bore().millimetres()),
        new NeedleAnnulus(
            carburettor.needleJetLength().millimetres() * MM,
            flow.needleEntryLoss().value(),
            flow.needleEccentricity().value()),
        differences.factor(ErrorSource.NEEDLE),
        needleJet(shift),
        jet.passing(differences.factor(ErrorSource.MAIN)),
        head(carburettor.needleJetHead()),
        fuelDensity,
        fuelViscosity,
        column(setup.setting()));
  }

  /**
   * The column of fuel, the same whatever parts meter it.
   *
   * @param setting the setting
   * @return its column
   */
  public static FuelColumn column(Setting setting) {
    Carburettor carburettor = setting.carburettor();
    return new FuelColumn(
        carburettor.bore().millimetres() * MM,
        carburettor.needleJetLength().millimetres() * MM,
        carburettor.flow().mainJetLength().value());
  }

  /**
   * The pilot circuit with a part moved.
   *
   * @param shift the part and how far
   * @return the pilot circuit
   */
  public PilotPath pilot(Shift shift) {
    Setting setting = setup.setting();
    PilotCircuit pilot = setting.carburettor().pilot();
    FlowCoefficients flow = setting.carburettor().flow();
    double turns = Math.max(0, setting.screw().turns().turns() + shift.of(MeteringPart.SCREW));
    double screwArea = turns * pilot.areaPerTurn().squareMillimetres() * SQUARE_MM;
    double fixedArea = pilot.fixedArea().squareMillimetres() * SQUARE_MM;
    boolean mixtureScrew = pilot.screwKind() == ScrewKind.MIXTURE;
    double pilotJet =
        Math.max(0, setting.pilotJet().millimetres() + shift.of(MeteringPart.PILOT_JET));
    return new PilotPath(
        Jet.of(pilotJet * MM, flow.pilotJetLength().value(), fuelDensity, fuelViscosity),
        head(pilot.head()),
        flow.pilotBleed().value() * (mixtureScrew ? fixedArea : screwArea),
        flow.pilotOutlet().value() * (mixtureScrew ? screwArea : fixedArea),
        flow.pilotOutlet().value() * pilot.progressionHole().squareMillimetres() * SQUARE_MM,
        pilot.uncoversFrom().millimetres() * MM,
        pilot.uncoversTo().millimetres() * MM,
        fuelDensity,
        setup.air().density().kilogramsPerCubicMetre(),
        setup.air().pressure().pascals());
  }

  /**
   * Mean flow of the pilot's fuel.
   *
   * @param air the air side
   * @param well the pilot circuit behind it
   * @return the flow, kg/s
   */
  public double pilotFuel(AirSide.State air, PilotPath.State well) {
    return air.pilotShare() * well.fuelFlow() * pilotFactor;
  }

  /** Height in m of a mouth over the fuel; fuel that stands above it is taken to stand in it. */
  private double head(Length nominal) {
    return Math.max(0, nominal.millimetres() + setup.setting().fuelLowerBy()) * MM;
  }

  /** Diameter in m of the needle jet. */
  double needleJet(Shift shift) {
    double bore = setup.setting().needleJet().bore().millimetres();
    return (bore + shift.of(MeteringPart.NEEDLE_JET)) * MM;
  }

  /**
   * Diameter of the needle in the needle jet.
   *
   * @param lift how far the slide is lifted, m
   * @param shift the part moved, and how far
   * @return the diameter, m; 0 where the needle has ended
   */
  public double needleDiameter(double lift, Shift shift) {
    Needle needle = setup.setting().needle();
    double groove = setup.setting().clip().grooveFromTop() + shift.of(MeteringPart.CLIP);
    double down = lift / MM + (groove - 1) * needle.groovePitch().millimetres();
    if (down > needle.tip().millimetres()) {
      return 0; // no shift puts metal where the needle has ended
    }
    double fatter = shift.of(MeteringPart.NEEDLE_DIAMETER);
    double steeper = shift.of(MeteringPart.NEEDLE_TAPER);
    return Math.max(0, needle.diameterAt(down) + fatter - steeper * needle.taperedLength(down))
        * MM;
  }

  /**
   * The mixture of air and fuel.
   *
   * @param airFlow mean flow of moist air, kg/s
   * @param mainFuel mean flow through main jet and needle jet, kg/s
   * @param pilotFuel mean flow through the pilot jet, kg/s
   * @return λ, at most that of {@link MixturePoint#LEANEST}
   */
  public double lambda(double airFlow, double mainFuel, double pilotFuel) {
    double fuel = (mainFuel + pilotFuel) * (1 - oilShare);
    double dryAir = airFlow * dryAirShare;
    double leanest = MixturePoint.LEANEST.value();
    double needed = fuel * stoichiometricRatio;
    return needed * leanest <= dryAir ? leanest : dryAir / needed;
  }

  /** Fuel and oil with which λ is 1, by the moist air. */
  double fuelByAir() {
    return dryAirShare / ((1 - oilShare) * stoichiometricRatio);
  }

  /** {@return diameter of the bore, m} */
  public double bore() {
    return setup.setting().carburettor().bore().millimetres() * MM;
  }

  /** {@return lift of the closed slide on its stop, m} */
  public double idleLift() {
    return setup.setting().idleLift().millimetres() * MM;
  }
}
