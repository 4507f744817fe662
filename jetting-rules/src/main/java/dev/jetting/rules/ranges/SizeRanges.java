package dev.jetting.rules.ranges;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Quantity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;

/**
 * The ranges of the numbers of a sheet, a catalogue and a kit: sizes of slide carburettors on
 * two-strokes and well beyond. Every rule can be computed within them. Quantities on their own, and
 * the model, allow more.
 *
 * <p>Each method takes the place of its argument in the thing that is checked, with which messages
 * begin, and throws an {@link InvalidValueException} if a number is out of its range.
 */
public final class SizeRanges {

  private static final Range<JetBore> PILOT_JET =
      new Range<>(JetBore.ofMillimetres(0.1), JetBore.ofMillimetres(3));
  private static final Range<JetBore> MAIN_JET =
      new Range<>(JetBore.ofMillimetres(0.3), JetBore.ofMillimetres(5));
  private static final Range<Cutaway> CUTAWAY =
      new Range<>(Cutaway.ofMillimetres(0), Cutaway.ofMillimetres(40));
  private static final Range<FloatLevel> FLOAT_LEVEL =
      new Range<>(FloatLevel.ofMillimetres(0), FloatLevel.ofMillimetres(100));
  private static final Range<Displacement> DISPLACEMENT =
      new Range<>(Displacement.ofCubicCentimetres(5), Displacement.ofCubicCentimetres(2500));
  private static final Range<EngineSpeed> SPEED =
      new Range<>(EngineSpeed.ofRpm(200), EngineSpeed.ofRpm(25_000));

  /** Stated properties are the same at every temperature. */
  private static final Temperature ROOM = Temperature.ofCelsius(15);

  private SizeRanges() {}

  /** A closed range. */
  private record Range<Q extends Quantity<Q>>(Q least, Q most) {
    void check(String at, Q value) {
      if (value.isLessThan(least) || value.isMoreThan(most)) {
        throw refused(at, value, least, most);
      }
    }
  }

  private static InvalidValueException refused(String at, Object value, Object least, Object most) {
    return InvalidValueException.at(
        at, value.toString(), Sentence.of("error.to").with("low", least).with("high", most));
  }

  /**
   * Checks an engine.
   *
   * @param at its place, with which messages begin
   * @param engine the engine
   */
  public static void engine(String at, Engine engine) {
    displacement(at + ".displacement", engine.displacement());
    SPEED.check(at + ".loadLine.idle", engine.loadLine().idle());
    SPEED.check(at + ".loadLine.peak", engine.loadLine().peak());
  }

  /**
   * Checks the displacement of a cylinder.
   *
   * @param at its place, with which messages begin
   * @param displacement the displacement
   */
  public static void displacement(String at, Displacement displacement) {
    DISPLACEMENT.check(at, displacement);
  }

  /**
   * Checks a setting.
   *
   * @param at its place, with which messages begin
   * @param setting the setting
   */
  public static void setting(String at, Setting setting) {
    carburettor(at + ".carburettor", setting.carburettor());
    intake(at + ".intake", setting.intake());
    pilotJet(at + ".pilotJet", setting.pilotJet());
    screwTurns(at + ".screw.turns", setting.screw().turns());
    cutaway(at + ".cutaway", setting.cutaway());
    idleLift(at + ".idleLift", setting.idleLift());
    needleJet(at + ".needleJet", setting.needleJet());
    needle(at + ".needle", setting.needle());
    mainJet(at + ".mainJet", setting.mainJet());
    setting.floats().ifPresent(floats -> floats(at + ".floats", floats));
  }

  /**
   * Checks the floats.
   *
   * @param at its place, with which messages begin
   * @param floats the floats
   */
  public static void floats(String at, Floats floats) {
    FLOAT_LEVEL.check(at + ".set", floats.set());
    FLOAT_LEVEL.check(at + ".nominal", floats.nominal());
  }

  /**
   * Checks a carburettor.
   *
   * @param at its place, with which messages begin
   * @param carburettor the carburettor
   */
  public static void carburettor(String at, Carburettor carburettor) {
    lengths(at + ".needleJetLength", carburettor.needleJetLength(), 0.1, 50);
    lengths(at + ".needleJetHead", carburettor.needleJetHead(), 0, 100);
    pilot(at + ".pilot", carburettor.pilot());
    floatValve(at + ".floatValve", carburettor.floatValve());
    flow(at + ".flow", carburettor.flow());
  }

  private static void pilot(String at, PilotCircuit pilot) {
    areaPerTurn(at + ".areaPerTurn", pilot.areaPerTurn());
    areas(at + ".fixedArea", pilot.fixedArea(), 0.01, 20);
    areas(at + ".progressionHole", pilot.progressionHole(), 0, 20);
    lengths(at + ".uncoversTo", pilot.uncoversTo(), 0, 80);
    lengths(at + ".head", pilot.head(), 0, 100);
    turns(at + ".mostTurns", pilot.mostTurns(), 0.25);
  }

