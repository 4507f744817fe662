package dev.jetting.rules;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Quantity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;

/**
 * The ranges of the numbers of a sheet: sizes of slide carburettors on two-strokes and well beyond.
 * Every rule can be computed within them. Quantities on their own, and the model, allow more.
 */
final class SheetRanges {

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

  private SheetRanges() {}

  /** A closed range. */
  private record Range<Q extends Quantity<Q>>(Q least, Q most) {
    void check(String what, Q value) {
      if (value.isLessThan(least) || value.isMoreThan(most)) {
        throw refused(what, value, least, most);
      }
    }
  }

  private static IllegalArgumentException refused(
      String what, Object value, Object least, Object most) {
    return new IllegalArgumentException(what + " " + value + ": allowed " + least + " to " + most);
  }

  /**
   * Checks the numbers of a sheet, each message beginning with the name of the field.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  static void check(Setup setup, PartsAtHand parts, Provenance provenance) {
    engine("engine", setup.engine());
    setting("setting", setup.setting());
    fuel("fuel", setup.fuel());
    parts(parts);
    provenance.engine().ifPresent(other -> engine("provenance.engine", other));
    provenance.setting().ifPresent(other -> setting("provenance.setting", other));
    provenance.mainJet().ifPresent(jet -> MAIN_JET.check("provenance.mainJet", jet));
    provenance.carburettor().ifPresent(other -> carburettor("provenance.carburettor", other));
    provenance.intake().ifPresent(other -> intake("provenance.intake", other));
    provenance.fuel().ifPresent(other -> fuel("provenance.fuel", other));
  }

  private static void engine(String at, Engine engine) {
    DISPLACEMENT.check(at + ".displacement", engine.displacement());
    SPEED.check(at + ".loadLine.idle", engine.loadLine().idle());
    SPEED.check(at + ".loadLine.peak", engine.loadLine().peak());
  }

  private static void setting(String at, Setting setting) {
    carburettor(at + ".carburettor", setting.carburettor());
    intake(at + ".intake", setting.intake());
    PILOT_JET.check(at + ".pilotJet", setting.pilotJet());
    turns(at + ".screw.turns", setting.screw().turns(), 0);
    CUTAWAY.check(at + ".cutaway", setting.cutaway());
    lengths(at + ".idleLift", setting.idleLift(), 0.01, 40);
    needleJet(at + ".needleJet", setting.needleJet());
    needle(at + ".needle", setting.needle());
    MAIN_JET.check(at + ".mainJet", setting.mainJet());
    setting.floats().ifPresent(floats -> floats(at, floats));
  }

  private static void floats(String at, Floats floats) {
    FLOAT_LEVEL.check(at + ".floats.set", floats.set());
    FLOAT_LEVEL.check(at + ".floats.nominal", floats.nominal());
  }

  private static void carburettor(String at, Carburettor carburettor) {
    lengths(at + ".needleJetLength", carburettor.needleJetLength(), 0.1, 50);
    lengths(at + ".needleJetHead", carburettor.needleJetHead(), 0, 100);
    pilot(at + ".pilot", carburettor.pilot());
    diameters(at + ".floatValve.seat", carburettor.floatValve().seat(), 0.3, 10);
    lengths(at + ".floatValve.supplyHead", carburettor.floatValve().supplyHead(), 5, 3000);
    number(at + ".floatValve.discharge", carburettor.floatValve().discharge(), 0.05, 1);
    flow(at + ".flow", carburettor.flow());
  }

  private static void pilot(String at, PilotCircuit pilot) {
    areas(at + ".areaPerTurn", pilot.areaPerTurn(), 0.001, 5);
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

  private static void intake(String at, Intake intake) {
    intake.effectiveArea().ifPresent(area -> areas(at + ".effectiveArea", area, 20, 20_000));
  }

  private static void needleJet(String at, NeedleJet jet) {
    diameters(at + ".bore", jet.bore(), 0.5, 6);
    lengths(at + ".neck", jet.neck(), 0, 20);
  }

  private static void needle(String at, Needle needle) {
    diameters(at + ".cylinder", needle.cylinder(), 0.4, 6);
    lengths(at + ".groovePitch", needle.groovePitch(), 0, 5);
    lengths(at + ".tip", needle.tip(), 0.1, 150);
  }

  private static void fuel(String at, Fuel fuel) {
    if (fuel.blend().isEmpty()) {
      within(at + ".stoichiometricRatio", fuel.stoichiometricRatio().value(), 3, 25);
      within(at + ".density in kg/m³", density(fuel), 500, 1500);
      within(at + ".dynamicViscosity in mPa·s", viscosity(fuel), 0.05, 100);
    }
  }

  private static double density(Fuel fuel) {
    return fuel.density(ROOM).kilogramsPerCubicMetre();
  }

  private static double viscosity(Fuel fuel) {
    return fuel.dynamicViscosity(ROOM).millipascalSeconds();
  }

  private static void parts(PartsAtHand parts) {
    parts.pilotJets().forEach(jet -> PILOT_JET.check("parts.pilotJets", jet));
    parts.cutaways().forEach(cutaway -> CUTAWAY.check("parts.cutaways", cutaway));
    parts.needleJets().forEach(jet -> needleJet("parts.needleJets", jet));
    parts.needles().forEach(needle -> needle("parts.needles", needle));
    parts.mainJets().forEach(jet -> MAIN_JET.check("parts.mainJets", jet));
  }

  private static void turns(String what, ScrewTurns turns, double least) {
    new Range<>(ScrewTurns.of(least), ScrewTurns.of(20)).check(what, turns);
  }

  private static void lengths(String what, Length length, double least, double most) {
    new Range<>(Length.ofMillimetres(least), Length.ofMillimetres(most)).check(what, length);
  }

  private static void diameters(String what, Diameter diameter, double least, double most) {
    new Range<>(Diameter.ofMillimetres(least), Diameter.ofMillimetres(most)).check(what, diameter);
  }

  private static void areas(String what, Area area, double least, double most) {
    new Range<>(Area.ofSquareMillimetres(least), Area.ofSquareMillimetres(most)).check(what, area);
  }

  private static void number(String what, Coefficient number, double least, double most) {
    within(what, number.value(), least, most);
  }

  private static void within(String what, double number, double least, double most) {
    if (!(number >= least && number <= most)) {
      throw refused(
          what, Decimals.shortest(number), Decimals.shortest(least), Decimals.shortest(most));
    }
  }
}