  private static void flow(String at, FlowCoefficients flow) {
    number(at + ".nozzleClosed", flow.nozzleClosed(), 0, 5);
    number(at + ".nozzleOpen", flow.nozzleOpen(), 0, 5);
    number(at + ".nozzleExponent", flow.nozzleExponent(), 0.2, 5);
    number(at + ".neckEffect", flow.neckEffect(), 0, 10);
    number(at + ".needleEntryLoss", flow.needleEntryLoss(), 0.2, 5);
    number(at + ".upstreamGap", flow.upstreamGap(), 0.1, 1);
    number(at + ".downstreamGap", flow.downstreamGap(), 0.1, 1);
    number(at + ".pilotOutlet", flow.pilotOutlet(), 0.1, 1);
    number(at + ".pilotBleed", flow.pilotBleed(), 0.1, 1);
  }

  /**
   * Checks a float valve.
   *
   * @param at its place, with which messages begin
   * @param valve the float valve
   */
  public static void floatValve(String at, FloatValve valve) {
    diameters(at + ".seat", valve.seat(), 0.3, 10);
    lengths(at + ".supplyHead", valve.supplyHead(), 5, 3000);
    number(at + ".discharge", valve.discharge(), 0.05, 1);
  }

  /**
   * Checks what a pilot screw opens a turn.
   *
   * @param at its place, with which messages begin
   * @param area the area that a turn opens
   */
  public static void areaPerTurn(String at, Area area) {
    areas(at, area, 0.001, 5);
  }

  /**
   * Checks how far a pilot screw is out.
   *
   * @param at its place, with which messages begin
   * @param turns how far it is out
   */
  public static void screwTurns(String at, ScrewTurns turns) {
    turns(at, turns, 0);
  }

  /**
   * Checks a pilot jet.
   *
   * @param at its place, with which messages begin
   * @param jet the jet
   */
  public static void pilotJet(String at, JetBore jet) {
    PILOT_JET.check(at, jet);
  }

  /**
   * Checks a main jet.
   *
   * @param at its place, with which messages begin
   * @param jet the jet
   */
  public static void mainJet(String at, JetBore jet) {
    MAIN_JET.check(at, jet);
  }

  /**
   * Checks the cutaway of a slide.
   *
   * @param at its place, with which messages begin
   * @param cutaway the cutaway
   */
  public static void cutaway(String at, Cutaway cutaway) {
    CUTAWAY.check(at, cutaway);
  }

  /**
   * Checks the lift of the closed slide.
   *
   * @param at its place, with which messages begin
   * @param lift the lift
   */
  public static void idleLift(String at, Length lift) {
    lengths(at, lift, 0.01, 40);
  }

  /**
   * Checks an intake.
   *
   * @param at its place, with which messages begin
   * @param intake the intake
   */
  public static void intake(String at, Intake intake) {
    intake.effectiveArea().ifPresent(area -> areas(at + ".effectiveArea", area, 20, 20_000));
  }

  /**
   * Checks a needle jet.
   *
   * @param at its place, with which messages begin
   * @param jet the jet
   */
  public static void needleJet(String at, NeedleJet jet) {
    diameters(at + ".bore", jet.bore(), 0.5, 6);
    lengths(at + ".neck", jet.neck(), 0, 20);
  }

  /**
   * Checks a needle.
   *
   * @param at its place, with which messages begin
   * @param needle the needle
   */
  public static void needle(String at, Needle needle) {
    diameters(at + ".cylinder", needle.cylinder(), 0.4, 6);
    lengths(at + ".groovePitch", needle.groovePitch(), 0, 5);
    lengths(at + ".tip", needle.tip(), 0.1, 150);
  }

  /**
   * Checks a fuel that is stated by its properties.
   *
   * @param at its place, with which messages begin
   * @param fuel the fuel
   */
  public static void fuel(String at, Fuel fuel) {
    if (fuel.blend().isEmpty()) {
      within(at + ".stoichiometricRatio", fuel.stoichiometricRatio().value(), 3, 25);
      new Range<>(Density.ofKilogramsPerCubicMetre(500), Density.ofKilogramsPerCubicMetre(1500))
          .check(at + ".density", fuel.density(ROOM));
      new Range<>(
              DynamicViscosity.ofMillipascalSeconds(0.05),
              DynamicViscosity.ofMillipascalSeconds(100))
          .check(at + ".dynamicViscosity", fuel.dynamicViscosity(ROOM));
    }
  }

  private static void turns(String at, ScrewTurns turns, double least) {
    new Range<>(ScrewTurns.of(least), ScrewTurns.of(20)).check(at, turns);
  }

  private static void lengths(String at, Length length, double least, double most) {
    new Range<>(Length.ofMillimetres(least), Length.ofMillimetres(most)).check(at, length);
  }

  private static void diameters(String at, Diameter diameter, double least, double most) {
    new Range<>(Diameter.ofMillimetres(least), Diameter.ofMillimetres(most)).check(at, diameter);
  }

  private static void areas(String at, Area area, double least, double most) {
    new Range<>(Area.ofSquareMillimetres(least), Area.ofSquareMillimetres(most)).check(at, area);
  }

  private static void number(String at, Coefficient number, double least, double most) {
    within(at, number.value(), least, most);
  }

  private static void within(String at, double number, double least, double most) {
    if (!(number >= least && number <= most)) {
      throw refused(
          at, Decimals.shortest(number), Decimals.shortest(least), Decimals.shortest(most));
    }
  }
}
